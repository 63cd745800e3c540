// Numbers that look like chance and are the same every time the demonstration is made.

export function diceFrom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}

/** Around nought, mostly within one either way: four throws added. */
export function swing(dice: () => number): number {
  return (dice() + dice() + dice() + dice() - 2) * 1.73
}

/** A seed from a word, so that one player's round does not depend on who else plays. */
export function seedOf(word: string): number {
  let seed = 2_166_136_261
  for (const letter of word) seed = Math.imul(seed ^ letter.charCodeAt(0), 16_777_619)
  return seed >>> 0
}
