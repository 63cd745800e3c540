// A seeded chance: the same seed rolls the same numbers on every machine.

export function dice(seed: number): (sides: number) => number {
  let state = (seed * 2654435761) >>> 0 || 1
  return (sides) => {
    state ^= state << 13
    state >>>= 0
    state ^= state >>> 17
    state ^= state << 5
    state >>>= 0
    return state % sides
  }
}
