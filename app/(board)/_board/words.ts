// How the board says numbers, places, dates and times. Pure, so that server and browser write the same letters.

import type { BoardRow, CompetitionBoard } from '@/lib/boards/views'
import type { NoPlace } from '@/lib/rules/standings'

/** Days are played where the society plays; the browser may be anywhere. */
const ZONE = 'Europe/London'

const SMALL = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
  'twenty',
]

/** "sixteen", "27": words as far as twenty. */
export function counted(n: number): string {
  return SMALL[n] ?? String(n)
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}

/** "1st", "2nd", "11th", "22nd". */
export function ordinal(n: number): string {
  const teens = n % 100 >= 11 && n % 100 <= 13
  const tail = teens ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th')
  return `${n}${tail}`
}

/** "5", "5 and 6", "5, 6 and 7". */
export function listed(parts: readonly (string | number)[]): string {
  if (parts.length < 2) return parts.join('')
  return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`
}

/** True minus sign, and a plus in front of what is above nought. */
export function signed(n: number): string {
  if (n === 0) return '0'
  return n > 0 ? `+${n}` : `−${-n}`
}

const WHOLE_DATE = new Intl.DateTimeFormat('en-GB', { weekday: 'long', day: 'numeric', month: 'long', timeZone: 'UTC' })
const SHORT_DATE = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', timeZone: 'UTC' })

const asDate = (isoDate: string) => new Date(`${isoDate.slice(0, 10)}T00:00:00Z`)

/** "Saturday 25 April". */
export function longDate(isoDate: string): string {
  return WHOLE_DATE.format(asDate(isoDate)).replace(',', '')
}

/** "25 Apr". Four letters for September are three here, so that a column of dates keeps its line. */
export function shortDate(isoDate: string): string {
  return SHORT_DATE.format(asDate(isoDate)).replace('Sept', 'Sep')
}

export function year(isoDate: string): string {
  return isoDate.slice(0, 4)
}

/** Twelve-hour time with a stop, as it is written on a start sheet: "2.52 pm". */
export function clock(at: string | Date): string {
  const parts = new Intl.DateTimeFormat('en-GB', {
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
    timeZone: ZONE,
  }).formatToParts(typeof at === 'string' ? new Date(at) : at)
  const hour = Number(parts.find((part) => part.type === 'hour')?.value ?? '0')
  const minute = parts.find((part) => part.type === 'minute')?.value ?? '00'
  return `${hour % 12 === 0 ? 12 : hour % 12}.${minute} ${hour < 12 ? 'am' : 'pm'}`
}

/** The day a moment falls on, "Saturday 25 April 2026". */
export function dayOf(at: string): string {
  const date = new Intl.DateTimeFormat('en-CA', { timeZone: ZONE }).format(new Date(at))
  return `${longDate(date)} ${year(date)}`
}

/** A start time as kept, "10:00", in the way it is read out: "10.00". */
export function teeTime(time: string): string {
  return time.replace(':', '.').replace(/^0/, '')
}

/** "11=" while level, "" without a place. */
export function placeFigure(row: Pick<BoardRow, 'place' | 'tied'>): string {
  if (row.place === null) return ''
  return row.tied ? `${row.place}=` : String(row.place)
}

export const NO_PLACE: Record<NoPlace, string> = {
  'no-return': 'no return',
  disqualified: 'disqualified',
  withdrawn: 'withdrawn',
  'not-started': 'not started',
}

type Unit = CompetitionBoard['unit']

/** The figure beside the margin: points and strokes plain, holes against par with their sign. */
export function scoreFigure(score: number | null, unit: Unit): string {
  if (score === null) return '–'
  return unit === 'holes' ? signed(score) : score < 0 ? signed(score) : String(score)
}

/** "38 points", "net 69", "3 up", "all square". */
export function scoreWords(score: number | null, unit: Unit, net = true): string {
  if (score === null) return 'no score'
  if (unit === 'points') return `${score} ${score === 1 ? 'point' : 'points'}`
  if (unit === 'strokes') return net ? `net ${score}` : `${score} strokes`
  if (score === 0) return 'all square'
  return score > 0 ? `${score} up` : `${-score} down`
}

/** Heading of the figure column. */
export function unitHeading(competition: Pick<CompetitionBoard, 'unit' | 'format'>): string {
  if (competition.unit === 'points') return 'Points'
  if (competition.unit === 'holes') return 'Holes'
  return competition.format === 'gross' ? 'Gross' : 'Net'
}

/** Playing handicap as printed: a plus handicap, kept negative, carries its plus. */
export function handicapFigure(playingHandicap: number | null): string {
  if (playingHandicap === null) return '–'
  return playingHandicap < 0 ? `+${-playingHandicap}` : String(playingHandicap)
}

/** The last hole in words: "18th: 6 for 2", "17th: no score". */
export function lastHole(
  last: BoardRow['last'],
  unit: Unit,
): { hole: string; gross: string | null; value: string | null } {
  if (last === null) return { hole: '', gross: null, value: null }
  if (last.gross === 'x') return { hole: ordinal(last.hole), gross: null, value: null }
  return {
    hole: ordinal(last.hole),
    gross: String(last.gross),
    value: unit === 'holes' ? signed(last.value) : String(last.value),
  }
}

/** The family name as a board says it; a side keeps its own. */
export function shortName(name: string): string {
  if (name.includes(' and ') || name.includes(' & ')) return name
  return name.split(' ').at(-1) ?? name
}
