// The two sides of a match with their holes: every ball with its strokes, and of several the ones that count.

import type { HoleLine } from '@/lib/rules/standings'
import { sideOnHole } from '@/lib/rules/working/match-hole-working'
import type { MatchSeen } from '@/lib/rules/working/match-seen'
import type { Names } from './entrant-names'
import { playerId } from './ids-from-engine'
import { listed } from './in-words'
import type { MatchSide } from './match-views'

type Ball = MatchSeen['balls']['a'][number]

/** `hasCard`: of a side of one ball the card is in the hands of one of its players. */
export function matchSides(
  seen: MatchSeen,
  names: Names,
  hasCard: (player: string) => boolean,
): { readonly a: MatchSide; readonly b: MatchSide } {
  return { a: sideOf(seen, 'a', names, hasCard), b: sideOf(seen, 'b', names, hasCard) }
}

function sideOf(seen: MatchSeen, side: 'a' | 'b', names: Names, hasCard: (player: string) => boolean): MatchSide {
  const balls = seen.balls[side]
  const values = wonBy(seen, side)
  const sides = balls.map((ball) => sideOfBall(seen, ball, names, hasCard))
  const first = sides[0]!
  const withValue = (line: HoleLine): HoleLine => ({ ...line, value: values.get(line.hole) ?? null })
  if (balls.length === 1) return { ...first, holes: first.holes.map(withValue) }
  return {
    ...first,
    ...namesOfSide(seen, side, names),
    tee: listed([...new Set(sides.map(({ tee }) => tee))]),
    strokes: side === 'a' ? seen.result.strokesA : seen.result.strokesB,
    holes: first.holes.map((line, at) => {
      const by = sideOnHole(seen, side, line.hole).by.map(({ id }) => id)
      const counts = sides.find(({ entryId }) => entryId === by[0]) ?? first
      return withValue({ ...counts.holes[at]!, by })
    }),
    partners: sides,
  }
}

/** A side of the day by its name or its players; cards put together by the players' names. */
function namesOfSide(
  { day, match, balls }: MatchSeen,
  side: 'a' | 'b',
  names: Names,
): Pick<MatchSide, 'name' | 'short'> {
  const id = match[side]
  if (day.sides.some((one) => one.id === id)) return { name: names.entrant(id), short: names.entrantShort(id) }
  const players = balls[side].map((ball) => ball.id)
  return { name: listed(players.map(names.full)), short: listed(players.map(names.short)) }
}

function sideOfBall({ day }: MatchSeen, ball: Ball, names: Names, hasCard: (player: string) => boolean): MatchSide {
  const players = day.sides.find(({ id }) => id === ball.id)?.players
  const { tee } = ball.sheet
  return {
    entryId: playerId(players ? (players.find(hasCard) ?? players[0]!) : ball.id),
    name: names.entrant(ball.id),
    short: names.entrantShort(ball.id),
    tee: `${tee.name}, ${tee.gender}`,
    strokes: ball.handicap,
    holes: ball.holes.map(({ hole, par, strokeIndex }, i): HoleLine => {
      const gross = ball.gross[i]!
      const strokes = ball.strokes[i]!
      const net = typeof gross === 'number' ? gross - strokes : null
      return { hole, par, strokeIndex, strokes, gross, net, value: null, by: [ball.id] }
    }),
  }
}

/** Hole by hole +1 won, 0 halved, -1 lost for one side; null where the hole did not count. */
function wonBy({ result }: MatchSeen, side: 'a' | 'b'): ReadonlyMap<number, number | null> {
  let before = 0
  return new Map(
    result.holes.map(({ hole, up }) => {
      if (up === null) return [hole, null]
      const here = side === 'a' ? up - before : before - up
      before = up
      return [hole, here === 0 ? 0 : here]
    }),
  )
}
