// The one place where the engine divides. Rules of Handicapping 2024, 6.1 Note and 6.2a: nearest whole number, a half
// goes up, toward plus infinity, so -1.5 is -1. Whole numbers only; nothing here is ever a rounded float.

export interface Fraction {
  readonly numerator: number
  /** Always above zero. */
  readonly denominator: number
}

/** Remainder that is never negative. */
export function modulo(n: number, d: number): number {
  return (((n % d) + d) % d) + 0
}

/** Whole quotient toward minus infinity. Exact: the division has no remainder left. */
export function floorDiv(n: number, d: number): number {
  return (n - modulo(n, d)) / d + 0
}

/** Nearest whole number, a half toward plus infinity. Never -0. */
export function halfUp(n: number, d: number): number {
  return floorDiv(2 * n + d, 2 * d)
}

export function fraction(numerator: number, denominator = 1): Fraction {
  return denominator < 0 ? { numerator: -numerator + 0, denominator: -denominator } : { numerator, denominator }
}

export function plus(a: Fraction, b: Fraction): Fraction {
  if (a.denominator === b.denominator) return fraction(a.numerator + b.numerator, a.denominator)
  return reduced(a.numerator * b.denominator + b.numerator * a.denominator, a.denominator * b.denominator)
}

export function minus(a: Fraction, b: Fraction): Fraction {
  return plus(a, fraction(-b.numerator, b.denominator))
}

export function times(a: Fraction, n: number, d = 1): Fraction {
  return fraction(a.numerator * n, a.denominator * d)
}

/** Below zero when a is less than b. */
export function compare(a: Fraction, b: Fraction): number {
  return a.numerator * b.denominator - b.numerator * a.denominator
}

export function rounded(a: Fraction): number {
  return halfUp(a.numerator, a.denominator)
}

function reduced(n: number, d: number): Fraction {
  let a = n < 0 ? -n : n
  let b = d
  while (b !== 0) [a, b] = [b, a % b]
  return a <= 1 ? fraction(n, d) : fraction(n / a, d / a)
}

/** A figure to so many places, half up: "20.098". A minus sign is written as one. */
export function decimal(a: Fraction, places: number): string {
  const unit = 10 ** places
  const scaled = halfUp(a.numerator * unit, a.denominator)
  const size = scaled < 0 ? -scaled : scaled
  const whole = String(floorDiv(size, unit))
  const sign = scaled < 0 ? '−' : ''
  return places === 0 ? sign + whole : `${sign}${whole}.${String(modulo(size, unit)).padStart(places, '0')}`
}

/** The shortest exact writing up to so many places: "19.5", "19", "6.667". */
export function shortDecimal(a: Fraction, places: number): string {
  let text = decimal(a, places)
  while (places > 0 && text.endsWith('0')) text = text.slice(0, -1)
  return text.endsWith('.') ? text.slice(0, -1) : text
}

/** A handicap as golfers write it: a figure below zero is a plus handicap, "+2.1". */
export function asHandicap(a: Fraction, places: number): string {
  const below = halfUp(a.numerator * 10 ** places, a.denominator) < 0
  return below ? `+${decimal(fraction(-a.numerator, a.denominator), places)}` : decimal(a, places)
}

/** An index or a rating kept in tenths: 184 is "18.4", -21 is "+2.1". */
export function tenths(n: number): string {
  return asHandicap(fraction(n, 10), 1)
}

/** A whole handicap: -3 is "+3". */
export function wholeHandicap(n: number): string {
  return asHandicap(fraction(n), 0)
}

/** Half an index in tenths, to one decimal, a half up: 8.7 halved is 4.4. Rules of Handicapping 2024, 6.1b. */
export function halvedTenths(n: number): number {
  return halfUp(n, 2)
}

/** Points counted in halves: 7 is "3½". */
export function halves(n: number): string {
  const whole = floorDiv(n, 2)
  if (modulo(n, 2) === 0) return String(whole)
  return whole === 0 ? '½' : `${whole}½`
}

/** "1st", "12th", "23rd". */
export function ordinal(n: number): string {
  const last = modulo(n, 10)
  const teen = modulo(n, 100) > 10 && modulo(n, 100) < 14
  if (teen || last > 3 || last === 0) return `${n}th`
  return `${n}${['st', 'nd', 'rd'][last - 1]}`
}

/** The whole number a text of digits stands for; 0 for any other text. */
export function wholeIn(text: string): number {
  return /^\d{1,9}$/.test(text) ? Number(text) : 0
}
