// The card's columns and words against what the competition counts: middle column level par after strokes, whatever
// the reading, and the four cards of Aldermoss Park worth what they are worth by hand.

import { describe, expect, it } from 'vitest'
import {
  HEADINGS,
  holeValue,
  levelOn,
  OFFSETS,
  said,
  totalFigure,
  totalOf,
  workingOf,
  worth,
} from '@/app/card/_phone/reading'
import { aldermossPack, FOUR, GROSS, POINTS } from '../outbox/aldermoss-four'

const pack = aldermossPack()
const scored = (entryId: (typeof FOUR)[number]) =>
  pack.cards
    .find((card) => card.entryId === entryId)!
    .holes.map((hole, index) => ({ ...hole, score: GROSS[entryId][index] ?? null }))

describe('the five columns', () => {
  it('stand at their heading for every player, hole and stroke', () => {
    for (const card of pack.cards)
      for (const hole of card.holes)
        for (const [index, offset] of OFFSETS.entries()) {
          const score = levelOn('points', hole) + offset
          if (score < 1) continue
          expect(String(holeValue('points', hole, score))).toBe(HEADINGS.points.columns[index])
          const over = (holeValue('net', hole, score) as number) - hole.par
          expect(over).toBe(offset)
          expect(HEADINGS.par.columns[index]).toBe(
            ['lost', 'half', 'won'][(holeValue('par', hole, score) as number) + 1],
          )
        }
  })

  it('give no strokes in a gross competition', () => {
    const hole = { par: 4, strokes: 2 }
    expect(levelOn('gross', hole)).toBe(4)
    expect(worth('gross', hole, 5)).toBe('1 over')
  })
})

describe('totals', () => {
  it.each(FOUR)('are right for %s', (entryId) => {
    expect(totalOf('points', scored(entryId)).value).toBe(POINTS[entryId])
    expect(totalOf('gross', scored(entryId)).gross).toBe(GROSS[entryId].reduce((sum, each) => sum + each, 0))
  })

  it('have no figure in stroke play once a hole has no score, and go on in Stableford', () => {
    const holes = scored('trevennor').map((hole, index) => (index === 3 ? { ...hole, score: 'x' as const } : hole))
    expect(totalFigure('net', totalOf('net', holes))).toBe('–')
    expect(totalOf('points', holes).value).toBe(POINTS.trevennor - 3)
  })

  it('show a par card up or down', () => {
    expect(totalFigure('par', { value: -3, gross: 80, played: 18 })).toBe('−3')
    expect(totalFigure('par', { value: 2, gross: 80, played: 18 })).toBe('+2')
    expect(totalFigure('par', { value: 0, gross: 80, played: 18 })).toBe('0')
  })
})

describe('words', () => {
  const hole = { par: 4, strokes: 1, strokeIndex: 4 }
  it('say what a score is worth', () => {
    expect(said('points', hole, 5)).toBe('net 4, 2 points')
    expect(said('points', hole, 6)).toBe('net 5, 1 point')
    expect(said('points', hole, 'x')).toBe('no score, 0 points')
    expect(said('net', hole, 4)).toBe('net 3, 1 under')
    expect(said('net', hole, 'x')).toBe('no score, the card does not count')
    expect(said('par', hole, 4)).toBe('net 3, hole won')
    expect(said('par', hole, 'x')).toBe('no score, hole lost')
  })

  it('show the working, with strokes a plus player gives back', () => {
    expect(workingOf('points', hole, 5).sentence).toBe('5 on a par 4, index 4, 1 stroke: net 4, 2 points.')
    expect(workingOf('points', { ...hole, strokes: -1 }, 4).sentence).toBe(
      '4 on a par 4, index 4, 1 stroke given back: net 5, 1 point.',
    )
    expect(workingOf('gross', hole, 5).sentence).toBe('5 on a par 4: 1 over.')
  })
})
