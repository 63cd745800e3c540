// The figures behind a playing handicap and behind the holes of a match, on the day of four worked out by hand.
import { describe, expect, it } from 'vitest'
import type { Competition } from '@/lib/rules/day'
import { scoreDay } from '@/lib/rules/score-day'
import { openedHandicaps, openedMatches } from '@/lib/rules/working/opened'
import { aldermoss, CARDS, PLAYERS } from './aldermoss'

const ofDay = (competition: Competition, more: Parameters<typeof aldermoss>[0] = {}) => {
  const day = aldermoss({ competitions: [competition], ...more })
  return openedHandicaps(day, competition)
}

describe('an opened handicap', () => {
  it('has the figure, the course handicap in full, the allowance, and what it comes to', () => {
    // 20.7 × 125 ÷ 113 + (69.2 − 72) = 20.098; 95 % is 19.093.
    expect(ofDay({ id: 'c', format: 'stableford' }).get('trevennor')).toEqual([
      {
        ball: 'trevennor',
        players: [{ player: 'trevennor', handicapIndex: '20.7', courseHandicap: '20.098' }],
        allowance: 95,
        inFull: '19.093',
        parDifference: 0,
        playingHandicap: 19,
      },
    ])
  })

  it('marks the stroke for the higher par, a limit and a hand', () => {
    const players = PLAYERS.map((one) => (one.id === 'coldbrook' ? { ...one, playingHandicap: { c: 12 } } : one))
    const opened = ofDay({ id: 'c', format: 'medal', handicapLimit: { men: 18 } }, { players })
    // Par 73 from red: 95 % of 25.223 is 23.962, 24 and one more.
    expect(opened.get('tarrablane')![0]).toMatchObject({ inFull: '23.962', parDifference: 1, playingHandicap: 25 })
    expect(opened.get('trevennor')![0]).toMatchObject({
      players: [{ limit: 18 }],
      inFull: '18.000',
      playingHandicap: 18,
    })
    expect(opened.get('coldbrook')![0]).toMatchObject({ players: [{ byHand: 12 }], byHand: 12, playingHandicap: 12 })
  })

  it('is that of the standing, whatever the format', () => {
    const sides = [{ id: 's', players: ['coldbrook', 'tarrablane'] }]
    const cards = [...CARDS, { player: 's', scores: CARDS[0]!.scores }]
    for (const format of ['stableford', 'medal', 'greensomes-medal', 'four-ball-stableford', 'par']) {
      const competition = { id: 'c', format }
      const day = aldermoss({ sides, cards, competitions: [competition] })
      const opened = openedHandicaps(day, competition)
      for (const { entrant, playingHandicap, handicaps } of scoreDay(day)[0]!.standings)
        for (const one of opened.get(entrant)!) expect(one.playingHandicap).toBe(handicaps[one.ball] ?? playingHandicap)
    }
  })

  it('has nothing to open where no handicap counts', () => {
    expect(ofDay({ id: 'c', format: 'gross' }).size).toBe(0)
  })
})

it('opens a match hole by hole: gross, strokes received, net', () => {
  const competition: Competition = { id: 'c', format: 'match', matches: [{ id: 'm', a: 'haldane', b: 'trevennor' }] }
  const day = aldermoss({ competitions: [competition] })
  const holes = openedMatches(day, competition).get('m')!
  // 20.098 less 0.629, rounded each: nineteen strokes, two on index 1 and one on every other hole.
  expect(holes).toHaveLength(18)
  expect(holes[3]).toEqual({
    hole: 4,
    a: [{ ball: 'haldane', gross: 5, strokes: 0, net: 5 }],
    b: [{ ball: 'trevennor', gross: 5, strokes: 2, net: 3 }],
  })
  expect(
    openedHandicaps(day, competition)
      .get('m')!
      .map(({ playingHandicap }) => playingHandicap),
  ).toEqual([1, 20])
})
