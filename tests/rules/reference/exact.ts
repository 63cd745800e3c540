// Fractions of whole numbers without a bound, for references that must be right before they are quick.

export interface Fraction {
  readonly top: bigint
  /** Always above zero. */
  readonly bottom: bigint
}

export function fraction(top: number | bigint, bottom: number | bigint = 1): Fraction {
  const t = BigInt(top)
  const b = BigInt(bottom)
  if (b === 0n) throw new Error('A fraction over nothing.')
  return b < 0n ? { top: -t, bottom: -b } : { top: t, bottom: b }
}

export function plus(a: Fraction, b: Fraction): Fraction {
  return { top: a.top * b.bottom + b.top * a.bottom, bottom: a.bottom * b.bottom }
}

export function minus(a: Fraction, b: Fraction): Fraction {
  return plus(a, { top: -b.top, bottom: b.bottom })
}

export function times(a: Fraction, b: Fraction): Fraction {
  return { top: a.top * b.top, bottom: a.bottom * b.bottom }
}

/** Below zero when a is the smaller. */
export function compare(a: Fraction, b: Fraction): number {
  const left = a.top * b.bottom
  const right = b.top * a.bottom
  return left < right ? -1 : left > right ? 1 : 0
}

/** The largest whole number that is not above the fraction. */
export function floor(a: Fraction): bigint {
  const cut = a.top / a.bottom
  return a.top % a.bottom < 0n ? cut - 1n : cut
}

/** To the nearest whole number, a half always upwards: 9.5 is 10, -1.5 is -1. */
export function halfUp(a: Fraction): number {
  return Number(floor(plus(a, fraction(1, 2))))
}
