// How a handicap is written: a plus figure with its sign, one decimal, never a minus nought.

/** "18.4", "+2.1" for -21 tenths; "none yet" without a figure. */
export function figureOf(tenths: number | null): string {
  if (tenths === null) return 'none yet'
  const size = Math.abs(tenths)
  return `${tenths < 0 ? '+' : ''}${Math.trunc(size / 10)}.${size % 10}`
}

/** "17", "+1" for -1. */
export function strokesFigure(handicap: number): string {
  return handicap < 0 ? `+${-handicap}` : String(Math.abs(handicap))
}

/** "69.2" for 692. */
export function ratingOf(tenths: number): string {
  return `${Math.trunc(tenths / 10)}.${tenths % 10}`
}

/** A fraction to three places, a half of the last place upward: 22711/1130 is "20.098"; a plus figure with its sign. */
export function unroundedOf(numerator: number, denominator: number): string {
  const thousandths = Math.floor((2 * 1000 * numerator + denominator) / (2 * denominator))
  const size = Math.abs(thousandths)
  return `${thousandths < 0 ? '+' : ''}${Math.trunc(size / 1000)}.${String(size % 1000).padStart(3, '0')}`
}
