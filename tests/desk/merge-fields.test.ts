// Promise: of two desks at one form neither writes an old value back, and a field both changed is named.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { mergeFields } from '@/lib/boards/merge-fields'

const form = fc.record({
  name: fc.nat(3),
  firstTee: fc.nat(3),
  places: fc.option(fc.nat(2)),
  terms: fc.array(fc.nat(2)),
})

describe('merging', () => {
  it('keeps every change of mine, takes every other change of theirs, and names what both changed', () => {
    fc.assert(
      fc.property(form, form, form, (was, mine, theirs) => {
        const { merged, collisions, taken } = mergeFields(was, mine, theirs)
        for (const key of ['name', 'firstTee', 'places', 'terms'] as const) {
          const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b)
          const [iDid, theyDid] = [!same(mine[key], was[key]), !same(theirs[key], was[key])]
          expect(merged[key]).toEqual(!iDid && theyDid ? theirs[key] : mine[key])
          expect(taken.includes(key)).toBe(!iDid && theyDid)
          expect(collisions.includes(key)).toBe(iDid && theyDid && !same(mine[key], theirs[key]))
        }
      }),
    )
  })

  it('takes nothing over of what was never shown', () => {
    expect(mergeFields({}, { name: 'mine' }, { name: 'theirs' })).toEqual({
      merged: { name: 'mine' },
      collisions: [],
      taken: [],
    })
  })

  it('sees no change where only the order of keys differs, or nothing is written as null', () => {
    const was = { terms: { a: 1, b: 2 } }
    const { taken } = mergeFields<{ terms: object }>(was, was, { terms: { b: 2, a: 1, c: null } })
    expect(taken).toEqual([])
  })
})
