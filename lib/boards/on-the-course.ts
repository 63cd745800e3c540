// Where everybody is: each group against its own expected pace and against the group in front, who has been silent, who
// disagrees, and what the phones say they still keep.

import { momentIn } from '@/lib/facts/calendar'
import type { DayRecord, FactRecord, GroupRecord } from '@/lib/facts/day-record'
import type { CardId, DayId, DeviceId, GroupId } from '@/lib/facts/ids'
import { isStopped, type PlayNow, playNow } from '@/lib/facts/play-stop'
import { holesFrom } from '@/lib/rules/hole-numbers'
import { dayHead } from './board'
import { cardsAsTheyStand } from './day-of-record'
import { namesOf } from './entrant-names'
import { groupsOnCourse } from './groups-on-course'
import { minutesPlayed, minutesToEnd } from './pace'
import { startHoleIn } from './start-holes'
import type { DayHead, GroupOnCourse } from './views'

export const SILENT_MINUTES = 20
/** Behind by less than this is nothing to walk out for. */
const LATE_MINUTES = 10

export interface GroupPhone {
  readonly deviceId: DeviceId
  readonly lastSeen: string
  readonly unsent: number
  readonly appVersion: string | null
}

export interface GroupWhere {
  readonly number: number
  readonly startTime: string
  readonly startHole: number
  readonly startsAt: string
  readonly names: readonly string[]
  readonly state: 'not-started' | 'out' | 'round'
  readonly onHole: number | null
  readonly through: number
  /** Hole they would be on at the expected pace; null before their start and after their round. */
  readonly expectedHole: number | null
  /** Minutes behind the expected pace at the last hole they finished; ahead is negative. */
  readonly late: number | null
  /** Minutes behind the group in front on the last hole both finished, and what it was on the tee. */
  readonly gap: { readonly inFront: number; readonly minutes: number; readonly atStart: number } | null
  /** Late, and the course in front of them is empty. */
  readonly isHoldingUp: boolean
  readonly silentMinutes: number | null
  readonly isSilent: boolean
  readonly notAgreed: readonly { readonly name: string; readonly cardId: CardId; readonly holes: readonly number[] }[]
  readonly phones: readonly GroupPhone[]
  readonly unsent: number
}

export interface CourseView extends DayHead {
  readonly dayId: DayId
  readonly now: string
  readonly holes: readonly { readonly hole: number; readonly par: number }[]
  readonly groups: readonly GroupWhere[]
  readonly play: PlayNow | null
  readonly isStopped: boolean
  readonly stops: readonly {
    readonly number: number
    readonly kind: PlayNow['kind']
    readonly reason: string
    readonly by: string
    readonly at: string
  }[]
}

export interface PhoneOfGroup extends Omit<GroupPhone, 'lastSeen'> {
  readonly groupId: GroupId
  readonly lastSeen: Date
}

interface Walked {
  readonly group: GroupRecord
  readonly where: GroupOnCourse
  readonly start: Date
  readonly order: readonly number[]
  /** Expected minutes from the first start of the day to the end of a hole, by hole. */
  readonly expected: ReadonlyMap<number, number>
  /** The same as it was played; only holes whose time is known. */
  readonly done: ReadonlyMap<number, number>
}

export function onTheCourse(record: DayRecord, phones: readonly PhoneOfGroup[], now: Date, zone: string): CourseView {
  const stops = record.playStops ?? []
  const cards = cardsAsTheyStand(record)
  const where = groupsOnCourse(record, cards)
  const tee = record.tees.find((one) => one.isDefault && one.gender === 'men') ?? record.tees[0]
  const holes = (tee?.holes ?? []).map(({ hole, par }) => ({ hole, par }))
  const parOf = new Map(holes.map(({ hole, par }) => [hole, par]))
  const starts = record.groups.map((group) => momentIn(record.date, group.startTime, zone))
  const first = new Date(Math.min(...starts.map((start) => start.getTime())))

  const walked = record.groups.map((group, at): Walked => {
    const start = starts[at]!
    const order = holesFrom(record.round, group.startHole)
    const offset = (start.getTime() - first.getTime()) / 60_000
    const ends = minutesToEnd(
      group.entryIds.length,
      order.map((hole) => parOf.get(hole) ?? 4),
    )
    const done = new Map<number, number>()
    for (const hole of order) {
      const at = finishedAt(record, group, hole, start)
      if (at) done.set(hole, minutesPlayed(first, at, stops))
    }
    const expected = new Map(order.map((hole, place) => [hole, offset + (ends[place] ?? 0)]))
    return { group, where: where[at]!, start, order, expected, done }
  })

  const names = namesOf(record)
  const played = minutesPlayed(first, now, stops)
  const stopped = isStopped(playNow(stops))
  const groups = walked.map((one): GroupWhere => {
    const { group, order, expected, done } = one
    const playing = group.entryIds.flatMap((id) => cards.get(id) ?? [])
    const state = !one.where.started ? 'not-started' : one.where.onHole === null ? 'round' : 'out'
    const last = order.findLast((hole) => done.has(hole))
    const late = last === undefined ? null : Math.round(done.get(last)! - expected.get(last)!) || 0
    const gap = last === undefined ? null : gapInFront(one, last, walked)
    const silentMinutes = silence(record, one, now)
    const onCourse = record.status === 'in-play' || record.status === 'frozen'
    const own = phones.filter((phone) => phone.groupId === group.id)
    const expectedHole = order.find((hole) => expected.get(hole)! > played)
    return {
      number: group.number,
      startTime: group.startTime,
      startHole: group.startHole,
      startsAt: startHoleIn(record, group),
      names: group.entryIds.map(names.short),
      state,
      onHole: one.where.onHole,
      through: one.where.through,
      expectedHole: onCourse && now >= one.start ? (expectedHole ?? null) : null,
      late,
      gap,
      isHoldingUp: state === 'out' && late !== null && late >= LATE_MINUTES && isOpenInFront(one, last!, gap),
      silentMinutes,
      isSilent: onCourse && !stopped && state !== 'round' && silentMinutes !== null && silentMinutes >= SILENT_MINUTES,
      notAgreed: playing.flatMap((card) => {
        const kept = record.cards.find((each) => each.id === card.cardId)
        return card.notAgreed.length === 0 || !kept
          ? []
          : [{ name: names.full(kept.entryId), cardId: card.cardId, holes: card.notAgreed }]
      }),
      phones: own.map(({ groupId: _group, lastSeen, ...phone }) => ({ ...phone, lastSeen: lastSeen.toISOString() })),
      unsent: own.reduce((sum, phone) => sum + phone.unsent, 0),
    }
  })
  return {
    ...dayHead(record),
    dayId: record.id,
    now: now.toISOString(),
    holes,
    groups,
    play: playNow(stops),
    isStopped: stopped,
    stops: [...stops].reverse().map(({ number, kind, reason, byName, toldAt }) => ({
      number,
      kind,
      reason,
      by: byName,
      at: toldAt.toISOString(),
    })),
  }
}

// A phone's clock is believed where it can be true: after an hour before the start, and not after the score was here.
function momentOf(fact: FactRecord, start: Date): Date {
  const written = fact.writtenAt.getTime()
  const isPossible = written >= start.getTime() - 3_600_000 && written <= fact.receivedAt.getTime()
  return isPossible ? fact.writtenAt : fact.receivedAt
}

/** When the last ball of the group was first written down on a hole; cards keyed from paper tell no time. */
function finishedAt(record: DayRecord, group: GroupRecord, hole: number, start: Date): Date | null {
  const cards = cardsAsTheyStand(record)
  let last: Date | null = null
  for (const entryId of group.entryIds) {
    const card = cards.get(entryId)
    if (!card || card.outcome !== null) continue
    const facts = record.facts.filter(
      (fact) => fact.cardId === card.cardId && fact.hole === hole && fact.score !== null && fact.writer !== 'desk',
    )
    if (facts.length === 0) return null
    const written = new Date(Math.min(...facts.map((fact) => momentOf(fact, start).getTime())))
    if (!last || written > last) last = written
  }
  return last
}

/** The group that should have finished this hole just before, on whatever hole it began. */
function gapInFront(one: Walked, hole: number, all: readonly Walked[]): GroupWhere['gap'] {
  const mine = one.expected.get(hole)!
  const before = all
    .filter((other) => other !== one && (other.expected.get(hole) ?? mine) < mine)
    .sort((a, b) => b.expected.get(hole)! - a.expected.get(hole)!)[0]
  const theirs = before?.done.get(hole)
  if (!before || theirs === undefined) return null
  return {
    inFront: before.group.number,
    minutes: Math.round(one.done.get(hole)! - theirs),
    atStart: Math.round(mine - before.expected.get(hole)!),
  }
}

/** Nobody in front, or the gap has grown by more than a hole takes. */
function isOpenInFront(one: Walked, hole: number, gap: GroupWhere['gap']): boolean {
  if (!gap) return true
  const place = one.order.indexOf(hole)
  const before = place > 0 ? one.expected.get(one.order[place - 1]!)! : one.expected.get(hole)! - 14
  return gap.minutes - gap.atStart > one.expected.get(hole)! - before
}

/** Minutes of play since the group last entered something, from its start on. */
function silence(record: DayRecord, { group, start }: Walked, now: Date): number | null {
  if (now < start) return null
  const ids = new Set(record.cards.filter((card) => group.entryIds.includes(card.entryId)).map((card) => card.id))
  const heard = record.facts
    .filter((fact) => ids.has(fact.cardId) && fact.writer !== 'desk')
    .reduce((latest, fact) => Math.max(latest, momentOf(fact, start).getTime()), start.getTime())
  return Math.max(0, Math.floor(minutesPlayed(new Date(heard), now, record.playStops ?? [])))
}
