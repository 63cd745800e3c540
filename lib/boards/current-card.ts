// The card as it stands: what the facts and the rulings say together. The same function decides on the server whether
// a card may be signed, shows the desk what is in the way, and feeds the board.

import type {
  CardRecord,
  CardState,
  FactRecord,
  RulingKind,
  RulingRecord,
  SignatureRecord,
} from '@/lib/facts/day-record'
import type { CardId } from '@/lib/facts/ids'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { phoneMark, standingOpinions, writerKey } from '@/lib/facts/writer'
import type { CardOutcome } from '@/lib/rules/day'
import { holesOfRound } from '@/lib/rules/hole-numbers'
import type { HolesToPlay } from '@/lib/rules/matches/match-now'

export interface CurrentHole {
  readonly hole: number
  /** The ruling if there is one, else the latest fact. */
  readonly score: WrittenScore
  /** Each writer's latest fact that still stands and says something, newest first. */
  readonly opinions: readonly FactRecord[]
  readonly notAgreed: boolean
  /** Number of the ruling that settles the hole. */
  readonly ruledBy: number | null
}

export interface CurrentCard {
  readonly cardId: CardId
  readonly holes: readonly CurrentHole[]
  readonly scores: readonly WrittenScore[]
  readonly notAgreed: readonly number[]
  readonly missing: readonly number[]
  /** Holes that need no score because the matches of the player do not need them: lib/boards/match-cards.ts. */
  readonly notNeeded: HolesToPlay['notNeeded']
  readonly onlyFor: HolesToPlay['onlyFor']
  readonly lateFacts: readonly FactRecord[]
  readonly outcome: CardOutcome | null
  /** Number of the ruling by which the day was closed without this card; accepting the card takes it back. */
  readonly closedWithout: number | null
  readonly penaltyStrokes: Readonly<Record<number, number>>
  readonly penaltyPoints: number
  /** Set by the committee: the right index in tenths or the right course handicap, counted by each allowance … */
  readonly indexTenths: number | null
  readonly courseHandicap: number | null
  /** … or one playing handicap for every competition of the day. */
  readonly playingHandicap: number | null
  /** The committee lets the card stand without a signature. */
  readonly stands: boolean
  readonly inForce: readonly RulingRecord[]
  readonly player: SignatureRecord | null
  readonly marker: SignatureRecord | null
}

/** What is known of one card; facts in the order of arrival. */
export interface CardSources {
  readonly card: Pick<CardRecord, 'id'>
  readonly holes: number
  readonly firstHole: number
  readonly facts: readonly FactRecord[]
  readonly rulings: readonly RulingRecord[]
  readonly signatures: readonly SignatureRecord[]
  /** The round was abandoned: no hole is missing any more, and where nothing counts there is no return. */
  readonly abandoned?: 'nothing' | 'counts' | undefined
}

export function currentCard({
  card,
  holes,
  firstHole,
  facts,
  rulings,
  signatures,
  abandoned,
}: CardSources): CurrentCard {
  const inForce = rulingsInForce(rulings.filter((ruling) => ruling.cardId === card.id))
  const mine = facts.filter((fact) => fact.cardId === card.id)
  const counting = mine.filter((fact) => !fact.late)
  const lines = holesOfRound({ holes, firstHole }).map((hole) => currentHole(hole, counting, inForce))
  const signed = signatures.filter((one) => one.cardId === card.id && one.withdrawnAt === null)
  return {
    cardId: card.id,
    holes: lines,
    scores: lines.map((line) => line.score),
    notAgreed: lines.filter((line) => line.notAgreed).map((line) => line.hole),
    missing: abandoned ? [] : lines.filter((line) => line.score === null).map((line) => line.hole),
    notNeeded: [],
    onlyFor: null,
    lateFacts: mine.filter((fact) => fact.late),
    outcome: outcomeOf(inForce) ?? (abandoned === 'nothing' ? 'no-return' : null),
    closedWithout: closedWithout(inForce),
    penaltyStrokes: penaltyStrokesOf(inForce),
    penaltyPoints: sum(inForce.filter((one) => one.kind === 'penalty-points').map((one) => one.value ?? 0)),
    ...handicapRuled(inForce),
    stands: inForce.some((one) => one.kind === 'card-stands'),
    inForce,
    player: signed.findLast((one) => one.role === 'player') ?? null,
    marker: signed.findLast((one) => one.role === 'marker') ?? null,
  }
}

// A day has a handful of phones and thousands of scores.
const marks = new Map<string, string>()
const MARKS_KEPT = 10_000

function markOf(device: string): string {
  const known = marks.get(device)
  if (known !== undefined) return known
  if (marks.size >= MARKS_KEPT) marks.clear()
  const mark = phoneMark(device)
  marks.set(device, mark)
  return mark
}

/** Tells the writers of a hole apart: a name on a phone, or the desk. */
export const keyOf = (fact: Pick<FactRecord, 'writer' | 'deviceId'>) => writerKey(fact.writer, markOf(fact.deviceId))

function currentHole(hole: number, facts: readonly FactRecord[], inForce: readonly RulingRecord[]): CurrentHole {
  const written = facts.filter((fact) => fact.hole === hole)
  const opinions = [...standingOpinions(written, (fact) => markOf(fact.deviceId))].sort((a, b) => b.id - a.id)
  const ruling = inForce.findLast((one) => one.kind === 'hole-score' && one.hole === hole)
  return {
    hole,
    score: ruling ? (ruling.value ?? 'x') : (opinions[0]?.score ?? null),
    opinions,
    notAgreed: !ruling && opinions.some((fact) => fact.score !== opinions[0]?.score),
    ruledBy: ruling?.number ?? null,
  }
}

/** In their order, without those a later one replaces or takes back. */
export function rulingsInForce(rulings: readonly RulingRecord[]): RulingRecord[] {
  const inOrder = [...rulings].sort((a, b) => a.number - b.number)
  const gone = new Set(inOrder.map((one) => one.replaces))
  return inOrder.filter((one) => one.kind !== 'withdrawn-ruling' && !gone.has(one.number))
}

export const HANDICAP_RULINGS: readonly RulingKind[] = ['handicap-index', 'course-handicap', 'playing-handicap']

/** The last word on the handicap, whichever figure it sets. */
function handicapRuled(inForce: readonly RulingRecord[]) {
  const last = inForce.findLast(({ kind }) => HANDICAP_RULINGS.includes(kind))
  const of = (kind: RulingKind) => (last?.kind === kind ? last.value : null)
  return {
    indexTenths: of('handicap-index'),
    courseHandicap: of('course-handicap'),
    playingHandicap: of('playing-handicap'),
  }
}

/** The reason the book itself gives when a day is closed without a card: no officer has judged that card. */
export const CLOSED_WITHOUT = 'The card had not been returned when the day was closed.'

function closedWithout(inForce: readonly RulingRecord[]): number | null {
  const last = lastOutcome(inForce)
  return last?.kind === 'no-return' && last.reason === CLOSED_WITHOUT ? last.number : null
}

const lastOutcome = (inForce: readonly RulingRecord[]) =>
  inForce.findLast(({ kind }) => kind === 'no-return' || kind === 'disqualified' || kind === 'withdrawn')

function outcomeOf(inForce: readonly RulingRecord[]): CardOutcome | null {
  const last = lastOutcome(inForce)
  return last ? (last.kind as CardOutcome) : null
}

function penaltyStrokesOf(inForce: readonly RulingRecord[]): Record<number, number> {
  const added: Record<number, number> = {}
  for (const { kind, hole, value } of inForce)
    if (kind === 'penalty-strokes' && hole !== null) added[hole] = (added[hole] ?? 0) + (value ?? 0)
  return added
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)

export interface CardFault {
  readonly place: string
  readonly sentence: string
}

/**
 * What keeps a card from being taken in, one sentence each; nothing when the committee has ruled on its outcome. A card
 * without which the day was closed is like any other once it comes in.
 */
export function faultsOf(card: CurrentCard): readonly CardFault[] {
  if ((card.outcome && card.closedWithout === null) || nothingToPlay(card)) return []
  return [
    ...card.missing.map((hole) => ({
      place: `hole ${hole}`,
      sentence: isOnlyFor(card, [hole])
        ? `Hole ${hole} has no score. ${onlyForWords(card)}`
        : `Hole ${hole} has no score.`,
    })),
    ...card.notAgreed.map((hole) => ({
      place: `hole ${hole}`,
      sentence: `On hole ${hole} the writers differ. They agree, or the committee rules.`,
    })),
    ...(card.player || card.stands ? [] : [{ place: 'player', sentence: 'The player has not signed.' }]),
    ...(card.marker || card.stands ? [] : [{ place: 'marker', sentence: 'The marker has not signed.' }]),
  ]
}

/**
 * Handed in by the phones, or whole and signed for without a phone: entered from a signed paper, or accepted once and
 * opened again. Such a card is never one that has still to come.
 */
export function isHandedIn(state: CardState, card: CurrentCard): boolean {
  if (state !== 'out') return state === 'handed-in'
  const isSigned = card.stands || (card.player !== null && card.marker !== null)
  return isSigned && card.missing.length === 0 && card.notAgreed.length === 0
}

/** The matches were given before anybody played: there is nothing to write and nothing to sign. */
const nothingToPlay = (card: CurrentCard) =>
  card.notNeeded.length === card.holes.length && card.scores.every((score) => score === null)

/** The match is over, and only another competition of the player needs these holes. */
const isOnlyFor = ({ onlyFor }: CurrentCard, holes: readonly number[]) =>
  onlyFor !== null && holes.length > 0 && holes.every((hole) => onlyFor.holes.includes(hole))

const onlyForWords = ({ onlyFor }: CurrentCard) =>
  onlyFor === null ? '' : `The match is over; ${onlyFor.competition} needs the other holes.`

/** The same in a few words for a list of cards: "Holes 8 to 18 have no score. The player has not signed." */
export function wantsInWords(card: CurrentCard): string {
  const rest = faultsOf({ ...card, missing: [] }).map((fault) => fault.sentence)
  if ((card.outcome && card.closedWithout === null) || !card.missing.length) return rest.join(' ')
  if (card.missing.length === card.holes.length) return 'No hole has a score yet.'
  const runs = runsOf(card.missing)
  const last = runs.at(-1)
  const holes = runs.length > 1 ? `${runs.slice(0, -1).join(', ')} and ${last}` : last
  const [one, have] = card.missing.length === 1 ? ['Hole', 'has'] : ['Holes', 'have']
  const why = isOnlyFor(card, card.missing) ? [onlyForWords(card)] : []
  return [`${one} ${holes} ${have} no score.`, ...why, ...rest].join(' ')
}

/** 3, 8, 9, 10 as "3", "8 to 10". */
function runsOf(holes: readonly number[]): string[] {
  const runs: { from: number; to: number }[] = []
  for (const hole of holes) {
    const run = runs.at(-1)
    if (run && run.to === hole - 1) run.to = hole
    else runs.push({ from: hole, to: hole })
  }
  return runs.map(({ from, to }) => (from === to ? `${from}` : `${from} to ${to}`))
}
