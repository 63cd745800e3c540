// A course card while it is being typed: every cell a string, so that nothing typed is lost however wrong it is.

import type { CourseCard } from '@/lib/boards/desk-views'
import { indexesTwice } from '@/lib/boards/twice-round'
import type { KeepCourse } from '@/lib/facts/commands'
import type { CourseId } from '@/lib/facts/ids'
import type { Gender } from '@/lib/rules/day'

export interface HoleDraft {
  readonly par: string
  readonly strokeIndex: string
  readonly yards: string
}

export interface TeeDraft {
  readonly key: string
  readonly name: string
  readonly gender: Gender
  readonly courseRating: string
  readonly slopeRating: string
  readonly holes: readonly HoleDraft[]
  /** A nine of a course of eighteen, rated by itself: the hole it begins with. */
  readonly nine?: 1 | 10 | undefined
}

const EMPTY: HoleDraft = { par: '', strokeIndex: '', yards: '' }

let made = 0
const key = () => `tee ${++made}`

export const emptyTee = (holes: number, gender: Gender): TeeDraft => ({
  key: key(),
  name: gender === 'men' ? 'Yellow' : 'Red',
  gender,
  courseRating: '',
  slopeRating: '',
  holes: Array.from({ length: holes }, () => EMPTY),
})

/** Another set of tees on the same course: par and index are mostly the same, the yards never. */
export const copyOf = (tee: TeeDraft): TeeDraft => ({
  ...tee,
  key: key(),
  name: '',
  courseRating: '',
  slopeRating: '',
  holes: tee.holes.map((hole) => ({ ...hole, yards: '' })),
})

/** The front or the back nine of a set of eighteen. Its rating stands on the card of the club: it is never worked out. */
export const nineOf = (tee: TeeDraft, nine: 1 | 10): TeeDraft => ({
  ...tee,
  key: key(),
  name: `${tee.name}, ${nine === 1 ? 'front' : 'back'} nine`,
  courseRating: '',
  slopeRating: '',
  holes: tee.holes.slice(nine - 1, nine + 8),
  nine,
})

export const teesOf = (card: CourseCard): readonly TeeDraft[] =>
  card.tees.map((tee) => ({
    ...(tee.holes.length === 9 && card.tees.some((one) => one.holes.length === 18)
      ? { nine: tee.holes[0]?.hole === 10 ? (10 as const) : (1 as const) }
      : {}),
    key: key(),
    name: tee.name,
    gender: tee.gender,
    courseRating: (tee.courseRatingTenths / 10).toFixed(1),
    slopeRating: String(tee.slopeRating),
    holes: tee.holes.map((hole) => ({
      par: String(hole.par),
      strokeIndex: String(hole.strokeIndex),
      yards: hole.yards === undefined ? '' : String(hole.yards),
    })),
  }))

/** Nine or eighteen holes on every tee; what was typed for the first nine stays. */
export const withHoles = (tees: readonly TeeDraft[], holes: number): readonly TeeDraft[] =>
  tees
    .filter((tee) => tee.nine === undefined || holes === 18)
    .map((tee) =>
      tee.nine === undefined
        ? { ...tee, holes: Array.from({ length: holes }, (_one, place) => tee.holes[place] ?? EMPTY) }
        : tee,
    )

/** Pars of a whole row at once: "443 545 434" or tab-separated, as it comes out of a spreadsheet. */
export function spread(text: string): readonly string[] | null {
  const cells = text.trim().split(/[\s,;]+/)
  if (cells.length > 1) return cells
  return null
}

const whole = (text: string) => (/^\d{1,3}$/.test(text.trim()) ? Number(text) : Number.NaN)

export function tenths(text: string): number {
  const match = /^(\d{2})(?:[.,](\d))?$/.exec(text.trim())
  return match ? Number(match[1]) * 10 + Number(match[2] ?? 0) : Number.NaN
}

/** Faults of one column of cells while typing: an index twice, a par that no hole has. */
export function cellFault(tee: TeeDraft, place: number, cell: keyof HoleDraft): string | null {
  const text = tee.holes[place]?.[cell].trim() ?? ''
  if (text === '') return null
  const value = whole(text)
  if (cell === 'par') return value >= 3 && value <= 6 ? null : 'Par is 3 to 6.'
  if (cell === 'yards') return value >= 30 && value <= 900 ? null : 'Yards are 30 to 900.'
  // Printed for going round twice, the indexes of nine holes are the odd numbers to 17 or the even ones to 18.
  const most = 18
  if (!(value >= 1 && value <= most)) return `Stroke indexes run from 1 to ${most}.`
  const twin = tee.holes.findIndex((hole, other) => other !== place && whole(hole.strokeIndex) === value)
  return twin === -1 ? null : `Stroke index ${value} is on hole ${twin + (tee.nine ?? 1)} too.`
}

/** Published advice, not a rule: odd indexes on one nine and even on the other. */
export function indexAdvice(tee: TeeDraft): string | null {
  if (tee.holes.length === 9 && tee.nine === undefined)
    return nineAdvice(tee.holes.map((hole) => whole(hole.strokeIndex)))
  if (tee.holes.length !== 18 || tee.holes.some((hole) => Number.isNaN(whole(hole.strokeIndex)))) return null
  const odd = tee.holes.slice(0, 9).filter((hole) => whole(hole.strokeIndex) % 2 === 1).length
  return odd === 9 || odd === 0
    ? null
    : 'Odd and even stroke indexes are mixed within a nine. Cards usually put them on one nine each: check against the card.'
}

/** What becomes of the indexes of nine holes when they are played twice: house rule, common practice. */
function nineAdvice(indexes: readonly number[]): string | null {
  if (indexes.some(Number.isNaN)) return null
  const odd = indexes.every((index) => index % 2 === 1)
  if (odd || indexes.every((index) => index % 2 === 0))
    return `For going round twice: these are the ${odd ? 'odd' : 'even'} stroke indexes of eighteen, and the second time round has the ${odd ? 'even' : 'odd'} ones. A day of nine holes goes by their order.`
  return indexes.every((index) => index <= 9)
    ? 'Played twice as eighteen, the first time round gets the odd stroke indexes in this order and the second the even ones. House rule, common practice.'
    : 'Stroke indexes of nine holes run from 1 to 9, or are the odd numbers to 17 or the even ones to 18.'
}

/** The nine once more, as a set of eighteen: for a course whose card prints a rating for going round twice. */
export const twiceOf = (tee: TeeDraft): TeeDraft => {
  const indexes = indexesTwice(tee.holes.map((hole) => whole(hole.strokeIndex)))
  const round = (time: 0 | 1) =>
    tee.holes.map((hole, at) => ({
      ...hole,
      strokeIndex: Number.isNaN(indexes[at]![time]) ? '' : String(indexes[at]![time]),
    }))
  return {
    ...tee,
    key: key(),
    name: `${tee.name}, twice round`,
    courseRating: '',
    slopeRating: tee.slopeRating,
    holes: [...round(0), ...round(1)],
  }
}

/** What the use case asks for; a cell that is no number is left for the schema to refuse in its place. */
export function toKeep(
  name: string,
  place: string,
  tees: readonly TeeDraft[],
  known: { readonly courseId: CourseId; readonly version: number } | null,
): { [K in keyof KeepCourse]: unknown } {
  return {
    ...(known ?? {}),
    name,
    place: place.trim() || null,
    tees: tees.map((tee) => ({
      name: tee.name,
      gender: tee.gender,
      courseRatingTenths: tenths(tee.courseRating),
      slopeRating: whole(tee.slopeRating),
      holes: tee.holes.map((hole, index) => ({
        hole: index + (tee.nine ?? 1),
        par: whole(hole.par),
        strokeIndex: whole(hole.strokeIndex),
        yards: hole.yards.trim() === '' ? null : whole(hole.yards),
      })),
    })),
  }
}
