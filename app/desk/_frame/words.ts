// Dates, figures and money as the desk says them. Dates of the book are calendar days without a zone.

const day = (iso: string) => new Date(`${iso}T12:00:00Z`)

const written = (options: Intl.DateTimeFormatOptions) => {
  const format = new Intl.DateTimeFormat('en-GB', { timeZone: 'UTC', ...options })
  return (iso: string) => format.format(day(iso)).replace(',', '').replace('Sept', 'Sep')
}

/** "Saturday 25 April" */
export const longDate = written({ weekday: 'long', day: 'numeric', month: 'long' })
/** "Saturday 25 April 2026" */
export const fullDate = written({ weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' })
/** "Sat 25 Apr" */
export const shortDate = written({ weekday: 'short', day: 'numeric', month: 'short' })
/** "25 Apr 2026" */
export const plainDate = written({ day: 'numeric', month: 'short', year: 'numeric' })

export const clock = (time: string) => time.replace(/^0/, '').replace(':', '.')

/** 184 is "18.4", -21 is "+2.1": a plus figure gives strokes back. */
export const figure = (tenths: number | null) =>
  tenths === null ? '–' : `${tenths < 0 ? '+' : ''}${(Math.abs(tenths) / 10).toFixed(1)}`

/** Playing handicaps: -2 is "+2". */
export const handicap = (whole: number | null) => (whole === null ? '–' : whole < 0 ? `+${-whole}` : String(whole))

export const money = (pence: number) => (pence % 100 === 0 ? `£${pence / 100}` : `£${(pence / 100).toFixed(2)}`)

export const count = (n: number, one: string, many = `${one}s`) => `${n} ${n === 1 ? one : many}`

const SMALL = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']
export const inWords = (n: number) => SMALL[n] ?? String(n)

export function list(names: readonly string[]): string {
  if (names.length <= 1) return names[0] ?? ''
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
}
