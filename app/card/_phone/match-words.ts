// How the matches of a group stand, in the words of the phone.

import { counted, listed } from '@/lib/boards/in-words'
import { resultSaid } from '@/lib/boards/match-ending-words'
import { differsFromDots, strokesInWords, strokesOf } from '@/lib/boards/match-strokes'
import type { PackCard, PackMatch } from '@/lib/facts/card-pack'
import type { MatchNow, MatchToCount } from '@/lib/rules/matches/match-now'

type Both = Pick<PackMatch, 'a' | 'b'>

const several = (name: string) => name.includes(' and ') || name.includes(', ')
const verb = (name: string, one: string, many: string) => `${name} ${several(name) ? many : one}`

/** "Storrey wins 3 and 2", "Storrey 2 up after 11", "All square after 7", "Storrey 2 up, dormie: 2 holes to play". */
export function matchSoFar({ a, b }: Both, now: MatchNow): string {
  const leader = now.up > 0 ? a : b
  if (now.result === 'no result') return `${a} against ${b}: counts for neither`
  if (now.result.endsWith('abandoned')) {
    return now.up === 0
      ? `${a} against ${b}: all square when the match was abandoned`
      : `${leader} ${Math.abs(now.up)} up when the match was abandoned`
  }
  if (now.finished && now.up !== 0) return `${verb(leader, 'wins', 'win')} ${resultSaid(now.result)}`
  if (now.finished) return `${a} and ${b}: all square at the end, the match is shared`
  if (now.played === 0) return `${a} against ${b}: not started`
  if (now.up === 0) return `${a} and ${b}: all square after ${now.played}`
  const up = Math.abs(now.up)
  return now.isDormie
    ? `${leader} ${up} up, dormie: ${counted(now.left, 'hole')} to play`
    : `${leader} ${up} up after ${now.played}`
}

/** "Storrey wins the 7th hole", "Hole 7 shared"; null while the hole is not decided or needs no score. */
export function holeSoFar({ a, b }: Both, now: MatchNow, hole: number): string | null {
  const at = now.states.findIndex((state) => state.hole === hole)
  const after = now.states[at]?.up ?? null
  if (after === null) return null
  const before = now.states.slice(0, at).findLast((state) => state.up !== null)?.up ?? 0
  if (after === before) return `hole ${hole} shared`
  return `${verb(after > before ? a : b, 'wins', 'win')} hole ${hole}`
}

/** On the player's card, where the dots are those of another competition: "Four-ball match: one stroke on holes 2 and 5." */
export function strokesSaid(
  { competition, match }: PackMatch,
  { entryId, holes }: Pick<PackCard, 'entryId' | 'holes'>,
): readonly string[] {
  const strokes = strokesOf(match, entryId)
  const isOther =
    strokes !== null &&
    differsFromDots(
      strokes,
      holes.map((each) => each.strokes),
    )
  return isOther ? [`${competition}: ${strokesInWords(strokes, match.holes)}.`] : []
}

/** A hole on which this match needs no score any more. */
export const isOverBefore = (now: MatchNow, hole: number) => now.finished && now.notNeeded.includes(hole)

type Named = Both & { readonly match: Pick<MatchToCount, 'conceded' | 'concededBy'> }

const nameOf = ({ a, b }: Both, end: 'a' | 'b') => (end === 'a' ? a : b)

/** The end that conceded the hole; null where nobody did. */
export function concededOn({ match }: Pick<Named, 'match'>, hole: number): 'a' | 'b' | null {
  const to = match.conceded.find(([each]) => each === hole)?.[1]
  return to === undefined ? null : to > 0 ? 'b' : 'a'
}

/** "Storrey concedes hole 4", "Storrey and Verrow concede the match". */
export const concedes = (match: Both, end: 'a' | 'b', hole: number | null): string =>
  `${verb(nameOf(match, end), 'concedes', 'concede')} ${hole === null ? 'the match' : `hole ${hole}`}`

/** Everything that was conceded: "Storrey conceded holes 4 and 7." */
export function concededSaid(one: Named): readonly string[] {
  const holes = (end: 'a' | 'b') =>
    one.match.conceded.map(([hole]) => hole).filter((hole) => concededOn(one, hole) === end)
  return (['a', 'b'] as const).flatMap((end) => {
    const given = holes(end).sort((x, y) => x - y)
    const what = [
      ...(given.length > 0 ? [`${given.length === 1 ? 'hole' : 'holes'} ${listed(given.map(String))}`] : []),
      ...(one.match.concededBy === end ? ['the match'] : []),
    ]
    return what.length > 0 ? [`${nameOf(one, end)} conceded ${listed(what)}.`] : []
  })
}
