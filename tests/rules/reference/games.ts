// Games inside a group, as they are explained at the bar: skins and split sixes, everybody off the lowest handicap.
import type { Competition, Day, HoleScore } from '@/lib/rules/day'
import { grossOn, type PlayerCard } from './count'
import { strokesDealt } from './handicaps'

/** The lowest plays off nought, the others off the difference. */
export function offTheLowest(cards: readonly PlayerCard[]): PlayerCard[] {
  const lowest = Math.min(...cards.map((one) => one.handicap))
  return cards.map((one) => {
    const handicap = one.handicap - lowest
    return { ...one, handicap, strokes: strokesDealt(handicap, one.tee.holes) }
  })
}

/** Behind every score there is. */
const NO_SCORE = Number.POSITIVE_INFINITY

function netsOn(day: Day, cards: readonly PlayerCard[], at: number): number[] {
  return cards.map((one) => {
    const gross: HoleScore = grossOn(one.card, at, one.tee.holes[at]!)
    if (typeof gross === 'number') return gross - one.strokes[at]!
    if (gross === null && !day.closed && one.card?.outcome === undefined) throw new Error('Only finished games here.')
    return NO_SCORE
  })
}

/** Who takes what on each hole of a finished round, by player. */
export function gameValues(day: Day, competition: Competition, cards: readonly PlayerCard[]): number[][] {
  let carried = 0
  const byHole = cards[0]!.tee.holes.map((_, at) => {
    const nets = netsOn(day, cards, at)
    if (!competition.format.startsWith('skins')) return sixShared(competition.format, nets)
    const lowest = Math.min(...nets)
    const alone = lowest < NO_SCORE && nets.filter((net) => net === lowest).length === 1
    const skins = nets.map((net) => (alone && net === lowest ? 1 + carried : 0))
    carried = alone || competition.format === 'skins-not-carried' ? 0 : carried + 1
    return skins
  })
  return cards.map((_, who) => byHole.map((taken) => taken[who]!))
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
