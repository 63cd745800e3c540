// Promise: the number on the flag and the place on the card become each other in one file, for either nine and eighteen.
// Common practice, no source: a round on the second nine of a course is played to the flags 10 to 18.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import {
  hasHole,
  holesFrom,
  holesOfRound,
  lastHoleOf,
  placeOfHole,
  rangeInWords,
  shownHole,
} from '@/lib/rules/hole-numbers'
import { ROOT, sources } from '../architecture/imports'

const EIGHTEEN = { holes: 18, firstHole: 1 }
const FRONT = { holes: 9, firstHole: 1 }
const BACK = { holes: 9, firstHole: 10 }

describe('hole numbers', () => {
  it('are those on the flags', () => {
    expect(holesOfRound(BACK)).toEqual([10, 11, 12, 13, 14, 15, 16, 17, 18])
    expect(holesOfRound(FRONT)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9])
    expect([lastHoleOf(EIGHTEEN), lastHoleOf(FRONT), lastHoleOf(BACK)]).toEqual([18, 9, 18])
    expect(rangeInWords(BACK)).toBe('holes 10 to 18')
  })

  it('lead to the place on the card and back', () => {
    for (const round of [EIGHTEEN, FRONT, BACK])
      holesOfRound(round).forEach((hole, place) => {
        expect(placeOfHole(round, hole)).toBe(place)
        expect(shownHole(round, place)).toBe(hole)
        expect(hasHole(round, hole)).toBe(true)
      })
  })

  it('of another nine are not of this round', () => {
    for (const hole of [0, 1, 9, 19, 12.5]) expect(hasHole(BACK, hole)).toBe(false)
    for (const hole of [0, 10, 18]) expect(hasHole(FRONT, hole)).toBe(false)
  })

  it('run from the hole a group began on round to it', () => {
    expect(holesFrom(BACK, 10)).toEqual(holesOfRound(BACK))
    expect(holesFrom(BACK, 16)).toEqual([16, 17, 18, 10, 11, 12, 13, 14, 15])
    expect(holesFrom(EIGHTEEN, 14).slice(0, 6)).toEqual([14, 15, 16, 17, 18, 1])
    expect(holesFrom(BACK, 3)).toEqual(holesOfRound(BACK))
  })

  it('are never used as a place anywhere else', () => {
    const asPlace = /\[[^\]\n]*\b(?:hole|Hole|startHole) - 1\b|\b(?:hole|startHole) > \w*\.?holes\b/
    const found = [...sources('lib'), ...sources('app')].filter(
      (path) => !path.includes('generated') && asPlace.test(readFileSync(join(ROOT, path), 'utf8')),
    )
    // A count by turns goes by the number of the hole in the eighteen; the house style shows one course of eighteen.
    expect(found).toEqual(['lib/rules/count/count-on-hole.ts', 'app/house-style/specimen.ts'])
  })
})
