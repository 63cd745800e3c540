// Founds the invented society: officers, courses, members with their figures, the season and its nine days.

import type { Actor } from '@/lib/facts/actor'
import { addDays, momentIn } from '@/lib/facts/calendar'
import type { CompetitionInput } from '@/lib/facts/commands'
import type { CourseId, PersonId } from '@/lib/facts/ids'
import { callDay, proposeCompetition } from '@/lib/society/call-day'
import { foundSociety } from '@/lib/society/found-society'
import { giveDuty } from '@/lib/society/give-duty'
import { courseById, keepCourse } from '@/lib/society/keep-course'
import { keepPerson } from '@/lib/society/keep-person'
import { openSeason } from '@/lib/society/open-season'
import type { DayInPlay } from './clock-of-demo'
import { COURSE_DATA, courseOf } from './courses'
import { DAYS, type SeedDay } from './days'
import { EARLIER, MEMBERS, OFFICERS, PASSWORD } from './members'
import { must } from './must'

export type Officer = Extract<Actor, { kind: 'officer' }>

export interface Founded {
  readonly secretary: Officer
  readonly handicapSecretary: Officer
  /** Person ids by family name. */
  readonly people: ReadonlyMap<string, PersonId>
  /** Address parts of the days by key. */
  readonly days: ReadonlyMap<string, string>
  readonly zone: string
  readonly dateOf: (key: string) => string
}

export async function founded({ date: today, starts }: DayInPlay, zone: string): Promise<Founded> {
  const dateOf = (key: string) => addDays(today, DAYS.find((day) => day.key === key)!.offset)
  const spring = momentIn(addDays(dateOf('day-1'), -60), '20:00', zone)
  const first = OFFICERS[0]
  const name = (familyName: string) => {
    const member = MEMBERS.find((one) => one.familyName === familyName)!
    return `${member.firstName} ${member.familyName}`
  }
  const { societyId, userId } = must(
    await foundSociety(
      {
        name: 'Fernbrake Golf Society',
        slug: 'fernbrake',
        foundedYear: 1987,
        isDemo: true,
        officer: { name: name(first.familyName), email: first.email, password: PASSWORD },
      },
      spring,
    ),
    'founding the society',
  )
  const secretary: Officer = {
    kind: 'officer',
    societyId,
    userId,
    name: name(first.familyName),
    duties: ['secretary'],
  }
  const people = await members(secretary, spring)
  let handicapSecretary = secretary
  for (const { familyName, email, duty } of OFFICERS.slice(1)) {
    const given = must(
      await giveDuty(
        secretary,
        { name: name(familyName), email, duty, password: PASSWORD, personId: people.get(familyName) },
        spring,
      ),
      `the duty of ${duty}`,
    )
    if (duty === 'handicap-secretary')
      handicapSecretary = { ...secretary, userId: given.userId, name: name(familyName), duties: [duty] }
  }
  const days = await season(secretary, dateOf, await courses(secretary, spring), zone, starts[0])
  return { secretary, handicapSecretary, people, days, zone, dateOf }
}

async function members(secretary: Officer, when: Date): Promise<ReadonlyMap<string, PersonId>> {
  const people = new Map<string, PersonId>()
  for (const [at, { tenths, source, ...member }] of MEMBERS.entries()) {
    const kept = await keepPerson(
      secretary,
      {
        ...member,
        kind: 'member',
        email: `${member.firstName}.${member.familyName}@example.org`.toLowerCase(),
        handicapSource: source,
        indexTenths: EARLIER[member.familyName]?.[0]?.tenths ?? tenths,
        memberSince: 1987 + ((at * 11) % 37),
      },
      when,
    )
    people.set(member.familyName, must(kept, member.familyName).personId)
  }
  return people
}

async function courses(secretary: Officer, when: Date): Promise<ReadonlyMap<string, CourseId>> {
  const ids = new Map<string, CourseId>()
  for (const data of COURSE_DATA)
    ids.set(data.name, must(await keepCourse(secretary, courseOf(data), when), data.name).courseId)
  return ids
}

/** "2026", or "2025/26" for a season over the turn of the year. */
export function seasonName(from: string, to: string): string {
  const [first, last] = [from.slice(0, 4), to.slice(0, 4)]
  return first === last ? first : `${first}/${last.slice(2)}`
}

async function season(
  secretary: Officer,
  dateOf: (key: string) => string,
  courseIds: ReadonlyMap<string, CourseId>,
  zone: string,
  startInPlay: string | undefined,
): Promise<ReadonlyMap<string, string>> {
  const [from, to] = [dateOf('day-1'), dateOf('day-9')]
  const { seasonId } = must(
    await openSeason(secretary, { name: seasonName(from, to), startsOn: addDays(from, -30), endsOn: addDays(to, 30) }),
    'the season',
  )
  const days = new Map<string, string>()
  for (const day of DAYS) {
    const date = dateOf(day.key)
    const course = must(await courseById(secretary, courseIds.get(day.course)!), day.course)
    const tee = (called: string, gender: 'men' | 'women') =>
      course.tees.find((one) => one.name === called && one.gender === gender)?.teeId ?? null
    const called = await callDay(
      secretary,
      {
        seasonId,
        name: day.name,
        date,
        courseId: course.courseId,
        startKind: day.start ?? 'tee-times',
        firstTee: day.firstTee ?? (day.offset === 0 ? startInPlay : undefined) ?? '10:00',
        intervalMinutes: 10,
        entriesCloseOn: addDays(date, -10),
        places: 36,
        teeMen: tee(day.whiteTees ? 'White' : 'Yellow', 'men'),
        teeWomen: tee('Red', 'women'),
        competitions: day.competitions.map((one) => competition(one, date, day)),
      },
      // Six weeks ahead, and never after the moment at which the demonstration is made.
      momentIn(addDays(dateOf('day-1'), -45), '19:30', zone),
    )
    days.set(day.key, must(called, day.name).slug)
  }
  return days
}

function competition(
  { name, format, allowance }: SeedDay['competitions'][number],
  date: string,
  day: SeedDay,
): CompetitionInput {
  const proposed = proposeCompetition(format, date, 36)
  const isFirst = day.competitions[0]!.name === name
  const prize = (called: string, place: number, valuePence: number, eligible: 'members' | 'guests' = 'members') => ({
    name: called,
    place,
    eligible,
    valuePence,
  })
  return {
    ...proposed,
    name,
    terms: { ...proposed.terms, allowance },
    prizes: isFirst
      ? [
          prize('First', 1, 4000),
          prize('Second', 2, 2500),
          prize('Third', 3, 1500),
          prize('Best guest', 1, 1500, 'guests'),
        ]
      : [{ ...prize('Winners', 1, 2000), eligible: 'everybody' as const }],
  }
}
