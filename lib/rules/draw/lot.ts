// House practice: a draw by lot from a number anybody may know. The same number gives the same lot for ever.

/** Whole numbers below 2^32 in an order fixed by the seed: a 32-bit counter mixed twice. */
export function lotFrom(seed: number): (below: number) => number {
  let state = seed >>> 0
  const next = () => {
    state = (state + 0x9e3779b9) >>> 0
    let mixed = state
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad)
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97)
    return (mixed ^ (mixed >>> 15)) >>> 0
  }
  // Numbers in the last, incomplete stretch are drawn again, so that every outcome is equally likely.
  return (below) => {
    const whole = 4_294_967_296 - (4_294_967_296 % below)
    for (;;) {
      const drawn = next()
      if (drawn < whole) return drawn % below
    }
  }
}

export function shuffled<T>(values: readonly T[], lot: (below: number) => number): T[] {
  const result = [...values]
  for (let at = result.length - 1; at > 0; at--) {
    const other = lot(at + 1)
    ;[result[at], result[other]] = [result[other]!, result[at]!]
  }
  return result
}
