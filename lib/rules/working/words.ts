// Small numbers in words, for the sentences of a working.

import type { Unit } from '../formats/format'

const WORDS = [
  'nought',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
]

export function inWords(n: number): string {
  return n < 0 ? `minus ${inWords(-n)}` : (WORDS[n] ?? String(n))
}

export function withUnit(n: number, one: string, many: string = `${one}s`): string {
  return `${inWords(n)} ${n === 1 ? one : many}`
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}

/** The verb after a name: of a side named by its players it is for several. */
export function says(name: string, one: string, several: string): string {
  return name.includes(' and ') ? several : one
}

/** An eight, an eleven, an eighteen; a five. */
export function article(word: string): string {
  return /^(eight|eleven|8|11|18)/.test(word) ? 'an' : 'a'
}

/** "level with par", "one over par", "two under par". */
export function againstPar(over: number): string {
  if (over === 0) return 'level with par'
  return over > 0 ? `${inWords(over)} over par` : `${inWords(-over)} under par`
}

/** A figure with its sign where the unit is holes up or down: "+2", "−1". */
export function figure(n: number, unit: Unit): string {
  if (n < 0) return `−${-n}`
  return unit === 'holes' && n > 0 ? `+${n}` : String(n)
}
