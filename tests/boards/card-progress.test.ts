// Promise: a card is in exactly one of five states, said in the same words everywhere; "on the 12th" names the flag being
// played, on a shotgun and on the second nine too; only a card handed in or accepted is "in".
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  CARD_PROGRESS,
  type CardProgress,
  cardProgress,
  isIn,
  isRound,
  leastProgress,
  progressInWords,
} from '@/lib/boards/card-progress'
import { CARD_STATES } from '@/lib/facts/day-record'
import { holesFrom } from '@/lib/rules/hole-numbers'

const EIGHTEEN = holesFrom({ holes: 18, firstHole: 1 }, 1)
const words = (order: readonly number[], played: number, state: (typeof CARD_STATES)[number] = 'out') =>
  progressInWords(cardProgress({ state, order, missing: order.slice(played) }))

describe('how far a card has come', () => {
  it('goes from not started over the hole being played to accepted', () => {
    expect(words(EIGHTEEN, 0)).toBe('not started')
    expect(words(EIGHTEEN, 1)).toBe('on the 2nd')
    expect(words(EIGHTEEN, 11)).toBe('on the 12th')
    expect(words(EIGHTEEN, 18)).toBe('finished, not signed')
    expect(words(EIGHTEEN, 18, 'handed-in')).toBe('handed in')
    expect(words(EIGHTEEN, 18, 'taken-in')).toBe('accepted')
  })

  it('names the flag where a shotgun group is, not how many holes it has played', () => {
    const from14 = holesFrom({ holes: 18, firstHole: 1 }, 14)
    expect(words(from14, 2)).toBe('on the 16th')
    expect(words(from14, 5)).toBe('on the 1st')
    expect(words(from14, 17)).toBe('on the 13th')
  })

  it('names the flags of a second nine', () => {
    expect(words(holesFrom({ holes: 9, firstHole: 10 }, 10), 3)).toBe('on the 13th')
  })

  it('goes back to the hole left out where the last one is written', () => {
    expect(progressInWords(cardProgress({ state: 'out', order: EIGHTEEN, missing: [5] }))).toBe('on the 5th')
    expect(
      progressInWords(cardProgress({ state: 'out', order: EIGHTEEN, missing: [5, 12, 13, 14, 15, 16, 17, 18] })),
    ).toBe('on the 12th')
  })

  it('waits for nobody on whom the committee has ruled', () => {
    expect(isIn(cardProgress({ state: 'out', order: EIGHTEEN, missing: EIGHTEEN, isRuledOut: true }))).toBe(true)
  })

  it('reads several cards as the one that has come least far', () => {
    const at = (...all: CardProgress[]) => progressInWords(leastProgress(all, EIGHTEEN))
    const on = (hole: number) => ({ state: 'on-hole', hole }) as const
    const [round, waits, handed] = [{ state: 'finished' }, { state: 'not-started' }, { state: 'handed-in' }] as const
    expect(at(waits, waits)).toBe('not started')
    expect(at(on(12), on(11))).toBe('on the 11th')
    expect(at(on(12), waits)).toBe('on the 1st')
    expect(at(round, on(18))).toBe('on the 18th')
    expect(at(handed, round)).toBe('finished, not signed')
    expect(at(handed, { state: 'accepted' })).toBe('handed in')
  })

  it('never names a hole that has a score, and is in only when it was handed in or accepted', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(9, 18),
        fc.nat(17),
        fc.array(fc.boolean(), { minLength: 18, maxLength: 18 }),
        fc.constantFrom(...CARD_STATES),
        (holes, start, written, state) => {
          const order = holesFrom({ holes, firstHole: 1 }, (start % holes) + 1)
          const missing = order.filter((_, at) => !written[at])
          const progress = cardProgress({ state, order, missing })
          expect(CARD_PROGRESS).toContain(progress.state)
          if (progress.state === 'on-hole') expect(missing).toContain(progress.hole)
          expect(isIn(progress)).toBe(state !== 'out')
          expect(isRound(progress)).toBe(state !== 'out' || missing.length === 0)
        },
      ),
    )
  })
})
