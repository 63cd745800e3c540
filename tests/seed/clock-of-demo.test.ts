// Promise: whenever and wherever the demonstration is made, its day in play makes sense: what was written lies in the past,
// who has not started starts later than whoever has, and all of it is on one date.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { clockIn, dateIn, momentIn } from '@/lib/facts/calendar'
import { dayInPlayAt } from '@/seed/clock-of-demo'

const ZONES = ['Europe/London', 'America/New_York', 'Pacific/Auckland'] as const
/** Minutes after its start at which the last fact of a group is written or its card accepted: seed/play.ts. */
const LAST_FACT = [280, 266, 238, 168] as const

function looksRight(now: Date, zone: string) {
  const { date, starts } = dayInPlayAt(now, zone)
  const moments = starts.map((start) => momentIn(date, start, zone))
  for (const [at, minutes] of LAST_FACT.entries())
    expect(moments[at]!.getTime() + minutes * 60_000).toBeLessThanOrEqual(now.getTime())
  expect([...starts]).toEqual([...starts].sort())
  expect(moments.every((moment) => dateIn(moment, zone) === date)).toBe(true)
  return { date, starts }
}

describe('the clock of the demonstration', () => {
  it.each(ZONES.flatMap((zone) => ['00:05', '05:33', '09:59', '12:00', '23:50'].map((clock) => [zone, clock])))(
    'in %s at %s shows nothing from the future',
    (zone, clock) => {
      const now = momentIn('2026-06-13', clock!, zone!)
      const { date } = looksRight(now, zone!)
      expect(date).toBe(clock === '00:05' ? '2026-06-12' : '2026-06-13')
    },
  )

  it('has the four groups that wait start after now, while there is day left for it', () => {
    const now = momentIn('2026-06-13', '13:24', 'Europe/London')
    expect(dayInPlayAt(now, 'Europe/London').starts).toEqual([
      '08:30',
      '08:40',
      '09:10',
      '10:20',
      '13:30',
      '13:40',
      '13:50',
      '14:00',
    ])
  })

  it('holds at any moment of the year, changes of the clocks among them', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 365 * 1440 }), fc.constantFrom(...ZONES), (minute, zone) => {
        const now = new Date(Date.UTC(2026, 0, 1) + minute * 60_000)
        // In the night on which the clocks change, an hour is missing or there twice; nobody plays golf in it.
        fc.pre(clockIn(now, zone) > '08:00')
        looksRight(now, zone)
      }),
    )
  })
})
