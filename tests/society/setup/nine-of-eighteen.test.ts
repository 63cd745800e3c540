// Promise: a nine of a course of eighteen is played off its own rating (Rules of Handicapping 2024, 6.1b), and never off a
// figure worked out from the eighteen.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { nineOf, teesOf, toKeep } from '@/app/desk/[society]/courses/card-draft'
import { keepCourse as keepCourseSchema } from '@/lib/facts/commands'
import { callDay, proposeDay } from '@/lib/society/call-day'
import { enterPlayers } from '@/lib/society/enter-players'
import { handicapTable } from '@/lib/society/freeze-handicaps'
import { courseById, keepCourse } from '@/lib/society/keep-course'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../../setup/copy'
import { asId } from '../../setup/ids'
import { got, type World, world } from './world'

let close: () => Promise<void>
let w: World
beforeAll(async () => {
  close = (await ownBook()).close
  w = await world()
})
afterAll(() => close())

const proposal = async () => {
  const day = got(await proposeDay(w.actor, w.seasonId))
  return { ...day, name: 'Evening nine', date: '2031-07-03', entriesCloseOn: null, holes: 9 as const }
}

it('is refused until the nine has its rating, and says where to put it', async () => {
  const asked = await callDay(w.actor, await proposal())
  expect(asked).toMatchObject({ ok: false, code: 'not-understood' })
  if (!asked.ok) expect(asked.faults.find((one) => one.place === 'holes')?.sentence).toMatch(/rating.*Aldermoss Park/)
})

it('is added to the card from the eighteen without a rating, and played off its own', async () => {
  const card = got(await courseById(w.actor, w.courseId))
  const drafts = teesOf(card)
  const back = drafts.map((tee) => nineOf(tee, 10))
  const known = { courseId: card.courseId, version: card.version }
  const blank = keepCourseSchema.safeParse(toKeep(card.name, '', [...drafts, ...back], known))
  expect(blank.error?.issues.some((one) => one.path.includes('courseRatingTenths'))).toBe(true)

  const rated = back.map((tee) => ({ ...tee, courseRating: '35.3', slopeRating: '121' }))
  const kept = keepCourseSchema.parse(toKeep(card.name, '', [...drafts, ...rated], known))
  got(await keepCourse(w.actor, kept))
  const after = got(await courseById(w.actor, w.courseId))
  const nines = ['women', 'men'].map((gender) =>
    after.tees.find((tee) => tee.holes.length === 9 && tee.gender === gender),
  )
  expect(nines.map((tee) => [tee?.name, tee?.holes[0]?.hole, tee?.holes.at(-1)?.hole])).toEqual([
    ['Red, back nine', 10, 18],
    ['Yellow, back nine', 10, 18],
  ])
  expect(teesOf(after).filter((tee) => tee.nine === 10)).toHaveLength(2)

  const [women, men] = nines
  const mixed = await callDay(w.actor, { ...(await proposal()), teeMen: men!.teeId })
  expect(mixed.ok ? [] : mixed.faults.map((one) => one.place)).toContain('teeWomen')
  const asked = { ...(await proposal()), teeMen: men!.teeId, teeWomen: women!.teeId }
  const steps = [{ kind: 'last' as const, holes: 3 }]
  const competitions = asked.competitions.map((one) => ({ ...one, terms: { ...one.terms, ties: { steps } } }))
  const { dayId } = got(await callDay(w.actor, { ...asked, competitions }))
  const record = (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
  expect(record.round).toMatchObject({ holes: 9, firstHole: 10, courseName: 'Aldermoss Park, holes 10 to 18' })
  expect(record.tees.map((tee) => [tee.name, tee.holes.map((hole) => hole.hole).join()])).toEqual([
    ['Red, back nine', '10,11,12,13,14,15,16,17,18'],
    ['Yellow, back nine', '10,11,12,13,14,15,16,17,18'],
  ])
  // Half of 20.7 is 10.4 (6.1b); 10.4 × 121 ÷ 113 + (35.3 − 36) = 10.436.
  got(await enterPlayers(w.actor, { dayId, version: record.version, enter: [{ personId: asId(w.people[2]!) }] }))
  expect(got(await handicapTable(w.actor, dayId)).rows[0]).toMatchObject({ index: '20.7', unrounded: '10.436' })
})
