// The cards as this phone knows them: what the server had at the last look, with this phone's own facts laid over it.
// Nothing is overwritten: each writer keeps an own score on a hole, and two that differ are shown as two.

import type { CardPack, PackCard, PackHole, SignatureOff } from '@/lib/facts/card-pack'
import type { CardState } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { type ReplacedScore, type Said, standingOpinions, writerOfKey } from '@/lib/facts/writer'
import type { PointsTable } from '@/lib/rules/formats/format'
import type { RoundHoles } from '@/lib/rules/hole-numbers'
import { type HolesToPlay, holesToPlay, type MatchToCount, type ScoresOf } from '@/lib/rules/matches/match-now'
import type { Me } from './holding'
import type { KeptFact } from './kept-fact'

export interface Written {
  /** Entry id, or 'desk'. */
  readonly writer: string
  /** Mark of the phone; empty for the desk. */
  readonly phone: string
  /** Its number on that phone; null where it was not told. */
  readonly seq: number | null
  readonly score: Exclude<WrittenScore, null>
}

export interface HoleNow extends PackHole {
  readonly written: readonly Written[]
  /** What counts as things stand: the ruling, the agreed score, or null (nothing written, or not agreed). */
  readonly score: WrittenScore
  readonly differs: boolean
  readonly ruled: boolean
  /** The society's own points, where the day has them. */
  readonly table?: PointsTable
}

export interface SignatureNow {
  readonly role: 'player' | 'marker'
  readonly entryId: EntryId | null
  readonly signedAt: string
  /** The server has it. */
  readonly received: boolean
}

export interface CardNow {
  readonly card: PackCard
  readonly holes: readonly HoleNow[]
  readonly state: CardState
  readonly signatures: readonly SignatureNow[]
  /** Both have signed, or the desk has it: the holes take no more scores from this phone. */
  readonly closed: boolean
  /** The day is closed and the card did not come in: nobody signs it any more. */
  readonly isOver: boolean
  /** Signatures that no longer cover the card, and why. */
  readonly signaturesOff: readonly SignatureOff[]
  /** Hole numbers. */
  readonly missing: readonly number[]
  /** Holes that need no score, because the matches of the player do not need them. */
  readonly notNeeded: HolesToPlay['notNeeded']
  readonly onlyFor: HolesToPlay['onlyFor']
  readonly notAgreed: readonly number[]
  /** Who may sign as the player: of a side's one card any of its players. */
  readonly players: readonly EntryId[]
  /** Who may sign as the marker; where a side is alone in its group, another of its players. */
  readonly markers: readonly EntryId[]
}

/** Everybody a card belongs to. */
export const playersOf = (card: Pick<PackCard, 'entryId' | 'sharedWith'>): readonly EntryId[] => [
  card.entryId,
  ...(card.sharedWith ?? []).map((one) => one.entryId),
]

/** A side plays one ball, and nobody else is in the group: its own players mark the card. */
export const marksItself = (card: Pick<CardNow, 'players' | 'markers'>) =>
  card.markers.some((id) => card.players.includes(id))

function markersFor(card: PackCard, cards: readonly PackCard[]): readonly EntryId[] {
  const { markerId } = card
  const others = cards.filter((each) => each.cardId !== card.cardId)
  // Of a side that marks another's card any player may; a marker with an own card is one person.
  const side = others.find((each) => markerId !== null && each.sharedWith && playersOf(each).includes(markerId))
  if (side) return playersOf(side)
  if (markerId !== null) return [markerId]
  if (others.length > 0) return others.flatMap(playersOf)
  return card.sharedWith ? playersOf(card) : []
}

/** Facts the pack does not hold yet: unsent ones, and received ones younger than the pack. */
export function notInPack(pack: CardPack, facts: readonly KeptFact[]): readonly KeptFact[] {
  return facts.filter(
    (kept) =>
      kept.state === 'kept' ||
      (kept.state === 'received' && kept.settledVersion !== null && kept.settledVersion > pack.scoreVersion),
  )
}

/** `matches`: as they stand on this phone, with what was conceded here. */
export function cardsNow(
  pack: CardPack,
  facts: readonly KeptFact[],
  phone: string,
  matches: CardPack['matches'] = pack.matches,
): readonly CardNow[] {
  const fresh = notInPack(pack, facts)
  const { points } = pack
  const cards = pack.cards.map((card) =>
    cardNow(
      points ? { ...card, holes: card.holes.map((hole) => ({ ...hole, table: points })) } : card,
      fresh.filter((kept) => kept.fact.cardId === card.cardId),
      phone,
      markersFor(card, pack.cards),
      pack.status === 'closed',
    ),
  )
  const counted = (matches ?? []).map((one) => one.match)
  return cards.map((card) => {
    if (card.card.noPart) return { ...card, notNeeded: card.holes.map(({ hole }) => hole), onlyFor: null, missing: [] }
    return counted.length === 0 ? card : leftByMatches(card, counted, scoresIn(cards))
  })
}

/** The cards of the group, for a match: a hole on which two scores stand decides nothing yet. */
export function scoresIn(cards: readonly CardNow[]): ScoresOf {
  return (player) => cards.find((each) => each.card.entryId === player)?.holes.map((hole) => hole.score)
}

/** A card is complete when its matches are, unless another competition needs the other holes. */
function leftByMatches(card: CardNow, matches: readonly MatchToCount[], scoresOf: ScoresOf): CardNow {
  const { notNeeded, onlyFor } = holesToPlay(matches, card.card.entryId, card.card.beside ?? null, scoresOf)
  return { ...card, notNeeded, onlyFor, missing: card.missing.filter((hole) => !notNeeded.includes(hole)) }
}

interface SaidOn extends Said {
  readonly phone: string
}

/** What the server had on each hole: every writer's own score, with its number. */
function saidInPack(card: PackCard, phone: string): ReadonlyMap<number, readonly SaidOn[]> {
  const byHole = new Map<number, SaidOn[]>(card.holes.map((hole) => [hole.hole, []]))
  for (const [key, scores] of Object.entries(card.written)) {
    const { writer, phone: named } = writerOfKey(key)
    for (const [index, { hole }] of card.holes.entries()) {
      const score = scores[index] ?? null
      // A pack of an older build names neither phone nor number: all of it may be this phone's own.
      const said = { writer, phone: named || phone, seq: card.numbers?.[key]?.[index] ?? 0, score, replaces: [] }
      if (score !== null) byHole.get(hole)?.push(said)
    }
  }
  return byHole
}

function cardNow(
  card: PackCard,
  fresh: readonly KeptFact[],
  phone: string,
  markers: readonly EntryId[],
  isDayClosed: boolean,
): CardNow {
  const said = new Map(saidInPack(card, phone))
  let signatures: SignatureNow[] = card.signatures.map((each) => ({ ...each, received: true }))
  let off: SignatureOff[] = [...(card.signaturesOff ?? [])]

  for (const { fact, state } of fresh) {
    if (fact.kind === 'signature') {
      const { role, writer: entryId } = fact
      signatures = signatures.filter((each) => each.role !== role)
      off = off.filter((each) => each.role !== role)
      signatures.push({ role, entryId, signedAt: fact.writtenAt, received: state === 'received' })
      continue
    }
    // Drives, lost balls and concessions stand beside the card: balls-now.ts, matches-now.ts.
    if (fact.kind !== 'score') continue
    const hole = card.holes.find((each) => each.hole === fact.hole)
    if (!hole) continue
    const before = holeNow(hole, card, said)
    const { writer, seq, score, replaces = [] } = fact
    said.set(hole.hole, [...(said.get(hole.hole) ?? []), { writer, phone, seq, score, replaces }])
    const after = holeNow(hole, card, said)
    // A hole that reads otherwise after a signature: the signature no longer covers the card.
    if (after.differs || after.score !== before.score) {
      const change = { hole: hole.hole, from: before.score, to: after.score }
      off = [...off, ...signatures.map(({ role, entryId }) => ({ role, entryId, ...change }))]
      signatures = []
    }
  }

  const holes = card.holes.map((hole) => holeNow(hole, card, said))
  const bothSigned = signatures.some((s) => s.role === 'player') && signatures.some((s) => s.role === 'marker')
  return {
    card,
    holes,
    state: card.state,
    signatures,
    signaturesOff: off,
    closed: card.state !== 'out' || bothSigned,
    isOver: isDayClosed && card.state === 'out',
    missing: holes.filter((hole) => hole.score === null && !hole.differs).map((hole) => hole.hole),
    notNeeded: [],
    onlyFor: null,
    players: playersOf(card),
    markers,
    notAgreed: holes.filter((hole) => hole.differs).map((hole) => hole.hole),
  }
}

function holeNow(hole: PackHole, card: PackCard, said: ReadonlyMap<number, readonly SaidOn[]>): HoleNow {
  const written = standingOpinions(said.get(hole.hole) ?? [], (one) => one.phone).flatMap(
    ({ writer, phone, seq, score }): Written[] =>
      score === null ? [] : [{ writer, phone: writer === 'desk' ? '' : phone, seq: seq || null, score }],
  )
  const ruling = card.ruled[hole.hole]
  if (ruling !== undefined) return { ...hole, written, score: ruling, differs: false, ruled: true }
  const differs = new Set(written.map((each) => each.score)).size > 1
  return { ...hole, written, score: differs ? null : (written[0]?.score ?? null), differs, ruled: false }
}

/** Written here, under the name this phone has now. */
export const isOwn = (one: Written, me: Me) => one.writer === me.holder && one.phone === me.phone

/** Written under this name on a phone that was taken over, before that: as good as written here. */
const isInherited = (one: Written, { holder, tookOver }: Me) =>
  one.writer === holder &&
  tookOver.some((taken) => taken.entryId === holder && taken.phone === one.phone && (one.seq ?? 0) <= taken.seq)

/** What the holder says of a hole: written here, or on the phone this one took over from. */
export function writtenBy(hole: HoleNow, me: Me): WrittenScore {
  const own = hole.written.find((each) => isOwn(each, me))
  return (own ?? hole.written.find((each) => isInherited(each, me)))?.score ?? null
}

/**
 * The scores of phones taken over that a new one here takes the place of: what they had sent by then, and anything of
 * theirs once the difference is on the screen and the holder answers it.
 */
export function replacedBy(hole: HoleNow, me: Me): readonly ReplacedScore[] {
  return hole.written.flatMap((one) => {
    const taken = one.writer === me.holder && me.tookOver.some((each) => each.phone === one.phone)
    const may = isInherited(one, me) || (hole.differs && taken)
    return may && one.phone !== me.phone && one.seq !== null ? [{ phone: one.phone, seq: one.seq }] : []
  })
}
/** The card as hole numbers are counted on it; every card of a group is of the same holes. */
export function roundOfPack(pack: CardPack): RoundHoles {
  const holes = pack.cards[0]?.holes ?? []
  return { holes: holes.length, firstHole: holes[0]?.hole ?? 1 }
}

/** Holes in the order this group plays them: from its starting hole round to it. */
export function holesInPlay(pack: CardPack): readonly number[] {
  const holes = (pack.cards[0]?.holes ?? []).map((hole) => hole.hole)
  const start = holes.indexOf(pack.group.startHole)
  return start <= 0 ? holes : [...holes.slice(start), ...holes.slice(0, start)]
}

/** What the way back would take back; `changedTo` when somebody changed it since, and it is nobody's here to take back. */
export interface UndoNow {
  readonly kept: KeptFact
  readonly changedTo?: WrittenScore
}

/** The last score this phone wrote that is not taken back yet and can still be. */
export function toUndo(facts: readonly KeptFact[], cards: readonly CardNow[], phone: string): UndoNow | null {
  const takenBack = new Set(facts.map((kept) => kept.undoes))
  for (let i = facts.length - 1; i >= 0; i--) {
    const kept = facts[i]
    if (kept?.fact.kind !== 'score' || kept.undoes !== null || takenBack.has(kept.seq)) continue
    if (kept.state === 'refused' || kept.state === 'late') continue
    const { cardId, hole, writer, score } = kept.fact
    const card = cards.find((each) => each.card.cardId === cardId)
    const line = card?.holes.find((each) => each.hole === hole)
    if (!card || card.closed || !line) return null
    const own = line.written.find((each) => each.writer === writer && each.phone === phone)?.score ?? null
    if (own === score && !line.ruled) return { kept }
    return { kept, changedTo: line.score ?? line.written.find((each) => each.phone !== phone)?.score ?? null }
  }
  return null
}
