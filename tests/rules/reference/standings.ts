// Totals, places and divisions the slow way: every pair of entrants is compared, and a place is one more than the number
// of entrants that are better.
import type { Competition, Day, Division, Side } from '@/lib/rules/day'
import {
  type Ball,
  ballOf,
  type Entrant,
  handicapInFull,
  isUseless,
  isWritten,
  type Owner,
  ownerOf,
  ownerOfSide,
  type Round,
  roundOf,
  teeIn,
} from './balls'
import { halfUp } from './exact'
import { formOf, isGame } from './forms'
import { gameValues, offTheLowest } from './games'
import { parOf } from './handicaps'
import { counts, footing, higherIsBetter, levelOn, sideWorth, standIns } from './holes'
import { aheadOnTies } from './ties'
import type { Worth } from './worth'

export interface Line {
  readonly entrant: string
  readonly place: number | null
  readonly tied: boolean
  readonly score: number | null
  readonly noPlace: string | null
  readonly againstLevel: number | null
  readonly out: number | null
  readonly in: number | null
  /** Playing handicap of each player of the entrant; of the side itself where it plays one ball. */
  readonly handicaps: Readonly<Record<string, number>>
  readonly values: readonly (number | null)[]
  readonly rounds: readonly (number | null)[]
  readonly drives: string
}

/** One entrant in one round. */
export interface Counted {
  readonly entrant: Entrant
  readonly values: readonly (number | null)[]
  readonly total: number
  readonly againstLevel: number
  readonly complete: boolean
  readonly played: number
  readonly noPlace: string | null
}

export interface Whole {
  readonly rounds: readonly Counted[]
  readonly last: Counted
  readonly total: number
  readonly againstLevel: number
  readonly complete: boolean
  readonly noPlace: string | null
}

function sidesOf(day: Day, competition: Competition): readonly Side[] {
  const { size, least } = formOf(competition.format)
  const { entrants, id } = competition
  return day.sides.filter((side) => {
    if (side.competitions !== undefined && !side.competitions.includes(id)) return false
    if (entrants !== undefined) return entrants.includes(side.id)
    return side.competitions !== undefined || (side.players.length >= (least ?? size) && side.players.length <= size)
  })
}

/** The owners of the balls of every entrant. */
function ownersOf(round: Round, competition: Competition): { id: string; side?: Side; owners: Owner[] }[] {
  const { size, oneBall } = formOf(competition.format)
  const { day, players } = round
  if (size === 1) {
    const entered = day.players.filter(({ id }) => competition.entrants?.includes(id) ?? true)
    return entered.map((player) => ({ id: player.id, owners: [ownerOf(round, player)] }))
  }
  return sidesOf(day, competition).map((side) => {
    const inIt = side.players.map((id) => players.get(id)!)
    const owners = oneBall
      ? [ownerOfSide(round, side.id, inIt, competition.sideTee)]
      : inIt.map((player) => ownerOf(round, player))
    return { id: side.id, side, owners }
  })
}

function countedIn(round: Round, competition: Competition): Counted[] {
  const all = ownersOf(round, competition)
  if (isGame(competition.format)) return gamesIn(round, competition, all)
  const owners = all.flatMap((one) => one.owners)
  const lowestPar = Math.min(...owners.map(({ tee }) => parOf(tee)))
  const fewest = owners.map(({ tee }) => tee).filter((tee) => parOf(tee) === lowestPar)
  const lowest = fewest.reduce((first, tee) => (tee.id < first.id ? tee : first), fewest[0]!)
  const field = owners.map((owner) => owner.id)
  const ball = (owner: Owner) => {
    const { full, extra } = handicapInFull(round, competition, owner, lowestPar)
    return ballOf(round, competition, owner, halfUp(full) + extra)
  }
  return all.map(({ id, side, owners: ownersHere }) => {
    const own = ownersHere.map(ball)
    const others = standIns(competition, id, own, field, (player) => ball(owners.find((one) => one.id === player)!))
    const entrant = { id, side, balls: [...own, ...others] }
    const worth = own[0]!.tee.holes.map(({ hole }, at) =>
      counts(competition, hole) ? sideWorth(competition, entrant, at) : null,
    )
    return counted(competition, entrant, worth, lowest)
  })
}

function gamesIn(round: Round, competition: Competition, all: ReturnType<typeof ownersOf>): Counted[] {
  const groups = competition.groups ?? [all.map(({ id }) => id)]
  return groups.flatMap((ids) => {
    const inIt = all.filter(({ id }) => ids.includes(id))
    const balls = offTheLowest(
      round,
      competition,
      inIt.map(({ owners }) => owners[0]!),
    )
    const taken = gameValues(competition, balls)
    return balls.map((ball, at) => {
      const worth = taken[at]!.map((one, hole) => (counts(competition, ball.tee.holes[hole]!.hole) ? one : null))
      return counted(competition, { id: ball.id, side: undefined, balls: [ball] }, worth, null)
    })
  })
}

const WORST_FIRST = ['disqualified', 'no-return', 'withdrawn'] as const

function counted(
  competition: Competition,
  entrant: Entrant,
  worth: readonly Worth[],
  lowest: Ball['tee'] | null,
): Counted {
  const own = entrant.balls.filter((ball) => !ball.standIn)
  const { holes } = own[0]!.tee
  const due = holes.flatMap(({ hole }, at) => (counts(competition, hole) ? [at] : []))
  const settled = due.filter((at) => worth[at] !== null)
  const played = settled.filter((at) => own.some(({ card }) => isWritten(card, at))).length
  const values = worth.map((one) => (one === 'no score' ? null : one))
  const complete = settled.length === due.length
  const off = higherIsBetter(competition.format)
    ? own
        .filter(({ card }) => !isUseless(card, formOf(competition.format)))
        .reduce((sum, { card }) => sum + (card?.penaltyPoints ?? 0), 0)
    : 0
  const total = values.reduce<number>((sum, value) => sum + (value ?? 0), 0) - off
  return {
    entrant,
    values,
    total,
    againstLevel:
      lowest === null ? total : total - levelSoFar(competition, own[0]!, lowest, complete ? due : settled, complete),
    complete,
    played,
    noPlace: noPlaceOf(competition, entrant, own, worth.includes('no score'), played),
  }
}

/** Finished cards are all measured from the same level, so that the better score is ahead. */
function levelSoFar(
  competition: Competition,
  ball: Ball,
  lowest: Ball['tee'],
  holes: readonly number[],
  complete: boolean,
) {
  const pars = complete ? lowest.holes.map(({ par }) => par) : footing(ball, lowest)
  return holes.reduce((sum, at) => sum + levelOn(competition, ball.tee.holes[at]!.hole, pars[at]!), 0)
}

function noPlaceOf(
  competition: Competition,
  { side }: Entrant,
  own: readonly Ball[],
  noScore: boolean,
  played: number,
): string | null {
  const outcomes = own.map(({ card }) => card?.outcome)
  if (outcomes.every((one) => one !== undefined)) return WORST_FIRST.find((one) => outcomes.includes(one))!
  if (played === 0 || own.every(({ card }) => card?.scores.every((score) => score === null) ?? true))
    return 'not-started'
  const lost = formOf(competition.format).named !== undefined && side?.ballLostOn !== undefined
  return noScore || (lost && competition.ballLost === 'side-out') ? 'no-return' : null
}

/** Several rounds added up: out of one is out of all; a round never begun is nothing, on strokes no return once it is over. */
function wholeOf(competition: Competition, day: Day, rounds: readonly Counted[]): Whole {
  const begun = rounds.filter((one) => one.noPlace !== 'not-started')
  const out = begun.find((one) => one.noPlace !== null)
  const missing = begun.length < rounds.length && day.closed && !higherIsBetter(competition.format)
  const noPlace =
    begun.length === 0
      ? 'not-started'
      : (out?.noPlace ?? (missing ? (begun.length === 1 ? 'one-round-only' : 'rounds-missing') : null))
  const counting = rounds.length === 1 ? rounds : begun
  return {
    rounds,
    last: rounds.at(-1)!,
    total: counting.reduce((sum, one) => sum + one.total, 0),
    againstLevel: counting.reduce((sum, one) => sum + one.againstLevel, 0),
    complete: rounds.every((one) => one.complete),
    noPlace,
  }
}

/** A round that brings terms of its own has none of the others of this kind. */
function thenTerms(competition: Competition, number: number): Competition {
  const own = competition.roundTerms?.find(({ round }) => round === number)
  if (!own) return competition
  const { id, format, entrants, groups, rounds, custom } = competition
  return { ...own, id, format, entrants, groups, rounds, custom }
}

export function wholesOf(day: Day, competition: Competition): Whole[] {
  const rounds = (competition.rounds ?? [1]).map((number) =>
    countedIn(roundOf(day, number), thenTerms(competition, number)),
  )
  return rounds[0]!.map((_, at) =>
    wholeOf(
      competition,
      day,
      rounds.map((round) => round[at]!),
    ),
  )
}

/** Below zero when a is better; a tie is left alone until everybody in it has finished. */
function better(competition: Competition, a: Whole, b: Whole, all: readonly Whole[]): number {
  const key = (one: Whole) => (higherIsBetter(competition.format) ? -one.total : one.againstLevel)
  const byScore = key(a) - key(b)
  if (byScore !== 0) return byScore
  if (all.some((one) => key(one) === key(a) && !one.complete)) return 0
  return aheadOnTies(competition, a, b)
}

/** Among those of one's own group, where a game is shared inside groups and the terms do not rank everybody together. */
export function placesAmong(competition: Competition, all: readonly Whole[]) {
  const { groups = [], ranking } = competition
  if (groups.length < 2 || ranking === 'everybody') return placesOf(competition, all)
  const groupOf = (one: Whole) => groups.findIndex((ids) => ids.includes(one.last.entrant.id))
  return all.map((one) => {
    const group = all.filter((other) => groupOf(other) === groupOf(one))
    return placesOf(competition, group)[group.indexOf(one)]!
  })
}

function placesOf(competition: Competition, all: readonly Whole[]) {
  const placed = all.filter((one) => one.noPlace === null)
  return all.map((one) => {
    if (one.noPlace !== null) return { place: null, tied: false }
    const others = placed.filter((other) => other !== one).map((other) => better(competition, other, one, placed))
    return { place: 1 + others.filter((than) => than < 0).length, tied: others.includes(0) }
  })
}

export function linesOf(competition: Competition, all: readonly Whole[]): Line[] {
  const places = placesAmong(competition, all)
  return all.map((one, at) => {
    const { rounds, last, noPlace } = one
    const single = rounds.length === 1
    const own = last.entrant.balls.filter((ball) => !ball.standIn)
    const played = rounds.reduce((sum, round) => sum + round.played, 0)
    return {
      entrant: last.entrant.id,
      ...places[at]!,
      score: noPlace === null ? one.total : null,
      noPlace,
      againstLevel: noPlace === null && played > 0 ? one.againstLevel : null,
      out: single ? sumOf(last.values.slice(0, 9)) : null,
      in: single ? sumOf(last.values.slice(9)) : null,
      handicaps: Object.fromEntries(own.map((ball) => [ball.id, ball.handicap])),
      values: rounds.flatMap((round) => round.values),
      rounds: single ? [] : rounds.map((round) => (round.noPlace === null ? round.total : null)),
      drives: drivesOf(competition, last.entrant),
    }
  })
}

function sumOf(values: readonly (number | null)[]): number | null {
  const figures = values.filter((value) => value !== null)
  return figures.length === 0 ? null : figures.reduce((sum, value) => sum + value, 0)
}

/** Drives of each player of a side with one ball, and an asterisk on whoever has too few. */
function drivesOf({ format, minimumDrives }: Competition, { side, balls }: Entrant): string {
  const drives = formOf(format).oneBall ? balls[0]!.card?.drives : undefined
  if (!drives) return ''
  return side!.players
    .map((id) => ({ id, taken: drives.filter((one) => one === id).length }))
    .map(({ id, taken }) => `${id} ${taken}${taken < (minimumDrives ?? 0) ? '*' : ''}`)
    .join(', ')
}

/** Everybody of the entry must be in the division, by the tee of the round that decides; its handicaps are added up. */
export function belongs(day: Day, competition: Competition, one: Whole, division: Division): boolean {
  const { entrant } = one.last
  const own = entrant.balls.filter((ball) => !ball.standIn)
  const handicap = own.reduce((sum, ball) => sum + ball.has, 0)
  if (handicap < (division.handicapFrom ?? handicap) || handicap > (division.handicapTo ?? handicap)) return false
  const round = roundOf(day, competition.rounds?.at(-1) ?? 1)
  const ids = entrant.side?.players ?? [entrant.id]
  return ids.every((id) => {
    const player = round.players.get(id)!
    const { gender } = teeIn(round, player)
    if (division.gender !== undefined && gender !== division.gender) return false
    if (division.guests === 'only' && player.guest !== true) return false
    if (division.guests === 'none' && player.guest === true) return false
    return division.group === undefined || (player.groups ?? []).includes(division.group)
  })
}
