import type { DayId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { CalledOff, DayStatus } from '@/lib/facts/day-record'
import { calledOffOf } from './called-off'
import { reading, type Tx } from './client'
import { boardVersionOf, WITH_EARLIER } from './day-matches'

/** How a board's version is written: what the desk changed, then what the scores changed. */
export function versionText(day: { readonly version: number; readonly scoreVersion: number }): string {
  return `${day.version}.${day.scoreVersion}`
}

const MOVING = { version: true, scoreVersion: true, ...WITH_EARLIER } as const

/** Of the board: an earlier day that is counted here moves it too. */
export async function dayVersionOf(dayId: DayId): Promise<string | null> {
  const day = await reading().day.findUnique({ where: { id: dayId }, select: MOVING })
  return day && versionText({ version: day.version, scoreVersion: boardVersionOf(day).boardVersion })
}

export async function dayAt(
  societySlug: string,
  daySlug: string,
): Promise<{ readonly dayId: DayId; readonly version: string } | null> {
  const day = await reading().day.findFirst({
    where: { slug: daySlug, society: { slug: societySlug } },
    select: { id: true, ...MOVING },
  })
  if (!day) return null
  const { boardVersion } = boardVersionOf(day)
  return { dayId: day.id, version: versionText({ version: day.version, scoreVersion: boardVersion }) }
}

export interface DayNow {
  readonly id: string
  readonly version: number
  readonly scoreVersion: number
  readonly status: DayStatus
  readonly date: string
  readonly calledOff: CalledOff | null
  readonly playedAheadAt: Date | null
}

const NOW = {
  id: true,
  version: true,
  scoreVersion: true,
  status: true,
  date: true,
  calledOffAt: true,
  calledOffReason: true,
  playedAheadAt: true,
} as const

/** Begins a change at the desk: takes the write lock with the day's row, then says how the day stands. */
export async function takeDay(tx: Tx, societyId: SocietyId, dayId: DayId): Promise<DayNow | null> {
  const there = await tx.day.updateMany({ where: { id: dayId, societyId }, data: { scoreVersion: { increment: 0 } } })
  if (there.count === 0) return null
  return dayNow(await tx.day.findUniqueOrThrow({ where: { id: dayId }, select: NOW }))
}

function dayNow<T extends { status: string; calledOffAt: Date | null; calledOffReason: string | null }>(day: T) {
  const { calledOffAt, calledOffReason, ...rest } = day
  return { ...rest, status: day.status as DayStatus, calledOff: calledOffOf({ calledOffAt, calledOffReason }) }
}

export async function moveDayVersion(tx: Tx, dayId: DayId): Promise<DayNow> {
  return dayNow(await tx.day.update({ where: { id: dayId }, data: { version: { increment: 1 } }, select: NOW }))
}
