import type { DayId, SeasonId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { DayRecord } from '@/lib/facts/day-record'
import { type Book, reading } from './client'

export interface SocietyAtDesk {
  readonly slug: string
  readonly name: string
  readonly isDemo: boolean
  readonly members: number
  readonly courses: number
  readonly seasons: readonly {
    readonly seasonId: SeasonId
    readonly name: string
    readonly startsOn: string
    readonly endsOn: string
    readonly days: readonly {
      readonly dayId: DayId
      readonly slug: string
      readonly number: number
      readonly name: string
      readonly date: string
      readonly status: DayRecord['status']
      readonly calledOff: string | null
      readonly courseName: string
      readonly entered: number
      readonly published: number | null
    }[]
  }[]
}

/** Everything behind the first page of the desk, in one question. */
export async function societyAtDesk(societyId: SocietyId, on: Book = reading()): Promise<SocietyAtDesk | null> {
  const society = await on.society.findUnique({
    where: { id: societyId },
    select: {
      slug: true,
      name: true,
      isDemo: true,
      _count: { select: { courses: true, people: { where: { kind: 'member', leftOn: null } } } },
      seasons: {
        select: {
          id: true,
          name: true,
          startsOn: true,
          endsOn: true,
          days: {
            select: {
              id: true,
              slug: true,
              number: true,
              name: true,
              date: true,
              status: true,
              calledOffReason: true,
              rounds: { where: { number: 1 }, select: { courseName: true } },
              publications: { select: { number: true }, orderBy: { number: 'desc' }, take: 1 },
              _count: { select: { entries: { where: { status: 'entered' } } } },
            },
            orderBy: { number: 'asc' },
          },
        },
        orderBy: { startsOn: 'desc' },
      },
    },
  })
  if (!society) return null
  const { _count, seasons, ...rest } = society
  return {
    ...rest,
    members: _count.people,
    courses: _count.courses,
    seasons: seasons.map(({ id, days, ...season }) => ({
      seasonId: id,
      ...season,
      days: days.map(({ id: dayId, status, calledOffReason, rounds, publications, _count: counted, ...day }) => ({
        dayId,
        ...day,
        status: status as DayRecord['status'],
        calledOff: calledOffReason,
        courseName: rounds[0]?.courseName ?? '',
        entered: counted.entries,
        published: publications[0]?.number ?? null,
      })),
    })),
  }
}

export async function slugOfSociety(societyId: SocietyId, on: Book = reading()): Promise<string | null> {
  return (await on.society.findUnique({ where: { id: societyId }, select: { slug: true } }))?.slug ?? null
}

interface DayNear {
  readonly slug: string
  readonly number: number
  readonly name: string
  readonly date: string
}

export interface DayPlace extends DayNear {
  /** Days of the season. */
  readonly of: number
  readonly before: DayNear | null
  readonly after: DayNear | null
}

/** A day between its neighbours of the season, by date. */
export async function placeOfDay(societyId: SocietyId, slug: string, on: Book = reading()): Promise<DayPlace | null> {
  const found = await on.day.findUnique({ where: { societyId_slug: { societyId, slug } }, select: { seasonId: true } })
  if (!found) return null
  const days = await on.day.findMany({
    where: { societyId, seasonId: found.seasonId },
    select: { slug: true, number: true, name: true, date: true },
    orderBy: [{ date: 'asc' }, { number: 'asc' }],
  })
  const at = days.findIndex((day) => day.slug === slug)
  const day = days[at]
  return day ? { ...day, of: days.length, before: days[at - 1] ?? null, after: days[at + 1] ?? null } : null
}
