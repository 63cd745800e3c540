// The working of a figure ends on the figure the board shows, whatever the format.

import { describe, expect, it } from 'vitest'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { matchBetween } from '@/lib/rules/matches/match'
import { scoreDay } from '@/lib/rules/score-day'
import { holeWorking, strokesSentence } from '@/lib/rules/working/hole-working'
import { matchWorking } from '@/lib/rules/working/match-working'
import { tieSentence, tieWorking, totalWorking } from '@/lib/rules/working/total-working'
import { aldermoss, CARDS, PLAYERS } from './aldermoss'

const everybody = PLAYERS.map(({ id }) => id)

describe('the working of a hole', () => {
  it('is the chain of the mock card: index, course handicap, playing handicap, strokes, gross, net, points', () => {
    const day = aldermoss({})
    const working = holeWorking(day, 'main', 'trevennor', 11)!
    expect(working.sentence).toBe('A five on a par four with one stroke is net four, level with par: two points.')
    expect(working.steps.map(({ figure, label }) => `${figure} ${label}`)).toEqual([
      '20.7 Handicap figure',
      '20.098 Course handicap',
      '19 Playing handicap',
      '1 Strokes on hole 11',
      '5 Gross',
      '4 Net',
      '2 Points',
    ])
    expect(working.steps[1]!.sum).toBe('20.7 × 125 ÷ 113 + (69.2 − 72)')
    expect(working.ifItHadBeen.map(({ value }) => value)).toEqual([4, 3, 2, 1, 0, 0])
  })

  it.each(FORMATS.filter((one) => !one.isMatch).map((one) => [one.id, one] as const))('%s', (id, format) => {
    const players = everybody.slice(0, format.side.to)
    const sides = format.side.to === 1 ? [] : [{ id: 'team', players, competitions: ['c'] }]
    const cards = [...CARDS, { player: 'team', scores: CARDS[0]!.scores }]
    const day = aldermoss({
      sides,
      cards,
      competitions: [{ id: 'c', format: id, namedHoles: format.namedHolesTimes ? [3] : undefined }],
    })
    const [result] = scoreDay(day)
    const standing = result!.standings[0]!
    for (const line of standing.holes) {
      const working = holeWorking(day, 'c', standing.entrant, line.hole)!
      expect(working.figure.replace('−', '-').replace('+', '')).toBe(String(line.value ?? '–'))
      expect(
        working.steps.every(({ label, sentence, clause }) => label !== '' && sentence !== '' && clause !== ''),
      ).toBe(true)
    }
    const steps = totalWorking(standing, result!.unit, id)
    expect(steps[steps.length - 1]!.figure.replace('−', '-').replace('+', '')).toBe(String(standing.score ?? '–'))
  })

  it('shows the difference in par, the limit and the penalty where there is one', () => {
    const cards = CARDS.map((card) => (card.player === 'tarrablane' ? { ...card, penaltyStrokes: { 4: 2 } } : card))
    const day = aldermoss({ cards, competitions: [{ id: 'c', format: 'medal', handicapLimit: { women: 20 } }] })
    const steps = holeWorking(day, 'c', 'tarrablane', 4)!.steps
    expect(steps.map(({ figure, label }) => `${figure} ${label}`)).toContain('20 Handicap limit')
    expect(steps.map(({ figure, label }) => `${figure} ${label}`)).toContain('21 Difference in par')
    expect(steps.find(({ label }) => label === 'Gross')).toMatchObject({ figure: '9', sum: '7 + 2' })
  })

  it.each([
    [0, 'No strokes are received.'],
    [1, 'One stroke: one on index 1.'],
    [17, '17 strokes: one on indexes 1 to 17.'],
    [36, '36 strokes: two on every hole.'],
    [19, '19 strokes: one on every hole and one more on index 1.'],
    [-1, 'A plus handicap of 1 gives back one stroke on index 18.'],
  ])('says where %i strokes fall', (handicap, sentence) => {
    expect(strokesSentence(handicap, 18)).toBe(sentence)
  })
})

describe('the working of a tie and of a match', () => {
  it('names every window with both figures', () => {
    const [result] = scoreDay(aldermoss({ competitions: [{ id: 'c', format: 'par' }] }))
    const standing = result!.standings[1]!
    expect(tieSentence(standing, 'holes')).toBe('Level on −1: last nine 0 to −1.')
    expect(tieWorking(standing).map(({ figure, sum }) => [figure, sum])).toEqual([['0', '0 to −1']])
    expect(tieSentence(result!.standings[0]!)).toBeNull()
  })

  it('ends on the result of the match', () => {
    const day = aldermoss({})
    const match = matchBetween(day, 'haldane', 'trevennor')!
    const steps = matchWorking(day, match, 15)
    expect(steps[steps.length - 1]).toMatchObject({ figure: '4&3', label: 'Match after hole 15' })
    expect(matchWorking(day, match, 18).at(-1)!.figure).toBe('–')
  })
})

describe('the working of a hole of skins', () => {
  const day = aldermoss({
    players: PLAYERS.map((player) => ({ ...player, tee: 'yellow-men', indexTenths: 100 })),
    cards: CARDS.map((card, at) => ({ ...card, scores: [4, at === 0 ? 4 : 5, 3, ...card.scores.slice(3)] })),
    competitions: [{ id: 'c', format: 'skins' }],
  })
  const share = (entrant: string, hole: number) => holeWorking(day, 'c', entrant, hole)!.steps.at(-1)!

  it('says what everybody made of it, who takes it and what was carried', () => {
    expect(share('coldbrook', 1)).toMatchObject({
      figure: '0',
      sum: 'haldane 4, coldbrook 4, trevennor 4, tarrablane 4',
      sentence: 'Nobody alone has the lowest net: it is carried to the next hole.',
    })
    expect(share('coldbrook', 2)).toMatchObject({
      sum: 'haldane 4, coldbrook 5, trevennor 5, tarrablane 5',
      sentence: 'haldane alone has the lowest net and takes two skins. One skin was carried to it.',
    })
    expect(holeWorking(day, 'c', 'haldane', 2)).toMatchObject({
      figure: '2',
      unit: 'skins',
      sentence: 'A four on a par five with no stroke is net four.',
    })
  })
})
