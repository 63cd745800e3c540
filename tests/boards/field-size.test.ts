// Promise: the desk is told when the field makes another allowance the published one, with its source; never of a house choice.
import { describe, expect, it } from 'vitest'
import { fieldSizeNotes } from '@/lib/boards/field-size'
import { PUBLISHED_COUNTBACK } from '@/lib/facts/terms'

const day = (entered: number, allowance: number, allowanceFrom: 'published' | 'house-choice' = 'published') =>
  ({
    edition: '2024',
    frozenAt: null,
    entries: Array.from({ length: entered }, () => ({ status: 'entered' })),
    competitions: [
      {
        name: 'Heron Cup',
        format: 'stableford',
        terms: { allowance, allowanceFrom, ties: PUBLISHED_COUNTBACK, guests: 'guest-prize-only' },
      },
    ],
  }) as unknown as Parameters<typeof fieldSizeNotes>[0]

describe('the size of the field', () => {
  it('under thirty calls for 100 %, from thirty for 95 %', () => {
    expect(fieldSizeNotes(day(29, 95))).toEqual([
      'Heron Cup was called with 95 %. With 29 entered it is 100 %, the published figure for fewer than 30 players. Rules of Handicapping 2024, Appendix C, C/1.',
    ])
    expect(fieldSizeNotes(day(30, 95))).toEqual([])
    expect(fieldSizeNotes(day(30, 100))[0]).toContain('it is 95 %')
  })

  it('says nothing of a house choice, of an empty day and after the freeze', () => {
    expect(fieldSizeNotes(day(12, 90, 'house-choice'))).toEqual([])
    expect(fieldSizeNotes(day(0, 95))).toEqual([])
    expect(fieldSizeNotes({ ...day(12, 95), frozenAt: new Date() })).toEqual([])
  })
})
