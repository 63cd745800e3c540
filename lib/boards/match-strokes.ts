// On which holes strokes are received in a match, in words: for the printed card and the phone, whose dots are those of the
// first competition alone.

import type { BallToCount, MatchToCount } from '@/lib/rules/matches/match-now'
import { inWords, listed } from './in-words'

export type Strokes = readonly number[]

/** The strokes of a player in a match, hole by hole in the order of the card; null for somebody who is not in it. */
export function strokesOf(match: Pick<MatchToCount, 'a' | 'b'>, player: string): Strokes | null {
  return [...match.a, ...match.b].find((ball: BallToCount) => ball.players.includes(player))?.strokes ?? null
}

/** Has the match other strokes than the dots of the card? */
export const differsFromDots = (strokes: Strokes, dots: Strokes): boolean =>
  dots.some((dot, at) => dot !== (strokes[at] ?? 0))

/** "one stroke on holes 2 and 5, two strokes on hole 7", "no strokes", "one stroke on every hole". */
export function strokesInWords(strokes: Strokes, holes: readonly number[]): string {
  const counts = [...new Set(strokes.filter((one) => one !== 0))].sort((x, y) => y - x)
  if (counts.length === 0) return 'no strokes'
  const each = counts.map((count) => {
    const on = holes.filter((_, at) => strokes[at] === count)
    const size = Math.abs(count)
    const what = `${inWords(size)} ${size === 1 ? 'stroke' : 'strokes'}${count < 0 ? ' given back' : ''}`
    if (on.length === holes.length) return `${what} on every hole`
    return `${what} on ${on.length === 1 ? 'hole' : 'holes'} ${listed(on.map(String))}`
  })
  return each.join(', ')
}

/** On one hole, of those named: "strokes here: Ada, Ben two", "nobody has a stroke here". */
export function strokesHere(players: readonly { readonly name: string; readonly strokes: number }[]): string {
  const have = players.filter(({ strokes }) => strokes !== 0)
  if (have.length === 0) return 'no strokes here'
  const each = have.map(({ name, strokes }) => {
    if (strokes < 0) return `${name} gives ${inWords(-strokes)} back`
    return strokes === 1 ? name : `${name} ${inWords(strokes)}`
  })
  return `strokes here: ${each.join(', ')}`
}
