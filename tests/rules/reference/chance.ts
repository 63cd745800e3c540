// A source of chance that can be asked again: the same seed gives the same answers for ever.

export interface Chance {
  /** A whole number from low to high, both included. */
  between(low: number, high: number): number
  /** True once in so many times. */
  oneIn(times: number): boolean
  pick<T>(from: readonly T[]): T
  shuffled<T>(from: readonly T[]): T[]
}

export function chanceFrom(seed: number): Chance {
  let state = (seed * 2654435761) >>> 0
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
  const between = (low: number, high: number) => low + Math.floor(next() * (high - low + 1))
  return {
    between,
    oneIn: (times) => between(1, times) === 1,
    pick: (from) => from[between(0, from.length - 1)]!,
    shuffled: (from) => {
      const left = [...from]
      const out: (typeof left)[number][] = []
      while (left.length > 0) out.push(...left.splice(between(0, left.length - 1), 1))
      return out
    },
  }
}
