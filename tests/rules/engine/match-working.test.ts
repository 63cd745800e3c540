// The working of a match ends on the figures of the board: on the terms of its own competition, part by part. The
// arithmetic is ours, worked out by hand on the four cards of Aldermoss Park; RoH 2024, 6.2 and Appendix C.

import { describe, expect, it } from 'vitest'
import type { Competition, Day } from '@/lib/rules/day'
import { scoreDay } from '@/lib/rules/score-day'
import type { WorkingStep } from '@/lib/rules/standings'
import { matchWorking } from '@/lib/rules/working/match-working'
import { aldermoss } from './aldermoss'

const SIDES = [
  { id: 's1', players: ['haldane', 'coldbrook'] },
  { id: 's2', players: ['trevennor', 'tarrablane'] },
]

function worked(more: Partial<Competition>, day: Partial<Day> = {}, hole = 1) {
  const isSingles = (more.format ?? 'match') === 'match' || more.format === 'three-part-match'
  const [a, b] = isSingles ? ['haldane', 'trevennor'] : ['s1', 's2']
  const competition = { id: 'c', format: 'match', matches: [{ id: 'm', a: a!, b: b! }], ...more }
  const whole = aldermoss({ sides: isSingles ? [] : SIDES, competitions: [competition], ...day })
  const match = scoreDay(whole)[0]!.matches![0]!
  return { match, steps: matchWorking(whole, match, hole, competition) }
}

const strokesIn = (steps: readonly WorkingStep[]) =>
  steps.filter(({ label }) => label.startsWith('Strokes for')).map(({ label, figure }) => [label.slice(12), figure])

const stepOf = (steps: readonly WorkingStep[], label: string) => steps.find((one) => one.label === label)

describe('the strokes of a match', () => {
  it('are those of the own allowance, not of the published one', () => {
    const { match, steps } = worked({ allowance: 75 })
    // 0.629 × 75 % = 0.472 is nought, 20.098 × 75 % = 15.074 is 15; at the published 100 % it would be 19.
    expect(match.strokes).toEqual({ haldane: 0, trevennor: 15 })
    expect(stepOf(steps, 'Strokes for trevennor')).toMatchObject({ figure: '15', sum: '15 − 0' })
    expect(stepOf(steps, 'Playing handicap of trevennor')).toMatchObject({
      figure: '15',
      sum: '20.098 × 75 % = 15.074',
      clause: 'Rules of Handicapping 2024, 6.2a; allowance, house choice',
    })
  })

  it('follow the difference the terms name', () => {
    const later = worked({ format: 'four-ball-match' }).steps
    expect(stepOf(later, 'Strokes for trevennor')).toMatchObject({ figure: '18', sum: '18.088 − 0.566' })
    expect(stepOf(later, 'Playing handicap of trevennor')!.sentence).toMatch(/Not rounded yet\.$/)
    const first = worked({ format: 'four-ball-match', matchDifference: 'rounded' }).steps
    expect(stepOf(first, 'Strokes for trevennor')).toMatchObject({ figure: '17', sum: '18 − 1' })
    expect(stepOf(first, 'Strokes for trevennor')!.clause).toMatch(/^Terms of the competition; /)
  })

  it('stop at the limit of the terms', () => {
    const { steps } = worked({ handicapLimit: { men: 18 } })
    expect(stepOf(steps, 'Handicap limit of trevennor')!.figure).toBe('18')
    expect(stepOf(steps, 'Strokes for trevennor')).toMatchObject({ figure: '17', sum: '18 − 1' })
  })

  it('divide the handicaps of a side where the house does', () => {
    const { steps } = worked({ format: 'foursomes-match', dividedBy: 4, handicapLimit: { women: 20 } })
    // (0.629 + 17.554) ÷ 4 = 4.546 and (20 + 20.098) ÷ 4 = 10.025; full figures, rounded once.
    expect(stepOf(steps, 'Playing handicap of haldane and coldbrook')!.sum).toBe('(0.629 + 17.554) ÷ 4 = 4.546')
    expect(stepOf(steps, 'Handicap limit of tarrablane')!.figure).toBe('20')
    expect(stepOf(steps, 'Strokes for trevennor and tarrablane')).toMatchObject({ figure: '5', sum: '10.025 − 4.546' })
  })

  it('add a plus handicap where the lowest has one', () => {
    const players = aldermoss({}).players.map((one) => (one.id === 'haldane' ? { ...one, indexTenths: -21 } : one))
    const { match, steps } = worked({}, { players })
    // −2.1 × 125 ÷ 113 − 2.8 = −5.123
    expect(stepOf(steps, 'Playing handicap of haldane')!.figure).toBe('+5')
    expect(stepOf(steps, 'Strokes for trevennor')).toMatchObject({ figure: '25', sum: '20 + 5' })
    expect(match.strokes.trevennor).toBe(25)
  })

  it('are none where no handicap counts', () => {
    const custom = {
      side: { from: 1, to: 1 },
      ball: 'own',
      strokes: { kind: 'none' },
      value: { kind: 'against-opponent', on: { kind: 'strokes' } },
      count: { kind: 'best', take: [1] },
    } as const
    const { steps } = worked({ custom })
    expect(stepOf(steps, 'Strokes')).toMatchObject({ figure: '0' })
    expect(strokesIn(steps)).toEqual([])
  })

  it.each<[string, Partial<Competition>]>([
    ['as published', {}],
    ['own allowance', { allowance: 60 }],
    ['four-ball', { format: 'four-ball-match', allowance: 75 }],
    ['rounded first', { format: 'four-ball-match', matchDifference: 'rounded' }],
    ['full figures', { matchDifference: 'unrounded' }],
    ['limited', { format: 'total-of-two-match', handicapLimit: { men: 12, women: 12 } }],
    ['greensomes', { format: 'greensomes-match' }],
    ['divided', { format: 'foursomes-match', dividedBy: 3 }],
  ])('end on those of the board: %s', (_, more) => {
    const { match, steps } = worked(more)
    expect(strokesIn(steps).map(([, figure]) => Number(figure))).toEqual(Object.values(match.strokes))
  })
})
