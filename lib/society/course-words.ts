// The words that stand on course cards, on headings and beside rows, and what they mean.

import { plainHeading } from './table-file'

export type CardWord = 'hole' | 'par' | 'index' | 'yards' | 'metres' | 'rating' | 'sss' | 'slope' | 'sum' | 'other'
export type Gender = 'men' | 'women'

export interface ReadWord {
  readonly word: CardWord | null
  /** Null where the words do not say. */
  readonly gender: Gender | null
  /** What is left: the name of a set of tees. */
  readonly name: string
  /** A cell for a course rating and a slope together, "69.2/125". */
  readonly both: boolean
}

const WOMEN = /\b(women|womens|woman|ladies|ladys|lady|female|f|w|l)\b/g
const MEN = /\b(men|mens|man|gents|gent|gentlemen|male|m)\b/g
const WORDS: readonly (readonly [CardWord, RegExp])[] = [
  ['slope', /\bslope( rating)?\b/],
  ['sss', /\b(sss|standard scratch( score)?|scratch score)\b/],
  ['rating', /\b(course rating|c r|cr|rating|ratings|whs rating)\b/],
  ['index', /\b(stroke index|stroke|s i|si|index|str index|hcp|h cap|handicap)\b/],
  ['par', /\bpar\b/],
  ['metres', /\b(metres|meters|mtrs|mts)\b/],
  ['yards', /\b(yards|yds|yardage|length|distance)\b/],
  ['hole', /\b(hole|holes|hole no|hole number)\b/],
  ['sum', /^(out|in|total|totals|tot|sum|front|back|front nine|back nine|out total|in total)$/],
  ['other', /^(name|hole name|notes?|marker|player|score|pts|points|w l h|nett?|gross|date|competition|a|b|c|d)$/],
]

/** "Ladies' S.I." is an index for women, "Yellow yds" yards of Yellow. */
export function readWord(cell: string): ReadWord {
  let rest = cell
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/['’.]/g, (sign) => (sign === '.' ? ' ' : ''))
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()
  const found = WORDS.find(([, pattern]) => pattern.test(rest))
  const both = found?.[0] === 'slope' && /\b(course rating|cr|c r|rating)\b/.test(rest.replace('slope rating', ''))
  // Single letters mean men and women only beside another word: "Par M", and not the tees "W".
  const women = (found ? WOMEN : /\b(women|womens|ladies|lady|female)\b/g).test(rest)
  const men = !women && (found ? MEN : /\b(men|mens|gents|gent|male)\b/g).test(rest)
  WOMEN.lastIndex = 0
  MEN.lastIndex = 0
  for (const [, pattern] of WORDS) rest = rest.replace(pattern, ' ')
  rest = rest.replace(/\b(tees?|markers?|nos?|number|rating|rated|for)\b/g, ' ')
  if (found) rest = rest.replace(WOMEN, ' ').replace(MEN, ' ')
  const name = rest.replace(/\s+/g, ' ').trim()
  return { word: found?.[0] ?? null, gender: women ? 'women' : men ? 'men' : null, name: capital(name), both }
}

export const capital = (name: string) => (name === '' ? '' : name.charAt(0).toUpperCase() + name.slice(1))

/** Tees that are by custom rated for women where nothing is said: common practice, no source. */
export const usuallyWomen = (name: string) => /\b(red|reds|ladies|women|womens|lady|pink)\b/i.test(name)

export const wholeIn = (written: string): number | null => (/^\d{1,4}$/.test(written.trim()) ? Number(written) : null)

/** 69.2 is 692; one decimal, and never more than the book can hold exactly. */
export function tenthsIn(written: string): number | null {
  const match = /^(\d{2})(?:[.,](\d)0*)?$/.exec(written.trim())
  return match ? Number(match[1]) * 10 + Number(match[2] ?? 0) : null
}

/** The columns of a list with a line for each tee and hole, by the words people put above them. */
const LIST = {
  hole: ['hole', 'holeno', 'holenumber', 'no'],
  par: ['par'],
  index: ['si', 'strokeindex', 'index', 'hcp'],
  tee: ['tee', 'tees', 'teename', 'set', 'setoftees', 'marker', 'colour'],
  gender: ['gender', 'sex', 'mf', 'mw', 'ml', 'menwomen', 'ratedfor', 'teesfor', 'menorwomen', 'for', 'sexmf'],
  yards: ['yards', 'yds', 'length', 'yardage', 'distance'],
  rating: ['rating', 'courserating', 'cr'],
  slope: ['slope', 'sloperating', 'sr'],
  course: ['course', 'coursename', 'club', 'venue'],
} as const
export type ListWord = keyof typeof LIST

export const listWordOf = (cell: string): ListWord | null => {
  const plain = plainHeading(cell)
  return (Object.keys(LIST) as ListWord[]).find((word) => (LIST[word] as readonly string[]).includes(plain)) ?? null
}
