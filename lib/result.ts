// Ok or refused. A refusal is a value with a code that never changes and a sentence a golfer understands;
// an exception is a bug. Open to every part of the house.

/** One thing wrong, with the place it was found in, such as `players[3].handicapIndex` or `row 12, Handicap`. */
export interface Fault {
  readonly place: string
  readonly sentence: string
  /** The sentence fits any field, such as "A whole number is needed here.": whoever shows it says which field it is. */
  readonly isBare?: true
}

export interface Ok<T> {
  readonly ok: true
  readonly value: T
}

export interface Refused<C extends string = string> {
  readonly ok: false
  /** Stable word in kebab-case, safe to test on. */
  readonly code: C
  /** What happened and what to do about it, in plain words, ready for the screen. */
  readonly sentence: string
  readonly faults: readonly Fault[]
}

export type Result<T, C extends string = string> = Ok<T> | Refused<C>

export function ok(): Ok<void>
export function ok<T>(value: T): Ok<T>
export function ok<T>(value?: T): Ok<T | undefined> {
  return { ok: true, value }
}

export function refused<C extends string>(code: C, sentence: string, faults: readonly Fault[] = []): Refused<C> {
  return { ok: false, code, sentence, faults }
}
