// Games inside a group, as they are explained at the bar: skins and split sixes, everybody off the lowest handicap.
import type { Competition } from '@/lib/rules/day'
import { type Ball, ballOf, handicapInFull, type Owner, type Round } from './balls'
import { compare, fraction, halfUp, minus, plus } from './exact'
import { parOf } from './handicaps'
import { counts, orderPlayed } from './holes'

/** The lowest plays off nought, the others off the difference, of rounded handicaps unless the terms say otherwise. */
export function offTheLowest(round: Round, competition: Competition, owners: readonly Owner[]): Ball[] {
  const lowestPar = Math.min(...owners.map(({ tee }) => parOf(tee)))
  const figures = owners.map((owner) => {
    const { full, extra } = handicapInFull(round, competition, owner, lowestPar)
    const figure = (competition.matchDifference ?? 'rounded') === 'rounded' ? fraction(halfUp(full)) : full
    return plus(figure, fraction(extra))
  })
  const lowest = figures.reduce((low, one) => (compare(one, low) < 0 ? one : low))
  return owners.map((owner, at) => {
    const { full, extra } = handicapInFull(round, competition, owner, lowestPar)
    const ball = ballOf(round, competition, owner, halfUp(minus(figures[at]!, lowest)))
    return { ...ball, has: halfUp(full) + extra }
  })
}

/** Behind every score there is. */
const NO_SCORE = Number.POSITIVE_INFINITY

/** Who takes what on each hole, by player; null while somebody of the group has still to finish it. */
export function gameValues(competition: Competition, balls: readonly Ball[]): (number | null)[][] {
  const { format } = competition
  const isSkins = format.startsWith('skins')
  const carries = format === 'skins'
  let carried = 0
  let unknown = false
  const numbers = balls[0]!.tee.holes.map(({ hole }) => hole)
  const taken = new Map<number, (number | null)[]>()
  for (const hole of orderPlayed(balls)) if (counts(competition, hole)) taken.set(hole, taking(numbers.indexOf(hole)))
  return balls.map((_, who) => numbers.map((hole) => taken.get(hole)?.[who] ?? null))

  function taking(at: number): (number | null)[] {
    const scores = balls.map((ball) => ball.gross[at] ?? null)
    const open = scores.includes(null)
    // What is carried to this hole is not known while one before it is open.
    if (open && carries) unknown = true
    if (open || unknown) return balls.map(() => null)
    const nets = balls.map((ball, who) => (scores[who] === 'x' ? NO_SCORE : Number(scores[who]) - ball.strokes[at]!))
    if (!isSkins) return sixShared(format, nets)
    const lowest = Math.min(...nets)
    const alone = lowest < NO_SCORE && nets.filter((net) => net === lowest).length === 1
    const skins = nets.map((net) => (alone && net === lowest ? 1 + carried : 0))
    carried = alone || !carries ? 0 : carried + 1
    return skins
  }
}

function sixShared(format: string, nets: readonly number[]): number[] {
  const [first, second] = [...nets].sort((a, b) => a - b) as [number, number]
  if (format === 'split-sixes-clear-win' && second > first && second - first >= 2) {
    return nets.map((net) => (net === first ? 6 : 0))
  }
  return nets.map((net) => shareOfSix(nets, net))
}

/** Four, two and nothing; level players share what their places are worth together. */
function shareOfSix(nets: readonly number[], mine: number): number {
  const ahead = nets.filter((net) => net < mine).length
  const level = nets.filter((net) => net === mine).length
  const worth = [4, 2, 0].slice(ahead, ahead + level).reduce((sum, points) => sum + points, 0)
  return worth / level
}
