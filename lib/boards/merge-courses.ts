// Two desks at one course card: each keeps what it changed, and what both changed is named.

import { mergeFields } from './merge-fields'

export interface HoleOfCard {
  readonly hole: number
  readonly par: number
  readonly strokeIndex: number
  readonly yards: number | null
}
export interface TeeOfCard {
  readonly name: string
  readonly gender: 'men' | 'women'
  readonly courseRatingTenths: number
  readonly slopeRating: number
  readonly holes: readonly HoleOfCard[]
}
export interface CardOfCourse {
  readonly name: string
  readonly place: string | null
  readonly tees: readonly TeeOfCard[]
}

export interface MergedCourse {
  readonly merged: CardOfCourse
  /** What both changed, each to something else, as the record of acts names it: "Yellow, men, hole 4". */
  readonly collisions: readonly string[]
  /** What only the other desk changed. */
  readonly taken: readonly string[]
}

const called = (tee: TeeOfCard) => `${tee.name}, ${tee.gender}`
const byName = (card: CardOfCourse) => new Map(card.tees.map((tee) => [called(tee), tee]))
const whole = (value: unknown) => JSON.stringify(value)

/** `was` is what both desks saw, `theirs` what the book says now. In a collision `mine` stands in `merged`. */
export function mergeCourses(was: CardOfCourse, mine: CardOfCourse, theirs: CardOfCourse): MergedCourse {
  const collisions: string[] = []
  const taken: string[] = []
  const names = { name: 'Name', place: 'Place' } as const
  const told = (kept: string[], keys: readonly ('name' | 'place')[]) => kept.push(...keys.map((key) => names[key]))
  const head = mergeFields(
    { name: was.name, place: was.place },
    { name: mine.name, place: mine.place },
    { name: theirs.name, place: theirs.place },
  )
  told(collisions, head.collisions)
  told(taken, head.taken)

  const [before, here, there] = [byName(was), byName(mine), byName(theirs)]
  const tees: TeeOfCard[] = []
  for (const key of new Set([...here.keys(), ...there.keys()])) {
    const [old, ours, others] = [before.get(key), here.get(key), there.get(key)]
    if (ours && others) {
      const merged = mergeTees(old, ours, others)
      tees.push(merged.tee)
      collisions.push(...merged.collisions)
      taken.push(...merged.taken)
      continue
    }
    // On one side only: it was added there, or taken out on the other.
    const left = (ours ?? others)!
    if (old === undefined) {
      tees.push(left)
      if (others) taken.push(key)
    } else if (whole(teeOnly(old)) !== whole(teeOnly(left))) {
      collisions.push(key)
      if (ours) tees.push(ours)
    } else if (ours) taken.push(key)
  }
  return { merged: { name: head.merged.name, place: head.merged.place, tees }, collisions, taken }
}

/** Without the keys that the book adds. */
const teeOnly = ({ name, gender, courseRatingTenths, slopeRating, holes }: TeeOfCard): TeeOfCard => ({
  name,
  gender,
  courseRatingTenths,
  slopeRating,
  holes: holes.map(({ hole, par, strokeIndex, yards }) => ({ hole, par, strokeIndex, yards })),
})

type Cells = Readonly<Record<string, unknown>>

function mergeTees(was: TeeOfCard | undefined, mine: TeeOfCard, theirs: TeeOfCard) {
  const cells = (tee: TeeOfCard | undefined): Cells => ({
    rated: tee ? [tee.courseRatingTenths, tee.slopeRating] : null,
    ...Object.fromEntries(
      (tee?.holes ?? []).map(({ hole, par, strokeIndex, yards }) => [hole, [par, strokeIndex, yards]]),
    ),
  })
  // A hole that one desk has not is nothing there: nine holes of one against eighteen of the other collide hole by hole.
  const all = Object.fromEntries([...Object.keys(cells(mine)), ...Object.keys(cells(theirs))].map((key) => [key, null]))
  const found = mergeFields<Record<string, unknown>>(
    { ...all, ...cells(was) },
    { ...all, ...cells(mine) },
    { ...all, ...cells(theirs) },
  )
  const place = (key: string) => (key === 'rated' ? called(mine) : `${called(mine)}, hole ${key}`)
  const [courseRatingTenths, slopeRating] = found.merged.rated as [number, number]
  const holes = Object.entries(found.merged)
    .filter((cell): cell is [string, [number, number, number | null]] => cell[0] !== 'rated' && cell[1] !== null)
    .map(([hole, [par, strokeIndex, yards]]) => ({ hole: Number(hole), par, strokeIndex, yards }))
    .sort((a, b) => a.hole - b.hole)
  const tee = { name: mine.name, gender: mine.gender, courseRatingTenths, slopeRating, holes }
  return { tee, collisions: found.collisions.map(place), taken: found.taken.map(place) }
}
