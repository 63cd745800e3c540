// Moments told by the society's own clock. On the server only: an officer abroad sees the time that hung on the wall.

import 'server-only'
import { dayInWords, momentInWords, timeInWords } from '@/lib/boards/dates-in-words'
import { houseZone } from '@/lib/society/house-zone'

/** "2.31 pm" */
export const timeOf = (at: Date | string) => timeInWords(at, houseZone())

/** "23 Apr 2026, 5.40 pm" */
export const momentOf = (at: Date | string) => momentInWords(at, houseZone())

/** "Monday 9 November 2026" */
export const dayOf = (at: Date | string) => dayInWords(at, houseZone())
