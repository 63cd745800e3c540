import type { DayId, SocietyId, UserId } from '@/lib/facts/ids'
import 'server-only'
import { reading, type Tx } from './client'

export interface SheetKept {
  readonly number: number
  /** JSON, as it was published. */
  readonly sheet: string
}

export interface SheetLine {
  readonly number: number
  readonly publishedAt: Date
  readonly reason: string | null
}

/** One sheet, the newest unless told, and the list of all; null when there is no such day. */
export async function sheetsOf(
  societySlug: string,
  daySlug: string,
  number?: number,
): Promise<{ readonly one: SheetKept | null; readonly all: readonly SheetLine[] } | null> {
  const day = await reading().day.findFirst({
    where: { slug: daySlug, society: { slug: societySlug } },
    select: {
      id: true,
      publications: { select: { number: true, publishedAt: true, reason: true }, orderBy: { number: 'asc' } },
    },
  })
  if (!day) return null
  const wanted = number ?? day.publications.at(-1)?.number
  const one =
    wanted === undefined
      ? null
      : await reading().publication.findUnique({
          where: { dayId_number: { dayId: day.id, number: wanted } },
          select: { number: true, sheet: true },
        })
  return { one, all: day.publications }
}

export async function sheetById(id: string): Promise<SheetKept> {
  return reading().publication.findUniqueOrThrow({ where: { id }, select: { number: true, sheet: true } })
}

/** The newest sheet, for a reader at the desk; null before the first. */
export async function newestSheetNow(dayId: DayId): Promise<SheetKept | null> {
  return reading().publication.findFirst({
    where: { dayId },
    select: { number: true, sheet: true },
    orderBy: { number: 'desc' },
  })
}

/** The newest sheet from inside the transaction that may publish the next. */
export async function newestSheet(
  tx: Tx,
  dayId: DayId,
): Promise<{ readonly number: number; readonly sheet: string; readonly reason: string | null } | null> {
  return tx.publication.findFirst({
    where: { dayId },
    select: { number: true, sheet: true, reason: true },
    orderBy: { number: 'desc' },
  })
}

export async function addSheet(
  tx: Tx,
  sheet: {
    readonly id: string
    readonly societyId: SocietyId
    readonly dayId: DayId
    readonly number: number
    readonly sheet: string
    readonly reason: string | null
    readonly edition: string
    readonly scoreVersion: number
    readonly byUserId: UserId
    readonly byName: string
    readonly publishedAt: Date
  },
): Promise<void> {
  await tx.publication.create({ data: sheet })
}
