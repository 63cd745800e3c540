import type { DayId, EntryId, PersonId, SideId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { DayStatus } from '@/lib/facts/day-record'
import { reading } from './client'
import { readAtOnce } from './write'

export interface MemberRows {
  readonly societySlug: string
  readonly societyName: string
  readonly seasonName: string | null
  readonly firstName: string
  readonly familyName: string
  readonly knownAs: string | null
  readonly memberSince: number | null
  readonly source: 'home-club' | 'society' | 'claimed'
  /** Newest first. */
  readonly records: readonly {
    readonly source: 'home-club' | 'society' | 'claimed'
    readonly indexTenths: number
    readonly from: string
    readonly reason: string
  }[]
  /** Newest first; only days with a card. */
  readonly days: readonly {
    readonly entryId: EntryId
    /** Sides of the day the member plays in. */
    readonly sideIds: readonly SideId[]
    readonly dayId: DayId
    readonly slug: string
    readonly name: string
    readonly date: string
    readonly courseName: string
    readonly status: DayStatus
    /** Number of the newest sheet. */
    readonly sheet: number | null
  }[]
}

type Source = MemberRows['source']

export async function memberRows(societyId: SocietyId, personId: PersonId): Promise<MemberRows | null> {
  return readAtOnce(async (tx) => {
    const person = await tx.person.findFirst({
      where: { id: personId, societyId },
      select: {
        firstName: true,
        familyName: true,
        knownAs: true,
        memberSince: true,
        handicapSource: true,
        society: {
          select: {
            slug: true,
            name: true,
            seasons: { select: { name: true }, orderBy: { startsOn: 'desc' }, take: 1 },
          },
        },
        records: {
          select: { source: true, indexTenths: true, from: true, reason: true },
          orderBy: { sequence: 'desc' },
        },
      },
    })
    if (!person) return null
    const entries = await tx.entry.findMany({
      // Of a side with one card only its first player has one: a side somebody of which has a card had a round.
      where: {
        personId,
        societyId,
        status: 'entered',
        day: { calledOffAt: null },
        OR: [
          { cards: { some: {} } },
          { sideMember: { some: { side: { members: { some: { entry: { cards: { some: {} } } } } } } } },
        ],
      },
      select: {
        id: true,
        sideMember: { select: { sideId: true } },
        day: {
          select: {
            id: true,
            slug: true,
            name: true,
            date: true,
            status: true,
            rounds: { where: { number: 1 }, select: { courseName: true } },
            publications: { select: { number: true }, orderBy: { number: 'desc' }, take: 1 },
          },
        },
      },
      orderBy: { day: { date: 'desc' } },
    })
    const { society, records, handicapSource, ...rest } = person
    return {
      ...rest,
      societySlug: society.slug,
      societyName: society.name,
      seasonName: society.seasons[0]?.name ?? null,
      source: handicapSource as Source,
      records: records.map((one) => ({ ...one, source: one.source as Source })),
      days: entries.map(({ id, sideMember, day }) => ({
        entryId: id,
        sideIds: sideMember.map((one) => one.sideId),
        dayId: day.id,
        slug: day.slug,
        name: day.name,
        date: day.date,
        courseName: day.rounds[0]?.courseName ?? '',
        status: day.status as DayStatus,
        sheet: day.publications[0]?.number ?? null,
      })),
    }
  }, reading())
}

export async function sheetText(dayId: DayId, number: number): Promise<string | null> {
  const row = await reading().publication.findUnique({
    where: { dayId_number: { dayId, number } },
    select: { sheet: true },
  })
  return row?.sheet ?? null
}
