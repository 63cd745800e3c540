// Where a hole's number and its place on the card part. A nine-hole round on the second nine of a course is played to the
// flags 10 to 18: those are the numbers in every fact, ruling, term and on every screen, so that nobody has to translate
// from one to the other. Lists that run in hole order (scores, drives, pars) still begin at place 0. Only here does one
// become the other; a number is never used as a place anywhere else.

export interface RoundHoles {
  /** Holes of the round: 9 or 18. */
  readonly holes: number
  /** Number on the first flag of the card: 1, or 10 where the second nine is played. */
  readonly firstHole: number
}

/** The number shown for the hole at this place of the card, which counts from 0. */
export function shownHole({ firstHole }: Pick<RoundHoles, 'firstHole'>, place: number): number {
  return firstHole + place
}

/** The place, from 0, of the hole with this number; outside 0 to `holes` - 1 where the round has no such hole. */
export function placeOfHole({ firstHole }: Pick<RoundHoles, 'firstHole'>, hole: number): number {
  return hole - firstHole
}

export function hasHole(round: RoundHoles, hole: number): boolean {
  const place = placeOfHole(round, hole)
  return Number.isInteger(place) && place >= 0 && place < round.holes
}

/** The number of the last hole on the card. */
export function lastHoleOf(round: RoundHoles): number {
  return shownHole(round, round.holes - 1)
}

/** Numbers in card order. */
export function holesOfRound(round: RoundHoles): number[] {
  return Array.from({ length: round.holes }, (_, place) => shownHole(round, place))
}

/** Numbers in the order a group plays them, from the hole it begins on round to it. In card order from a hole not there. */
export function holesFrom(round: RoundHoles, startHole: number): number[] {
  const holes = holesOfRound(round)
  const at = hasHole(round, startHole) ? placeOfHole(round, startHole) : 0
  return [...holes.slice(at), ...holes.slice(0, at)]
}

/** "holes 10 to 18": which they are, where somebody has named one that is not among them. */
export function rangeInWords(round: RoundHoles): string {
  return `holes ${round.firstHole} to ${lastHoleOf(round)}`
}
