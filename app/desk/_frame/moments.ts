// Moments told by the society's own clock. On the server only: an officer abroad sees the time that hung on the wall.

import 'server-only'
import { houseZone } from '@/lib/society/house-zone'

const dotted = (time: string) =>
  time.replace(':', '.').replace(/\s?([ap])\.?m\.?/i, (_all, half: string) => ` ${half.toLowerCase()}m`)

const written = (at: Date | string, options: Intl.DateTimeFormatOptions) =>
  new Intl.DateTimeFormat('en-GB', { timeZone: houseZone(), ...options }).format(
    typeof at === 'string' ? new Date(at) : at,
  )

/** "2.31 pm" */
export const timeOf = (at: Date | string) =>
  dotted(written(at, { hour: 'numeric', minute: '2-digit', hourCycle: 'h12' }))

/** "Thu 23 Apr, 5.40 pm" */
export const momentOf = (at: Date | string) =>
  `${written(at, { weekday: 'short', day: 'numeric', month: 'short' }).replace(',', '').replace('Sept', 'Sep')}, ${timeOf(at)}`

/** "Monday 9 November 2026" */
export const dayOf = (at: Date | string) =>
  written(at, { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' }).replace(',', '')
