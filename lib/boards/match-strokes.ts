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

/** "one stroke on holes 2 and 5", "no strokes", "one stroke on every hole, one more on holes 1 to 4 and 9". */
export function strokesInWords(strokes: Strokes, holes: readonly number[]): string {
  const least = Math.min(...strokes)
  const onAll = Math.max(least, 0)
  const more = strokes.map((one) => one - onAll)
  const counts = [...new Set(more.filter((one) => one !== 0))].sort((x, y) => y - x)
  const each = counts.map((count) => {
    const on = holes.filter((_, at) => more[at] === count)
    const what = onAll > 0 ? `${inWords(count)} more` : sizeInWords(count)
    return `${what} on ${on.length === 1 ? 'hole' : 'holes'} ${holesInWords(on)}`
  })
  if (onAll > 0) return [`${sizeInWords(onAll)} on every hole`, ...each].join(', ')
  return each.length === 0 ? 'no strokes' : each.join(', ')
}

const sizeInWords = (count: number) =>
  `${inWords(Math.abs(count))} ${Math.abs(count) === 1 ? 'stroke' : 'strokes'}${count < 0 ? ' given back' : ''}`

/** "1 to 4, 7 and 9": three or more in a row are said by their ends. */
function holesInWords(holes: readonly number[]): string {
  const runs: number[][] = []
  for (const hole of holes) {
    const last = runs.at(-1)
    if (last?.at(-1) === hole - 1) last.push(hole)
    else runs.push([hole])
  }
  return listed(runs.flatMap((run) => (run.length > 2 ? [`${run[0]} to ${run.at(-1)}`] : run.map(String))))
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
