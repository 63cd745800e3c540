// Promise: of two desks at one course card the later loses nothing of either, and is told what both changed.
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type CardOfCourse, mergeCourses } from '@/lib/boards/merge-courses'
import type { KeepCourse } from '@/lib/facts/commands'
import { courseById, keepCourse } from '@/lib/society/keep-course'
import { ownBook } from '../../setup/copy'
import { course, got, type World, world } from './world'

let close: () => Promise<void>
let w: World
beforeAll(async () => {
  close = (await ownBook()).close
  w = await world()
})
afterAll(() => close())

/** Hole of the men's card with other yards. */
const withYards = (card: KeepCourse, hole: number, yards: number): KeepCourse => ({
  ...card,
  tees: card.tees.map((tee) =>
    tee.gender === 'men'
      ? { ...tee, holes: tee.holes.map((one) => (one.hole === hole ? { ...one, yards } : one)) }
      : tee,
  ),
})
const yardsNow = async (hole: number) => {
  const { tees } = got(await courseById(w.actor, w.courseId))
  return tees.find((tee) => tee.gender === 'men')!.holes[hole - 1]!.yards
}
const version = async () => got(await courseById(w.actor, w.courseId)).version

describe('a course card at two desks', () => {
  it('keeps both when they changed different holes, and says so', async () => {
    const seen = { courseId: w.courseId, version: await version(), was: course() }
    got(await keepCourse(w.actor, { ...withYards(course(), 4, 444), ...seen }))
    const later = got(await keepCourse(w.actor, { ...withYards(course(), 9, 199), ...seen }))
    expect(later.taken).toEqual(['Yellow, men, hole 4'])
    expect(await yardsNow(4)).toBe(444)
    expect(await yardsNow(9)).toBe(199)
  })

  it('names a hole that both changed, and keeps the later one only when it was told', async () => {
    const was = withYards(withYards(course(), 4, 444), 9, 199)
    const seen = { courseId: w.courseId, version: await version(), was }
    got(await keepCourse(w.actor, { ...withYards(was, 1, 401), ...seen }))
    const mine = { ...withYards(was, 1, 402), ...seen }
    const told = await keepCourse(w.actor, mine)
    expect(told).toMatchObject({
      code: 'course-moved-on',
      faults: [{ place: 'Yellow, men, hole 1', sentence: 'Yellow, men, hole 1: par 4, index 5, 401 yards now.' }],
    })
    expect(await yardsNow(1)).toBe(401)
    got(await keepCourse(w.actor, { ...mine, overrule: ['Yellow, men, hole 1'] }))
    expect(await yardsNow(1)).toBe(402)
  })

  it('refuses what fits on neither card alone: two holes with one index', async () => {
    const { name, place, tees } = got(await courseById(w.actor, w.courseId))
    const was = { name, place, tees: tees.map(({ teeId: _, ...tee }) => tee) } as CardOfCourse
    const swapped = (a: number, b: number): CardOfCourse => ({
      ...was,
      tees: was.tees.map((tee) => ({
        ...tee,
        holes: tee.holes.map((one) => {
          const other = one.hole === a ? b : one.hole === b ? a : one.hole
          return { ...one, strokeIndex: tee.holes[other - 1]!.strokeIndex }
        }),
      })),
    })
    const seen = { courseId: w.courseId, version: await version(), was } as unknown as Partial<KeepCourse>
    got(await keepCourse(w.actor, { ...(swapped(1, 2) as KeepCourse), ...seen }))
    const told = await keepCourse(w.actor, { ...(swapped(2, 3) as KeepCourse), ...seen })
    expect(told).toMatchObject({ ok: false, code: 'course-moved-on' })
    const overruled = await keepCourse(w.actor, {
      ...(swapped(2, 3) as KeepCourse),
      ...seen,
      overrule: ['Yellow, men, hole 2', 'Red, women, hole 2'],
    })
    expect(overruled).toMatchObject({ ok: false, code: 'not-understood' })
  })
})

describe('merging two cards', () => {
  const tee = (name: string) =>
    fc.record({
      name: fc.constant(name),
      gender: fc.constant('men' as const),
      courseRatingTenths: fc.integer({ min: 690, max: 691 }),
      slopeRating: fc.constant(113),
      holes: fc
        .array(fc.integer({ min: 3, max: 5 }), { minLength: 9, maxLength: 9 })
        .map((pars) => pars.map((par, at) => ({ hole: at + 1, par, strokeIndex: at + 1, yards: null }))),
    })
  const card: fc.Arbitrary<CardOfCourse> = fc.record({
    name: fc.constantFrom('Aldermoss', 'Aldermoss Park'),
    place: fc.constantFrom(null, 'Over the hill'),
    tees: fc
      .tuple(tee('White'), fc.option(tee('Yellow'), { nil: null }), fc.option(tee('Blue'), { nil: null }))
      .map((tees) => tees.filter((one) => one !== null)),
  })

  it('is mine where nobody else changed anything, and theirs where I did not', () => {
    fc.assert(
      fc.property(card, card, (was, other) => {
        expect(mergeCourses(was, other, was)).toEqual({ merged: other, collisions: [], taken: [] })
        const theirs = mergeCourses(was, was, other)
        expect(theirs.collisions).toEqual([])
        expect(new Set(theirs.merged.tees)).toEqual(new Set(other.tees))
        expect([theirs.merged.name, theirs.merged.place]).toEqual([other.name, other.place])
      }),
    )
  })

  it('names the same collisions from either side', () => {
    fc.assert(
      fc.property(card, card, card, (was, mine, theirs) => {
        const here = mergeCourses(was, mine, theirs).collisions
        const there = mergeCourses(was, theirs, mine).collisions
        expect(new Set(here)).toEqual(new Set(there))
      }),
    )
  })
})
