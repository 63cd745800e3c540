// How names, numbers, places and scores read in a sentence; times and dates: dates-in-words.ts.

import type { WrittenScore } from '@/lib/facts/score-fact'

const SMALL = [
  'no',
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
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
  'twenty',
]

export function inWords(number: number): string {
  return SMALL[number] ?? String(number)
}

/** "eleven cards", "one card". */
export function counted(number: number, one: string, many: string = `${one}s`): string {
  return `${inWords(number)} ${number === 1 ? one : many}`
}

export function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1)
}

/** "Trevennor", "Trevennor and Holmgarth", "Ashgill, Coldbrook and Verrow". */
export function listed(names: readonly string[]): string {
  if (names.length < 2) return names[0] ?? ''
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
}

/** Is it several people? "Storrey and Verrow", "Ashgill, Verrow and Storrey". */
export const isSeveral = (name: string): boolean => name.includes(' and ')

/** Sides in a sentence: "Trevennor and Verrow, and Ashgill and Storrey"; single names as ever. */
export function listedSides(names: readonly string[]): string {
  return names.length > 1 && names.some(isSeveral)
    ? `${names.slice(0, -1).join(', ')}, and ${names.at(-1)}`
    : listed(names)
}

export function ordinal(number: number): string {
  const tens = number % 100
  if (tens >= 11 && tens <= 13) return `${number}th`
  return `${number}${['th', 'st', 'nd', 'rd'][number % 10] ?? 'th'}`
}

const PLACES = ['', 'first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth']

export function placeInWords(place: number): string {
  return PLACES[place] ?? ordinal(place)
}

/** A gross score in a sentence: "5", "no score", "nothing". */
export function scoreInWords(score: WrittenScore): string {
  return score === null ? 'nothing' : score === 'x' ? 'no score' : String(score)
}

const minus = (number: number) => (number < 0 ? `−${-number}` : String(number))

export type Unit = 'points' | 'strokes' | 'holes' | 'skins'

/** "38", "70", "3 up", "2 down", "level". */
export function scoreShort(score: number, unit: Unit): string {
  if (unit !== 'holes') return minus(score)
  return score === 0 ? 'level' : `${Math.abs(score)} ${score > 0 ? 'up' : 'down'}`
}

/** "38 points", "net 70", "3 up". Gross strokes are the competition's affair: `net` says which. */
export function scoreLong(score: number, unit: Unit, net: boolean): string {
  if (unit === 'points') return `${minus(score)} ${score === 1 ? 'point' : 'points'}`
  if (unit === 'skins') return `${minus(score)} ${score === 1 ? 'skin' : 'skins'}`
  if (unit === 'strokes') return `${net ? 'net' : 'gross'} ${minus(score)}`
  return scoreShort(score, unit)
}

/** Against level par, for cards on different holes: "two under", "level par", "one over". */
export function againstLevelInWords(level: number): string {
  if (level === 0) return 'level par'
  return `${inWords(Math.abs(level))} ${level < 0 ? 'under' : 'over'}`
}

/** What somebody typed as a sentence: with its full stop, where it has none. */
export function asSentence(typed: string): string {
  const text = typed.trim()
  return /[.!?]$/.test(text) ? text : `${text}.`
}

/** What somebody typed, to stand inside a sentence that has its own full stop. */
export const withoutStop = (typed: string): string => typed.trim().replace(/\.+$/, '')
