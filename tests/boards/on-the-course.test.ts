// Promise: a group's place, pace, gap and silence follow from what was written and when, in minutes of play; a suspension
// does not count, a phone with a wrong clock does not mislead, and a shotgun is read like tee times.

import { describe, expect, it } from 'vitest'
import { onTheCourse } from '@/lib/boards/on-the-course'
import { minutesToEnd } from '@/lib/boards/pace'
import type { DayRecord, FactRecord } from '@/lib/facts/day-record'
import type { EntryId, GroupId } from '@/lib/facts/ids'
import { type PlayStopRecord, stoppedBetween } from '@/lib/facts/play-stop'
import { recordAt } from '../screens/day-of-four'
import { asId } from '../setup/ids'

const ZONE = 'Europe/London'
const clock = (time: string) => new Date(`2031-06-14T${time}:00+01:00`)
const PARS = [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 4, 5, 4, 3, 4, 5]
const twos = minutesToEnd(2, PARS)

interface Played {
  readonly entryId: EntryId
  readonly holes: number
  readonly minutes?: (at: number) => number
  readonly clockWrongBy?: number
}

/** Two two-balls at 10.00 and 10.10, each writing every hole the moment it is finished at the expected pace. */
function record(played: readonly Played[], over: Partial<DayRecord> = {}): DayRecord {
  const base = recordAt()
  const ids = base.entries.map((entry) => entry.id)
  const groups = [
    { number: 1, startTime: '10:00', startHole: 1, entryIds: ids.slice(0, 2) },
    { number: 2, startTime: '10:10', startHole: 1, entryIds: ids.slice(2) },
  ].map((group) => ({ ...base.groups[0]!, ...group, id: asId<GroupId>(`g${group.number}`) }))
  const withGroups = { ...base, date: '2031-06-14', status: 'in-play' as const, groups, ...over }
  const facts = played.flatMap(({ entryId, holes, minutes = (at) => twos[at]!, clockWrongBy = 0 }, place) => {
    const group = withGroups.groups.find((one) => one.entryIds.includes(entryId))!
    const start = clock(group.startTime).getTime()
    return Array.from({ length: holes }, (_, at): FactRecord => {
      const then = new Date(start + minutes(at) * 60_000)
      return {
        id: place * 100 + at + 1,
        cardId: base.cards.find((card) => card.entryId === entryId)!.id,
        hole: ((group.startHole - 1 + at) % 18) + 1,
        score: 4,
        writer: entryId,
        deviceId: asId('d'),
        seq: at + 1,
        replaces: null,
        writtenAt: new Date(then.getTime() + clockWrongBy),
        receivedAt: then,
        late: false,
      }
    })
  })
  return { ...withGroups, facts, signatures: [], rulings: [] }
}

const ids = recordAt().entries.map((entry) => entry.id)
const everybody = (holes: number, second = holes, minutes?: (at: number) => number): Played[] =>
  ids.map((entryId, at) => ({ entryId, holes: at < 2 ? holes : second, ...(at >= 2 && minutes ? { minutes } : {}) }))
const look = (day: DayRecord, time: string) => onTheCourse(day, [], clock(time), ZONE)

describe('where everybody is', () => {
  it('a two-ball at the expected pace is on time, on its hole, with the gap it had on the tee', () => {
    const view = look(record(everybody(6)), '11:16')
    expect(view.groups.map(({ onHole, late, isSilent, isHoldingUp }) => [onHole, late, isSilent, isHoldingUp])).toEqual(
      [
        [7, 0, false, false],
        [7, 0, false, false],
      ],
    )
    expect(view.groups[0]?.expectedHole).toBe(7)
    expect(view.groups[1]?.gap).toEqual({ inFront: 1, minutes: 10, atStart: 10 })
  })

  it('who takes half as long again is late, and holds up once the gap in front is more than a hole', () => {
    const slow = (at: number) => twos[at]! * 1.5
    const view = look(record(everybody(6, 6, slow)), '12:00')
    expect(view.groups[1]).toMatchObject({ late: Math.round(twos[5]! / 2), isHoldingUp: true })
    expect(view.groups[1]!.gap!.minutes).toBe(10 + Math.round(twos[5]! / 2))
    // A group that is as late because the one in front is, holds nobody up.
    const all = everybody(6).map((one) => ({ ...one, minutes: slow }))
    expect(look(record(all), '12:00').groups.map((group) => group.isHoldingUp)).toEqual([true, false])
  })

  it('silence is told after twenty minutes, from the start on, and ends with the round', () => {
    const day = record(everybody(6, 0))
    expect(look(day, '10:29').groups[1]).toMatchObject({ state: 'not-started', silentMinutes: 19, isSilent: false })
    expect(look(day, '10:30').groups[1]).toMatchObject({ silentMinutes: 20, isSilent: true })
    expect(look(day, '09:30').groups[1]).toMatchObject({ silentMinutes: null, expectedHole: null })
    expect(look(record(everybody(18)), '18:00').groups[0]).toMatchObject({ state: 'round', isSilent: false })
  })

  it('while play is stopped no time passes', () => {
    const stops: PlayStopRecord[] = [
      { number: 1, kind: 'stop-at-once', reason: 'lightning', byName: 'S', toldAt: clock('11:15') },
      { number: 2, kind: 'resume', reason: 'clear', byName: 'S', toldAt: clock('12:15') },
    ]
    const stopped = record(everybody(6, 5), { playStops: stops.slice(0, 1) })
    expect(look(stopped, '12:00').groups.map((group) => group.isSilent)).toEqual([false, false])
    expect(look(stopped, '12:00').isStopped).toBe(true)
    const resumed = record(everybody(6, 5), { playStops: stops })
    expect(look(resumed, '12:25').groups[0]!.silentMinutes).toBeLessThan(20)
    const later = everybody(8).map((one) => ({ ...one, minutes: (at: number) => twos[at]! + (at >= 6 ? 60 : 0) }))
    expect(look(record(later, { playStops: stops }), '12:50').groups.map((group) => group.late)).toEqual([0, 0])
    expect(stoppedBetween(stops, clock('11:45').getTime(), clock('13:00').getTime())).toBe(30 * 60_000)
  })

  it('a phone that lives in another year is timed by when its scores came', () => {
    const wrong = everybody(6).map((one) => ({ ...one, clockWrongBy: -365 * 86_400_000 }))
    expect(look(record(wrong), '11:16').groups.map((group) => group.late)).toEqual([0, 0])
  })

  it('a shotgun is read from each group’s own hole; the group in front is the one that began ahead', () => {
    const base = record([])
    const groups = base.groups.map((group, at) => ({ ...group, startTime: '10:00', startHole: at === 0 ? 5 : 4 }))
    const view = look(record(everybody(3), { groups }), '10:40')
    expect(view.groups.map((group) => group.onHole)).toEqual([8, 7])
    expect(view.groups[1]?.gap?.inFront).toBe(1)
    expect(view.groups.map((group) => group.isHoldingUp)).toEqual([false, false])
  })

  it('a card keyed from paper tells no time', () => {
    const day = record(everybody(6))
    const keyed = day.facts.map((fact) => ({
      ...fact,
      writer: 'desk' as const,
      receivedAt: clock('16:00'),
      writtenAt: clock('16:00'),
    }))
    expect(look({ ...day, facts: keyed }, '16:05').groups.map((group) => group.late)).toEqual([null, null])
  })
})
