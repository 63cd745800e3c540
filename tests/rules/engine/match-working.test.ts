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

const said = (steps: readonly WorkingStep[]) =>
  steps
    .filter(({ label }) => !/handicap|Handicap|Strokes|Difference/.test(label))
    .map(({ figure, label, sum, sentence }) => [figure, label, ...(sum ? [sum] : []), sentence])

describe('the parts of a match', () => {
  // Ours: scratch on both sides, so that the holes are won as the strokes are written.
  const FOURS = new Array<number>(18).fill(4)
  const players = ['a', 'b'].map((id) => ({ id, name: id.toUpperCase(), indexTenths: 0, tee: 'yellow-men' }))
  const won = (...holes: number[]) => FOURS.map((four, at) => (holes.includes(at + 1) ? 3 : four))
  const match = (a: readonly number[], b: readonly number[], hole: number | null, more: Partial<Day> = {}) => {
    const competition = { id: 'c', format: 'three-part-match', matches: [{ id: 'm', a: 'a', b: 'b' }] }
    const cards = [
      { player: 'a', scores: a },
      { player: 'b', scores: b },
    ]
    const day = aldermoss({ players, cards, competitions: [competition], ...more })
    const result = scoreDay(day)[0]!.matches![0]!
    return { result, steps: matchWorking(day, result, hole, competition) }
  }

  it('each have a step with the value of the board', () => {
    // A wins 1 and 2; B wins 10 to 13 and leads the round by two.
    const { result, steps } = match(won(1, 2), won(10, 11, 12, 13), null)
    expect(result.parts!.map((part) => [part.name, part.result])).toEqual([
      ['front nine', '2&1'],
      ['back nine', '4&3'],
      ['whole', '2&1'],
    ])
    expect(said(steps)).toEqual([
      ['2&1', 'Front nine', '2 − 0', 'A won two holes, B no hole, six halved. A wins it, 2 up with 1 to play.'],
      ['4&3', 'Back nine', '4 − 0', 'A won no hole, B four holes, two halved. B wins it, 4 up with 3 to play.'],
      ['2&1', 'Whole', '4 − 2', 'A won two holes, B four holes, eleven halved. B wins it, 2 up with 1 to play.'],
    ])
  })

  it('say how they stand while the round is on, and what has not begun', () => {
    const { steps } = match(won(1).slice(0, 4), FOURS.slice(0, 4), null, { closed: false })
    expect(said(steps)).toEqual([
      ['1 up', 'Front nine', '1 − 0', 'A won one hole, B no hole, three halved. A 1 up with 5 to play.'],
      ['–', 'Back nine', 'Not started.'],
      ['1 up', 'Whole', '1 − 0', 'A won one hole, B no hole, three halved. A 1 up with 14 to play.'],
    ])
  })

  it('stand beside the match after a hole', () => {
    const { steps } = match(won(1, 2), won(10, 11, 12, 13), 11)
    expect(said(steps).slice(-2)).toEqual([
      ['level', 'Match after hole 11', 'The hole goes to B. Level with 7 to play.'],
      ['2 up', 'Back nine after hole 11', '2 − 0', 'A won no hole, B two holes, none halved. B 2 up with 7 to play.'],
    ])
    const over = match(won(1, 2), won(10, 11, 12, 13, 14), 18).steps
    expect(said(over).at(-1)).toEqual([
      '–',
      'Back nine after hole 18',
      'This hole does not count here: not played, or this part was over.',
    ])
  })
})

describe('the end of a match', () => {
  const FOURS = new Array<number>(18).fill(4)
  const ended = (more: object, outcome?: 'withdrawn' | 'disqualified', format = 'match') => {
    const players = ['a', 'b'].map((id) => ({ id, name: id.toUpperCase(), indexTenths: 0, tee: 'yellow-men' }))
    const competition = { id: 'c', format, matches: [{ id: 'm', a: 'a', b: 'b', ...more }] }
    const cards = [
      { player: 'a', scores: FOURS },
      { player: 'b', scores: outcome ? [4, 4] : FOURS, ...(outcome ? { outcome } : {}) },
    ]
    const day = aldermoss({ players, cards, competitions: [competition] })
    return said(matchWorking(day, scoreDay(day)[0]!.matches![0]!, null, competition))
  }

  it.each<[string, object, 'withdrawn' | 'disqualified' | undefined, string[]]>([
    ['halved', {}, undefined, ['halved', 'The match', 'A won no hole, B no hole, 18 halved. Halved.']],
    [
      'a hole conceded',
      { concededHoles: [{ hole: 3, to: 'b' }] },
      undefined,
      ['1 up', 'The match', '1 − 0', 'A won no hole, B one hole, 17 halved, hole 3 conceded to B. B wins it, 1 up.'],
    ],
    [
      'a walkover',
      { walkover: 'a' },
      undefined,
      ['won', 'How it ended', 'A walkover, nobody came to play against: A wins the match.'],
    ],
    ['conceded', { concededBy: 'a' }, undefined, ['won', 'How it ended', 'A conceded: B wins the match.']],
    [
      'withdrawn',
      {},
      'withdrawn',
      ['won', 'How it ended', 'B withdrew, and whoever withdraws concedes: A wins the match.'],
    ],
    ['disqualified', {}, 'disqualified', ['won', 'How it ended', 'B is disqualified: A wins the match.']],
    [
      'on an extra hole',
      {
        extraHoles: [
          { a: 4, b: 4 },
          { a: 5, b: 4 },
        ],
      },
      undefined,
      ['20th', 'Extra hole 2: hole 2', '5 to 4', 'Won by B, and the match with it.'],
    ],
  ])('%s', (_, more, outcome, last) => {
    expect(ended(more, outcome).at(-1)).toEqual(last)
  })

  it('says first what was played, without a winner on the course', () => {
    const played = ended({ concededHoles: [{ hole: 3, to: 'b' }], concededBy: 'b' })
    expect(played[0]).toEqual([
      '1 up',
      'On the course',
      '1 − 0',
      'A won no hole, B one hole, 17 halved, hole 3 conceded to B. B 1 up.',
    ])
  })

  it('leaves an abandoned match as it was', () => {
    const match = { id: 'm', a: 'a', b: 'b', abandoned: true, concededHoles: [{ hole: 1, to: 'a' as const }] }
    const competition = { id: 'c', format: 'match', matches: [match] }
    const players = ['a', 'b'].map((id) => ({ id, name: id.toUpperCase(), indexTenths: 0, tee: 'yellow-men' }))
    const cards = players.map(({ id }) => ({ player: id, scores: FOURS.slice(0, 10) }))
    const day = aldermoss({ players, cards, competitions: [competition] })
    const steps = said(matchWorking(day, scoreDay(day)[0]!.matches![0]!, null, competition))
    expect(steps.map((step) => step.slice(0, 2))).toEqual([
      ['1 up', 'On the course'],
      ['1 up', 'How it ended'],
    ])
  })
})

describe('a hole of a match of sides', () => {
  it('says whose ball counts, and adds both where both do', () => {
    const better = said(worked({ format: 'four-ball-match', allowance: 100 }, {}, 5).steps)
    // Hole 5 is index 13 for men: Coldbrook gets one of 17, Trevennor one of 19; 17 for women, one of 25.
    expect(better.slice(-3)).toEqual([
      ['4', 'haldane and coldbrook on hole 5', 'The better ball is that of haldane.'],
      ['3', 'trevennor and tarrablane on hole 5', 'The better ball is that of tarrablane.'],
      expect.arrayContaining(['Match after hole 5']),
    ])
    expect(better.at(-1)!.at(-1)).toMatch(/^The hole goes to trevennor and tarrablane\./)
    const both = said(worked({ format: 'total-of-two-match', allowance: 100 }, {}, 5).steps)
    expect(both.at(-3)!.slice(0, 3)).toEqual(['8', 'haldane and coldbrook on hole 5', '4 + 4'])
  })

  it.each(['match', 'four-ball-match', 'total-of-two-match', 'greensomes-match', 'three-part-match'])(
    '%s has a sentence and a clause for every step of every hole',
    (format) => {
      for (let hole = 1; hole <= 18; hole++)
        for (const step of worked({ format }, {}, hole).steps)
          expect(Object.values(step).every((text) => text !== '' && !/undefined|NaN/.test(text))).toBe(true)
    },
  )
})
