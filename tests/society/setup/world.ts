// A small society for the tests of the desk: one officer, one course, eight members with figures, one season.

import type { Actor } from '@/lib/facts/actor'
import type { KeepCourse } from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import type { CourseId, PersonId, SeasonId } from '@/lib/facts/ids'
import type { Result } from '@/lib/result'
import { callDay, proposeDay } from '@/lib/society/call-day'
import { foundSociety } from '@/lib/society/found-society'
import { courseById, keepCourse } from '@/lib/society/keep-course'
import { keepPerson } from '@/lib/society/keep-person'
import { openSeason } from '@/lib/society/open-season'
import { book } from '@/lib/store/client'

export function got<T>(result: Result<T>): T {
  if (result.ok) return result.value
  throw new Error(`${result.code}: ${result.sentence} ${JSON.stringify(result.faults)}`)
}

const PARS = [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 4, 5, 4, 3, 4, 5]
const INDEXES = [5, 11, 17, 1, 13, 7, 9, 15, 3, 10, 4, 18, 2, 14, 8, 12, 16, 6]

export const course = (name = 'Aldermoss Park'): KeepCourse => ({
  name,
  place: null,
  tees: [
    { name: 'Yellow', gender: 'men' as const, courseRatingTenths: 692, slopeRating: 125, holes: holes(0) },
    { name: 'Red', gender: 'women' as const, courseRatingTenths: 709, slopeRating: 125, holes: holes(1) },
  ],
})

/** The women's par is one higher on the thirteenth. */
function holes(more: number) {
  return PARS.map((par, at) => ({
    hole: at + 1,
    par: at === 12 ? par + more : par,
    strokeIndex: INDEXES[at]!,
    yards: 300 + at,
  }))
}

export const MEMBERS = [
  ['Corin', 'Haldane', 'men', 31],
  ['Emrys', 'Coldbrook', 'men', 184],
  ['Jago', 'Trevennor', 'men', 207],
  ['Una', 'Tarrablane', 'women', 247],
  ['Freya', 'Holmgarth', 'women', 201],
  ['Magnus', 'Storrey', 'men', 213],
  ['Wilf', 'Thackerstone', 'men', 173],
  ['Petra', 'Ashgill', 'women', 99],
] as const

export interface World {
  readonly actor: Extract<Actor, { kind: 'officer' }>
  readonly courseId: CourseId
  readonly seasonId: SeasonId
  readonly people: readonly PersonId[]
}

/** Dates are far in the future, so that no test depends on the day on which it runs. */
export const DAY = '2031-06-14'

export async function world(slug = 'fernbrake'): Promise<World> {
  const officer = { name: 'Petra Ashgill', email: `secretary-${slug}@example.org`, password: 'a long enough password' }
  const { societyId, userId } = got(await foundSociety({ name: `Society ${slug}`, slug, officer }))
  const actor = { kind: 'officer', societyId, userId, name: officer.name, duties: ['secretary'] } as const
  const { courseId } = got(await keepCourse(actor, course()))
  const { seasonId } = got(await openSeason(actor, { name: '2031', startsOn: '2031-01-01', endsOn: '2031-12-31' }))
  const people: PersonId[] = []
  for (const [firstName, familyName, gender, indexTenths] of MEMBERS) {
    const kept = await keepPerson(actor, {
      firstName,
      familyName,
      gender,
      kind: 'member',
      handicapSource: 'home-club',
      indexTenths,
    })
    people.push(got(kept).personId)
  }
  return { actor, courseId, seasonId, people }
}

/** Its date lies far ahead, and an officer has said that it is played early, so that its cards can be taken. */
export async function aDay(w: World, over: object = {}) {
  const day = await aDayAhead(w, over)
  await book().day.update({ where: { id: day.dayId }, data: { playedAheadAt: new Date() } })
  return day
}

/** The same, as it is called: nothing of it is keyed or published before its date. */
export async function aDayAhead(w: World, over: object = {}) {
  const proposal = got(await proposeDay(w.actor, w.seasonId))
  const singles = proposal.competitions[0]!
  const pairs = {
    name: 'Pairs',
    format: 'four-ball-stableford',
    terms: { ...singles.terms, allowance: 85, allowanceFrom: 'published' as const },
    prizes: [],
  }
  return got(
    await callDay(w.actor, { ...proposal, name: 'Spring Cup', date: DAY, competitions: [singles, pairs], ...over }),
  )
}

/** The form of a day as it stands. */
export async function formOf(w: World, day: DayRecord, over: object = {}) {
  const tee = (gender: string) => day.tees.find((one) => one.gender === gender && one.isDefault)?.name
  const { tees } = got(await courseById(w.actor, day.round.courseId))
  return {
    seasonId: day.season.id,
    name: day.name,
    date: day.date,
    courseId: day.round.courseId,
    holes: 18 as const,
    startKind: day.round.startKind,
    firstTee: day.round.firstTee,
    intervalMinutes: day.round.intervalMinutes,
    entriesCloseOn: day.entriesCloseOn,
    places: 8,
    teeMen: tees.find((one) => one.gender === 'men' && one.name === tee('men'))?.teeId ?? null,
    teeWomen: tees.find((one) => one.gender === 'women' && one.name === tee('women'))?.teeId ?? null,
    competitions: day.competitions.map(({ name, format, terms, prizes }) => ({
      name,
      format,
      terms,
      prizes: prizes.map(({ number: _, ...prize }) => prize),
    })),
    ...over,
  }
}
