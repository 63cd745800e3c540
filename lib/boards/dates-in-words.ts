// The one way to write a time or a date for somebody to read: "2.52 pm", "Saturday 13 June 2026", "13 Jun 2026".
// Names of days and months stand here rather than in the platform's tables, so that a server and every phone write the
// same letters; a date always has its year, because pages are read for years.

import { clockIn, dateIn } from '@/lib/facts/calendar'

const DAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday']
const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
]

/** A moment as it is stored or as it crosses to a browser. */
type Moment = Date | string

const asDate = (moment: Moment) => (typeof moment === 'string' ? new Date(moment) : moment)

/** The parts of a calendar day; a moment written out in full counts by its date. */
function partsOf(date: string) {
  const [year = 0, month = 1, day = 1] = date.slice(0, 10).split('-').map(Number)
  return { year, month: MONTHS[month - 1] ?? '', day, weekday: new Date(Date.UTC(year, month - 1, day)).getUTCDay() }
}

/** "14:52" is "2.52 pm": a tee time and a moment read alike. */
export function clockInWords(clock: string): string {
  const [hour = 0, minute = 0] = clock.split(':').map(Number)
  return `${hour % 12 === 0 ? 12 : hour % 12}.${String(minute).padStart(2, '0')} ${hour % 24 < 12 ? 'am' : 'pm'}`
}

/** The time on the wall of the zone: "2.52 pm". */
export function timeInWords(moment: Moment, zone: string): string {
  return clockInWords(clockIn(asDate(moment), zone))
}

/** "2026-06-13" is "Saturday 13 June 2026". */
export function dateInWords(date: string): string {
  const { year, month, day, weekday } = partsOf(date)
  return `${DAYS[weekday]} ${day} ${month} ${year}`
}

/** "2026-06-13" is "13 Jun 2026", for columns and lists. */
export function shortDateInWords(date: string): string {
  const { year, month, day } = partsOf(date)
  return `${day} ${month.slice(0, 3)} ${year}`
}

/** The day a moment falls on in the zone: "Saturday 13 June 2026". */
export function dayInWords(moment: Moment, zone: string): string {
  return dateInWords(dateIn(asDate(moment), zone))
}

/** A moment in a list or a sentence: "13 Jun 2026, 2.52 pm". */
export function momentInWords(moment: Moment, zone: string): string {
  return `${shortDateInWords(dateIn(asDate(moment), zone))}, ${timeInWords(moment, zone)}`
}
