// Dates as the book keeps them, YYYY-MM-DD, and the society's own today.

/** Counted in UTC so that a change of the clocks never loses a day. */
const noon = (date: string) => new Date(`${date}T12:00:00Z`)

export function isDate(date: string): boolean {
  return /^\d{4}-\d{2}-\d{2}$/.test(date) && noon(date).toString() !== 'Invalid Date' && addDays(date, 0) === date
}

export function addDays(date: string, days: number): string {
  const moved = noon(date)
  moved.setUTCDate(moved.getUTCDate() + days)
  return moved.toISOString().slice(0, 10)
}

export function daysBetween(from: string, to: string): number {
  return Math.round((noon(to).getTime() - noon(from).getTime()) / 86_400_000)
}

/** The date on the wall of the zone at this moment. */
export function dateIn(moment: Date, zone: string): string {
  return new Intl.DateTimeFormat('sv-SE', { timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit' }).format(
    moment,
  )
}

/** The moment at which the clock of the zone shows this date and time. */
export function momentIn(date: string, clock: string, zone: string): Date {
  const wanted = Date.parse(`${date}T${clock}:00Z`)
  let moment = new Date(wanted)
  // Twice: the first step may land on the other side of a change of the clocks.
  for (let turn = 0; turn < 2; turn++) moment = new Date(wanted - offsetAt(moment, zone))
  return moment
}

/** "09:05" on the wall of the zone. */
export function clockIn(moment: Date, zone: string): string {
  return new Intl.DateTimeFormat('en-GB', { timeZone: zone, hour: '2-digit', minute: '2-digit', hour12: false }).format(
    moment,
  )
}

function offsetAt(moment: Date, zone: string): number {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    second: '2-digit',
  }).formatToParts(moment)
  const part = (type: string) => parts.find((one) => one.type === type)?.value ?? '00'
  const shown = Date.parse(
    `${part('year')}-${part('month')}-${part('day')}T${part('hour')}:${part('minute')}:${part('second')}Z`,
  )
  return shown - Math.floor(moment.getTime() / 1000) * 1000
}

/** "10:00" and 85 minutes make "11:25"; past midnight it starts again. */
export function addMinutes(clock: string, minutes: number): string {
  const [hour = 0, minute = 0] = clock.split(':').map(Number)
  const total = (((hour * 60 + minute + minutes) % 1440) + 1440) % 1440
  return `${String(Math.floor(total / 60)).padStart(2, '0')}:${String(total % 60).padStart(2, '0')}`
}
