// Terms that go beyond the format: limits, divisions, rounds, holes that count, groups that share a hole, own formats.

import { describe, expect, it } from 'vitest'
import type { Competition, Day } from '@/lib/rules/day'
import { FORMATS, formatOf } from '@/lib/rules/formats/catalogue'
import type { FiveChoices } from '@/lib/rules/formats/format'
import { formatFrom } from '@/lib/rules/formats/format'
import { knownAs, proposedForChoices, readBack } from '@/lib/rules/formats/read-back'
import { scoreDay } from '@/lib/rules/score-day'
import { aldermoss, CARDS, PLAYERS } from './aldermoss'

const read = (competition: Partial<Competition>, day: Partial<Day> = {}) =>
  scoreDay(aldermoss({ competitions: [{ id: 'c', format: 'stableford', ...competition }], ...day }))[0]!

const scores = (competition: Partial<Competition>, day: Partial<Day> = {}) =>
  Object.fromEntries(read(competition, day).standings.map((one) => [one.entrant, one.score]))

describe('terms of a competition', () => {
  it('limits the playing handicap by gender', () => {
    const { standings } = read({ handicapLimit: { men: 18, women: 24 } })
    expect(standings.map((one) => [one.entrant, one.playingHandicap])).toEqual([
      ['trevennor', 18],
      ['coldbrook', 17],
      ['tarrablane', 24],
      ['haldane', 1],
    ])
  })

  it('gives divisions places of their own', () => {
    const { divisions } = read(
      {
        divisions: [
          { id: 'low', name: 'To 18', handicapTo: 18 },
          { id: 'women', name: 'Women', gender: 'women' },
          { id: 'old', name: 'Seniors', group: 'seniors' },
        ],
      },
      { players: PLAYERS.map((one) => (one.id === 'haldane' ? { ...one, groups: ['seniors'] } : one)) },
    )
    expect(divisions!.map(({ id, standings }) => [id, standings.map((one) => [one.place, one.entrant])])).toEqual([
      [
        'low',
        [
          [1, 'coldbrook'],
          [2, 'haldane'],
        ],
      ],
      ['women', [[1, 'tarrablane']]],
      ['old', [[1, 'haldane']]],
    ])
  })

  it('plays each round off the figure that was frozen for it', () => {
    const second = CARDS.map((card) => ({ ...card, round: 2 }))
    const cut = second.map((card) => (card.player === 'trevennor' ? { ...card, indexTenths: 154 } : card))
    const alone = scores({ rounds: [2] }, { cards: [...CARDS, ...cut] })
    const asIfHis = scores(
      {},
      { players: PLAYERS.map((one) => (one.id === 'trevennor' ? { ...one, indexTenths: 154 } : one)) },
    )
    expect(alone).toEqual(asIfHis)
    expect(alone.trevennor).toBeLessThan(scores({}).trevennor!)
    const both = read({ rounds: [1, 2] }, { cards: [...CARDS, ...cut] }).standings
    for (const { entrant, rounds } of both) {
      expect(rounds).toEqual([
        { round: 1, score: scores({})[entrant] },
        { round: 2, score: alone[entrant] },
      ])
    }
    const byHand = second.map((card) => (card.player === 'haldane' ? { ...card, playingHandicap: 10 } : card))
    const standing = read({ rounds: [2] }, { cards: byHand }).standings.find(({ entrant }) => entrant === 'haldane')!
    expect(standing.playingHandicap).toBe(10)
  })

  it('adds rounds up and breaks a tie on the last round first', () => {
    const second = CARDS.map((card) => ({ ...card, round: 2 }))
    const swapped = second.map((card) => {
      if (card.player === 'trevennor') return { ...card, scores: card.scores.map((n) => (n as number) + 1) }
      return card
    })
    const cards = [...CARDS, ...swapped]
    const both = read({ rounds: [1, 2] }, { cards }).standings
    const haldane = both.find((one) => one.entrant === 'haldane')!
    expect(haldane.score).toBe(64)
    expect(haldane.rounds).toEqual([
      { round: 1, score: 32 },
      { round: 2, score: 32 },
    ])
    expect(both.find((one) => one.entrant === 'trevennor')!.rounds![1]!.score).toBeLessThan(38)
    expect(haldane.holes).toHaveLength(36)
  })

  it('counts only the holes that count, or plays the rest level', () => {
    const cards = CARDS.map((card) => ({ ...card, scores: card.scores.slice(0, 12) }))
    const twelve = Array.from({ length: 12 }, (_, i) => i + 1)
    const counted = read({ countedHoles: twelve }, { cards }).standings[0]!
    expect(counted.holesPlayed).toBe(12)
    const level = scores({ notPlayed: 'level' }, { cards })
    const short = scores({}, { cards })
    for (const id of Object.keys(short)) expect(level[id]).toBe(short[id]! + 12)
    expect(
      read({ format: 'medal', countedHoles: twelve }, { cards }).standings.every((one) => one.place !== null),
    ).toBe(true)
    expect(read({ format: 'medal' }, { cards }).standings.every((one) => one.noPlace === 'no-return')).toBe(true)
  })

  it('doubles the named holes', () => {
    const plain = read({}).standings.find((one) => one.entrant === 'haldane')!
    const doubled = scores({ format: 'double-point-stableford', allowance: 95, namedHoles: [1, 18] })
    expect(doubled.haldane).toBe(plain.score! + plain.holes[0]!.value! + plain.holes[17]!.value!)
  })
})

describe('shared holes', () => {
  const names = ['haldane', 'coldbrook', 'trevennor']

  it('always shares six points among three', () => {
    const { standings } = read({ format: 'split-sixes', entrants: names })
    expect(standings).toHaveLength(3)
    for (let i = 0; i < 18; i++) expect(standings.reduce((sum, one) => sum + one.holes[i]!.value!, 0)).toBe(6)
  })

  it('carries a tied skin on, and loses it where the terms do', () => {
    const players = ['a', 'b'].map((id) => ({ id, name: id, indexTenths: 0, tee: 'yellow-men' }))
    const level = new Array<number>(18).fill(4)
    const cards = [
      { player: 'a', scores: level.map((n, i) => (i === 2 ? 3 : n)) },
      { player: 'b', scores: level.map((n, i) => (i === 5 ? 3 : n)) },
    ]
    expect(scores({ format: 'skins' }, { players, cards })).toEqual({ a: 3, b: 3 })
    expect(scores({ format: 'skins-not-carried' }, { players, cards })).toEqual({ a: 1, b: 1 })
  })
})

describe('a format of the society’s own', () => {
  const aggregate: FiveChoices = {
    side: { from: 2, to: 2 },
    ball: 'own',
    strokes: { kind: 'each-player', off: 'own' },
    value: formatOf('stableford')!.value,
    count: { kind: 'best', take: [2, 1] },
  }
  const sides = [
    { id: 's1', players: ['haldane', 'coldbrook'] },
    { id: 's2', players: ['trevennor', 'tarrablane'] },
  ]

  it('scores like the known format that makes the same choices', () => {
    const own = read({ format: 'Ours', custom: aggregate, allowance: 95 }, { sides })
    const known = read({ format: 'best-and-aggregate-stableford', allowance: 95 }, { sides })
    expect(own.standings).toEqual(known.standings)
    expect(own.format).toBe('Ours')
    expect(knownAs(aggregate)?.id).toBe('best-and-aggregate-stableford')
  })

  it('is added at run time through the list of formats', () => {
    const worst = formatFrom({
      ...aggregate,
      id: 'three-times-the-best',
      name: 'Three times the best',
      sentence: 'The better points count three times.',
      family: 'pairs',
      count: { kind: 'best', take: [3] },
      allowance: { house: 85, why: 'Ours.' },
      clause: 'House choice',
    })
    const day = aldermoss({ sides, competitions: [{ id: 'c', format: 'three-times-the-best' }] })
    const [result] = scoreDay(day, [...FORMATS, worst])
    const four = read({ format: 'four-ball-stableford', allowance: 85 }, { sides })
    expect(result!.standings[0]!.score).toBe(3 * four.standings[0]!.score!)
    expect(scoreDay(day)).toEqual([])
  })

  it('is read back as one sentence, with the allowance it should have', () => {
    expect(readBack(aggregate, 95)).toBe(
      'Sides of two, each player with an own ball; strokes are 95 % of each course handicap; points on each hole, 2 for level with par; of the side the best score twice and the second once count.',
    )
    expect(proposedForChoices(formatOf('four-ball-par')!, 0, '2024')).toMatchObject({
      allowance: 90,
      from: 'published',
    })
    expect(proposedForChoices({ ...aggregate, count: { kind: 'best', take: [3] } }, 0, '2024').from).toBe(
      'house-choice',
    )
  })
})
