// What a competition still hangs on: for everybody the best and the worst final score, whether first place is possible
// or certain, and what is needed on the holes left. Bounds and never guesses; where a format has no bounds of its own
// (one card moves another's), that is the answer. Arithmetic of the format; no source.

import type { Day } from '../day'
import { FORMATS } from '../formats/catalogue'
import type { Format } from '../formats/format'
import { type DayIndex, indexOf } from '../score/day-index'
import { type Entry, entryOf } from '../score/entry-lines'
import { ballsOf, type Field, fieldOf } from '../score/field'
import { aheadBy, rankKey } from '../score/rank'
import { addedUp } from '../score/rounds'
import { type TermsInForce, termsInForce, termsOfRound } from '../score/terms-in-force'
import { type First, firstPlaces } from './first-place'
import { type MatchChances, matchChances } from './match-chances'
import { type Needed, neededTo } from './needed'
import { type Extreme, filledIndex, isOpen } from './possible-cards'

/** Why nothing exact can be said of a competition's end. */
export type NoBounds =
  /** Skins, split sixes: what a hole is worth to one hangs on the scores of the others. */
  | 'shared-in-the-group'
  /** The named ball may still be lost, and losing it may cost or gain. */
  | 'named-ball'
  /** A side counts the card of somebody else in the field. */
  | 'drawn-card'
  /** The same card counts for two entrants. */
  | 'card-counts-twice'

export interface EntrantChances {
  readonly entrant: string
  /** Holes that can still change the score. */
  readonly holesLeft: number
  /** Null when there can be no score. */
  readonly best: number | null
  /** Null when it may still end without a score: no return, or not started. */
  readonly worst: number | null
  readonly possible: First
  readonly certain: First
  /** Against the leader as things stand, then against the leader of the full cards where that is another. */
  readonly needed: readonly Needed[]
}

export type CompetitionChances =
  | { readonly kind: 'bounds'; readonly entrants: readonly EntrantChances[] }
  | { readonly kind: 'matches'; readonly matches: readonly MatchChances[] }
  | { readonly kind: 'no-bounds'; readonly why: NoBounds }

/** Null when the day has no such competition. `only` looks at a part of the field by itself: a division. */
export function chancesOf(
  day: Day,
  competition: string,
  only?: ReadonlySet<string>,
  formats: readonly Format[] = FORMATS,
): CompetitionChances | null {
  const asked = day.competitions.find((one) => one.id === competition)
  const terms = asked === undefined ? null : termsInForce(asked, day, formats)
  if (terms === null) return null
  const rounds = (terms.competition.rounds ?? [1]).map((round) => indexOf(day, round))
  if (terms.format.isMatch) return { kind: 'matches', matches: matchChances(terms, rounds[rounds.length - 1]!) }
  const why = whyNoBounds(terms, rounds)
  if (why !== null) return { kind: 'no-bounds', why }
  const field = fieldOfCards(terms, rounds).filter(({ now }) => only?.has(now.entrant.id) ?? true)
  const firsts = firstPlaces(field, terms)
  const foremost = [...field].filter(({ now }) => now.noPlace === undefined).sort((a, b) => byNow(a, b, terms))
  return {
    kind: 'bounds',
    entrants: field.map((card, at) => ({
      entrant: card.now.entrant.id,
      holesLeft: card.holesLeft,
      best: card.best.noPlace === undefined ? card.best.score : null,
      worst: card.worst.noPlace === undefined ? card.worst.score : null,
      ...firsts[at]!,
      needed: neededBy(card, foremost, terms),
    })),
  }
}

function whyNoBounds(terms: TermsInForce, rounds: readonly DayIndex[]): NoBounds | null {
  const { format, competition } = terms
  if (format.value.kind === 'shared') return 'shared-in-the-group'
  if (format.count.kind === 'named-player') return 'named-ball'
  const field = fieldOf(terms, rounds[rounds.length - 1]!)
  if (competition.missing?.kind === 'drawn' && field.seeds.some((seeds) => seeds.length < format.side.to))
    return 'drawn-card'
  const balls = field.seeds.flat().map(({ id, card }) => card?.player ?? id)
  return new Set(balls).size < balls.length ? 'card-counts-twice' : null
}

/** One entrant as it stands and as it can end. */
interface PossibleCard {
  readonly now: Entry
  /** The day over as it stands. */
  readonly final: Entry
  readonly best: Entry
  readonly worst: Entry
  readonly holesLeft: number
  /** Of a competition over one round: what it takes to add up the open holes. */
  readonly look: {
    readonly field: Field
    readonly at: number
    readonly index: DayIndex
    readonly open: readonly number[]
  } | null
}

function fieldOfCards(terms: TermsInForce, rounds: readonly DayIndex[]): PossibleCard[] {
  const numbers = terms.competition.rounds ?? [1]
  const each = rounds.map((index, r) => termsOfRound(terms, numbers[r]!, index.day))
  const fields = rounds.map((index, r) => fieldOf(each[r]!, index))
  const read = (indexes: readonly DayIndex[], closed: boolean) => {
    const counted = indexes.map((index, r) => ({ round: numbers[r]!, entries: entriesIn(each[r]!, index) }))
    return counted.length === 1 ? counted[0]!.entries : addedUp(counted, terms, closed)
  }
  const over = rounds.map((index) => ({ ...index, day: { ...index.day, closed: true } }))
  const now = read(rounds, false)
  const final = read(over, true)
  const ends = (extreme: Extreme) => {
    // Once the committee closed the day there is nothing left to fill in.
    if (rounds[0]!.day.closed) return final
    return read(
      rounds.map((index, r) => filledIndex(fields[r]!, each[r]!, index, extreme)),
      true,
    )
  }
  const best = ends('best')
  const worst = ends('worst')
  return now.map((entry, at) => {
    const open = rounds.map(({ day }, r) => (day.closed ? [] : openHoles(fields[r]!, at)))
    const [only] = open
    return {
      now: entry,
      final: final[at]!,
      best: best[at]!,
      // Nobody is made to begin: who has written nothing may end without a place.
      worst: final[at]!.noPlace === undefined ? worst[at]! : final[at]!,
      holesLeft: open.reduce((sum, holes) => sum + holes.length, 0),
      look: rounds.length === 1 ? { field: fields[0]!, at, index: rounds[0]!, open: only! } : null,
    }
  })
}

function entriesIn(terms: TermsInForce, index: DayIndex): Entry[] {
  const field = fieldOf(terms, index)
  return field.entrants.map((entrant, at) => entryOf(entrant, ballsOf(field, at, terms, index), field.reading))
}

function openHoles({ seeds, reading }: Field, at: number): number[] {
  const cards = seeds[at]!.map(({ card }) => card)
  return reading.counted.flatMap((counts, i) => (counts && cards.some((card) => isOpen(card, i)) ? [i] : []))
}

/** The leader first; of those level, whoever has the full card and the better countback. */
function byNow(a: PossibleCard, b: PossibleCard, terms: TermsInForce): number {
  const ahead = rankKey(b.now, terms) - rankKey(a.now, terms)
  if (ahead !== 0) return ahead
  const full = (b.holesLeft === 0 ? 1 : 0) - (a.holesLeft === 0 ? 1 : 0)
  if (full !== 0) return full
  const countback = a.holesLeft === 0 ? aheadBy(b.final, a.final, terms) : 0
  return countback || (a.now.entrant.id < b.now.entrant.id ? -1 : 1)
}

function neededBy(card: PossibleCard, foremost: readonly PossibleCard[], terms: TermsInForce): Needed[] {
  const { look, best, worst } = card
  if (look === null || look.open.length === 0 || best.noPlace !== undefined) return []
  const balls = ballsOf(look.field, look.at, terms, look.index)
  // The best of the others counts again: the open holes of such a side are not its own alone to choose.
  if (balls.some(({ filled }) => filled) && terms.competition.missing?.kind === 'lowest-again') return []
  const { counts, holeTimes } = look.field.reading
  const me = { best, worst, balls, counts, times: holeTimes, open: look.open }
  const others = foremost.filter((one) => one !== card)
  const leaders = [others[0], others.find((one) => one.holesLeft === 0)]
  return [...new Set(leaders)].flatMap((one) =>
    one === undefined ? [] : [neededTo(me, { now: one.now, final: one.final, full: one.holesLeft === 0 }, terms)],
  )
}
