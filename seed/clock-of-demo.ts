// When the day in play of the demonstration is played: its tee times hang on the moment at which it is made, so that at
// any hour two groups are in, two are on the course, four wait, and nothing is written in the future.

import { addMinutes, clockIn, dateIn, momentIn } from '@/lib/facts/calendar'

/** Minutes from each group's start to now; the last four have not started. */
const STARTED_AGO = [290, 280, 250, 180, -10, -20, -30, -40] as const
const STEP = 10
const FIRST = Math.max(...STARTED_AGO)
const LAST = -Math.min(...STARTED_AGO)
const DAY = 1440

export interface DayInPlay {
  readonly date: string
  /** Start of each group, "08:50". */
  readonly starts: readonly string[]
}

export function dayInPlayAt(now: Date, zone: string): DayInPlay {
  const [hour = 0, minute = 0] = clockIn(now, zone).split(':').map(Number)
  const today = dateIn(now, zone)
  const minutes = Math.floor((hour * 60 + minute) / STEP) * STEP
  // All groups start on one date: so soon after midnight the field is shown as it stood late on the day before.
  const isTooSoon = minutes < FIRST
  const date = isTooSoon ? dateIn(new Date(momentIn(today, '12:00', zone).getTime() - 24 * 3_600_000), zone) : today
  const at = isTooSoon ? DAY - LAST - STEP : Math.min(minutes, DAY - LAST - STEP)
  return { date, starts: STARTED_AGO.map((ago) => addMinutes('00:00', at - ago)) }
}
