import 'server-only'
import type { DayStatus } from '@/lib/facts/day-record'
import { reading } from './client'
import { readAtOnce } from './write'

export interface FixtureRows {
  readonly slug: string
  readonly name: string
  readonly foundedYear: number | null
  readonly isDemo: boolean
  /** Newest first. */
  readonly seasons: readonly { readonly id: string; readonly name: string; readonly days: number }[]
  /** The one whose days these are: the one asked for, else the newest. */
  readonly season: string | null
  /** In their order. */
  readonly days: readonly {
    readonly slug: string
    readonly name: string
    readonly number: number
    readonly date: string
    readonly status: DayStatus
    /** Why the day was called off. */
    readonly calledOff: string | null
    readonly startPublished: boolean
    readonly courseName: string
    readonly firstTee: string
    readonly startKind: 'tee-times' | 'shotgun'
    readonly formats: readonly string[]
    readonly players: number
    readonly sheet: { readonly id: string; readonly number: number } | null
  }[]
}

export async function fixturesOf(societySlug: string, seasonName?: string): Promise<FixtureRows | null> {
  return readAtOnce(async (tx) => {
    const society = await tx.society.findUnique({
      where: { slug: societySlug },
      select: {
        id: true,
        slug: true,
        name: true,
        foundedYear: true,
        isDemo: true,
        seasons: {
          select: { id: true, name: true, _count: { select: { days: true } } },
          orderBy: { startsOn: 'desc' },
        },
      },
    })
    if (!society) return null
    const { id: societyId, seasons, ...head } = society
    const season = seasons.find((one) => one.name === seasonName) ?? seasons[0]
    const days = season
      ? await tx.day.findMany({
          where: { societyId, seasonId: season.id },
          select: {
            slug: true,
            name: true,
            number: true,
            date: true,
            status: true,
            startPublishedAt: true,
            calledOffReason: true,
            rounds: { where: { number: 1 }, select: { courseName: true, firstTee: true, startKind: true } },
            competitions: { select: { format: true }, orderBy: { number: 'asc' } },
            publications: { select: { id: true, number: true }, orderBy: { number: 'desc' }, take: 1 },
            _count: { select: { entries: { where: { status: 'entered' } } } },
          },
          orderBy: { number: 'asc' },
        })
      : []
    return {
      ...head,
      season: season?.name ?? null,
      seasons: seasons.map(({ _count, ...one }) => ({ ...one, days: _count.days })),
      days: days.map(
        ({ rounds, competitions, publications, _count, startPublishedAt, calledOffReason, status, ...day }) => ({
          ...day,
          status: status as DayStatus,
          startPublished: startPublishedAt !== null,
          calledOff: calledOffReason,
          courseName: rounds[0]?.courseName ?? '',
          firstTee: rounds[0]?.firstTee ?? '',
          startKind: rounds[0]?.startKind === 'shotgun' ? 'shotgun' : 'tee-times',
          formats: competitions.map((one) => one.format),
          players: _count.entries,
          sheet: publications[0] ?? null,
        }),
      ),
    }
  }, reading())
}
