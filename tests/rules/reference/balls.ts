// The balls of an entrant in one round: whose, from which tee, with how many strokes, and what each made of every hole.
// From Rules of Handicapping 2024, Rule 6 and Appendix C, Rules of Golf 2023, Rules 21 and 23, and the terms as they are
// written in lib/rules/day.ts. Nothing is shared with the engine but the shape of a day.
import type { Card, Competition, Day, HoleScore, Player, Side, Tee } from '@/lib/rules/day'
import { compare, type Fraction, fraction, halfUp, plus, times } from './exact'
import { type Form, formOf } from './forms'
import { courseHandicapOf, parOf, sideHandicapOf, strokesDealt } from './handicaps'
import { holeValue, type Worth } from './worth'

export interface Round {
  readonly day: Day
  readonly cards: ReadonlyMap<string, Card>
  readonly players: ReadonlyMap<string, Player>
}

export interface Ball {
  /** Player, or side that plays one ball. */
  readonly id: string
  readonly tee: Tee
  readonly card: Card | undefined
  readonly handicap: number
  /** What the player has, wherever that is asked: a gross competition asks for the course handicap. */
  readonly has: number
  readonly strokes: readonly number[]
  /** As each hole counts now: a hole that will not be played any more is one without a score. */
  readonly gross: readonly HoleScore[]
  readonly worth: readonly Worth[]
  /** Stands for a missing player. */
  readonly standIn: boolean
}

export interface Entrant {
  readonly id: string
  readonly side: Side | undefined
  readonly balls: readonly Ball[]
}

/** To a side in stroke play: the card of a partner who is disqualified, or one that never came back. */
export function isUseless(card: Card | undefined, form: Form): boolean {
  return (card?.outcome === 'disqualified' || card?.outcome === 'no-return') && form.size > 1 && !form.oneBall
}

const known = new WeakMap<Day, Round[]>()

export function roundOf(day: Day, number: number): Round {
  const rounds = known.get(day) ?? []
  known.set(day, rounds)
  rounds[number] ??= roundFound(day, number)
  return rounds[number]
}

function roundFound(day: Day, number: number): Round {
  const cards = day.cards.filter((card) => (card.round ?? 1) === number)
  return {
    day,
    cards: new Map(cards.map((card) => [card.player, card])),
    players: new Map(day.players.map((player) => [player.id, player])),
  }
}

export function teeIn({ day, cards }: Round, player: Player): Tee {
  const wanted = cards.get(player.id)?.tee ?? player.tee
  return day.tees.find((tee) => tee.id === wanted)!
}

function courseIn(round: Round, player: Player): Fraction {
  const index = round.cards.get(player.id)?.indexTenths ?? player.indexTenths
  return courseHandicapOf(index, teeIn(round, player), round.day.edition)
}

/** A ball before its strokes: its owner, the players behind it, its tee and its card. */
export interface Owner {
  readonly id: string
  readonly players: readonly Player[]
  readonly tee: Tee
  readonly card: Card | undefined
}

export function ownerOf(round: Round, player: Player): Owner {
  return { id: player.id, players: [player], tee: teeIn(round, player), card: round.cards.get(player.id) }
}

/** One ball for the side: the tee that is named, or the one with the least par and then rating that its players stand on. */
export function ownerOfSide(round: Round, id: string, players: readonly Player[], sideTee?: string): Owner {
  const card = [id, ...players.map((one) => one.id)].flatMap((owner) => round.cards.get(owner) ?? [])[0]
  const played = [...round.players.values()].map((player) => teeIn(round, player))
  const leastFirst = players
    .map((player) => teeIn(round, player))
    .map((tee) => ({ tee, key: [parOf(tee), tee.courseRatingTenths, tee.slopeRating].map((n) => 1000 + n).join(' ') }))
    .sort((a, b) => (`${a.key} ${a.tee.id}` < `${b.key} ${b.tee.id}` ? -1 : 1))
  return { id, players, tee: played.find((tee) => tee.id === sideTee) ?? leastFirst[0]!.tee, card }
}

/** Set by hand: for this round, for this competition, for all of them. */
function byHandOf(round: Round, { id }: Competition, player: Player): number | undefined {
  return [
    round.cards.get(player.id)?.playingHandicap,
    player.playingHandicap?.[id],
    player.playingHandicap?.['*'],
  ].find((one) => one !== undefined)
}

/** Handicap with everything but the rounding, and the strokes for a tee of higher par (Rule 6.2b) beside it. */
export function handicapInFull(round: Round, competition: Competition, owner: Owner, lowestPar: number) {
  const form = formOf(competition.format)
  const { players, tee, card } = owner
  const none = { full: fraction(0), extra: 0 }
  if (form.kind === 'gross') return none
  const ofPlayer = form.oneBall ? undefined : byHandOf(round, competition, players[0]!)
  const byHand = (card?.player === owner.id ? card.playingHandicap : undefined) ?? ofPlayer
  if (byHand !== undefined) return { full: fraction(byHand), extra: 0 }
  const extra = form.kind === 'strokes' || form.kind === 'maximum' ? parOf(tee) - lowestPar : 0
  if (form.oneBall) return { full: sideInFull(round, competition, form, players), extra }
  const percent = (competition.allowance ?? form.allowance) as number
  const full = times(courseIn(round, players[0]!), fraction(percent, 100))
  const limit = competition.handicapLimit?.[tee.gender]
  return { full: limit !== undefined && compare(full, fraction(limit)) > 0 ? fraction(limit) : full, extra }
}

function sideInFull(round: Round, competition: Competition, form: Form, players: readonly Player[]): Fraction {
  const courses = players.map((player) => {
    const byHand = byHandOf(round, competition, player)
    if (byHand !== undefined) return fraction(byHand)
    const course = courseIn(round, player)
    const limit = competition.handicapLimit?.[teeIn(round, player).gender]
    return limit !== undefined && compare(fraction(limit), course) < 0 ? fraction(limit) : course
  })
  const lowest = courses.reduce((low, one) => (compare(one, low) < 0 ? one : low))
  const { missing, dividedBy } = competition
  while (courses.length < form.size && (missing?.kind === 'ghost' || missing?.kind === 'lowest-again')) {
    courses.push(missing.kind === 'ghost' ? fraction(missing.courseHandicap) : lowest)
  }
  if (dividedBy !== undefined) return times(courses.reduce(plus, fraction(0)), fraction(1, dividedBy))
  const allowance = weightsOf(competition, form, courses.length)
  return sideHandicapOf(courses, typeof allowance === 'number' ? courses.map(() => allowance) : allowance)
}

const SCRAMBLE: Readonly<Record<number, readonly number[]>> = { 2: [35, 15], 3: [30, 20, 10], 4: [25, 20, 15, 10] }

/** A scramble at the published weights of its size takes those of a smaller side for a side that is short. */
function weightsOf({ format, allowance }: Competition, form: Form, players: number): number | readonly number[] {
  const wanted = allowance ?? form.allowance
  const isPublished = [wanted].flat().join() === SCRAMBLE[form.size]?.join()
  return format.startsWith('scramble') && isPublished ? (SCRAMBLE[players] ?? wanted) : wanted
}

/** Gross of a hole with the committee's penalty strokes on it. */
export function grossOn(card: Card | undefined, tee: Tee, at: number): HoleScore {
  const score = card?.scores[at] ?? null
  return typeof score === 'number' ? score + (card?.penaltyStrokes?.[tee.holes[at]!.hole] ?? 0) : score
}

export function isWritten(card: Card | undefined, at: number): boolean {
  return (card?.scores[at] ?? null) !== null
}

export function ballOf(round: Round, competition: Competition, owner: Owner, handicap: number): Ball {
  const form = formOf(competition.format)
  const { tee, card } = owner
  const { closed } = round.day
  const strokes = strokesDealt(handicap, tee.holes)
  const begun = card?.scores.some((score) => score !== null) ?? false
  const gross = tee.holes.map(({ par }, at): HoleScore => {
    if (isUseless(card, form)) return 'x'
    const score = grossOn(card, tee, at)
    if (score !== null) return score
    if (closed && competition.notPlayed === 'level' && begun && card!.outcome === undefined) return par + strokes[at]!
    return closed || card?.outcome !== undefined ? 'x' : null
  })
  const worth = tee.holes.map(({ par }, at) => {
    const score = gross[at]!
    return score === null ? null : holeValue(competition, form, score, par, strokes[at]!)
  })
  const courses = owner.players.map((one) => byHandOf(round, competition, one) ?? halfUp(courseIn(round, one)))
  const has = form.kind === 'gross' ? courses.reduce((sum, one) => sum + one, 0) : handicap
  return { id: owner.id, tee, card, handicap, has, strokes, gross, worth, standIn: false }
}
