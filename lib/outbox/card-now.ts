// The cards as this phone knows them: what the server had at the last look, with this phone's own facts laid over it.
// Nothing is overwritten: each writer keeps an own score on a hole, and two that differ are shown as two.

import type { CardPack, PackCard, PackHole } from '@/lib/facts/card-pack'
import type { CardState } from '@/lib/facts/day-record'
import type { WrittenScore } from '@/lib/facts/score-fact'
import type { PointsTable } from '@/lib/rules/formats/format'
import type { RoundHoles } from '@/lib/rules/hole-numbers'
import type { KeptFact } from './kept-fact'

export interface Written {
  /** Entry id, or 'desk'. */
  readonly writer: string
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
  readonly entryId: string | null
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
  /** Hole numbers. */
  readonly missing: readonly number[]
  readonly notAgreed: readonly number[]
}

/** Facts the pack does not hold yet: unsent ones, and received ones younger than the pack. */
export function notInPack(pack: CardPack, facts: readonly KeptFact[]): readonly KeptFact[] {
  return facts.filter(
    (kept) =>
      kept.state === 'kept' ||
      (kept.state === 'received' && kept.settledVersion !== null && kept.settledVersion > pack.scoreVersion),
  )
}

export function cardsNow(pack: CardPack, facts: readonly KeptFact[]): readonly CardNow[] {
  const fresh = notInPack(pack, facts)
  const { points } = pack
  return pack.cards.map((card) =>
    cardNow(
      points ? { ...card, holes: card.holes.map((hole) => ({ ...hole, table: points })) } : card,
      fresh.filter((kept) => kept.fact.cardId === card.cardId),
    ),
  )
}

function cardNow(card: PackCard, fresh: readonly KeptFact[]): CardNow {
  const written = new Map<string, readonly WrittenScore[]>(Object.entries(card.written))
  const indexOf = new Map(card.holes.map((hole, index) => [hole.hole, index]))
  let signatures: SignatureNow[] = card.signatures.map((each) => ({ ...each, received: true }))

  for (const { fact, state } of fresh) {
    if (fact.kind === 'signature') {
      signatures = signatures.filter((each) => each.role !== fact.role)
      signatures.push({
        role: fact.role,
        entryId: fact.writer,
        signedAt: fact.writtenAt,
        received: state === 'received',
      })
      continue
    }
    // Drives and lost balls stand beside the card: lib/outbox/balls-now.ts.
    if (fact.kind !== 'score') continue
    const index = indexOf.get(fact.hole)
    if (index === undefined) continue
    const hole = card.holes[index] as PackHole
    const before = holeNow(hole, index, card, written)
    const scores = [...(written.get(fact.writer) ?? card.holes.map(() => null))]
    scores[index] = fact.score
    written.set(fact.writer, scores)
    const after = holeNow(hole, index, card, written)
    // A hole that reads otherwise after a signature: the signature no longer covers the card.
    if (after.differs || after.score !== before.score) signatures = []
  }

  const holes = card.holes.map((hole, index) => holeNow(hole, index, card, written))
  const bothSigned = signatures.some((s) => s.role === 'player') && signatures.some((s) => s.role === 'marker')
  return {
    card,
    holes,
    state: card.state,
    signatures,
    closed: card.state !== 'out' || bothSigned,
    missing: holes.filter((hole) => hole.score === null && !hole.differs).map((hole) => hole.hole),
    notAgreed: holes.filter((hole) => hole.differs).map((hole) => hole.hole),
  }
}

function holeNow(
  hole: PackHole,
  index: number,
  card: PackCard,
  written: ReadonlyMap<string, readonly WrittenScore[]>,
): HoleNow {
  const onHole: Written[] = []
  for (const [writer, scores] of written) {
    const score = scores[index] ?? null
    if (score !== null) onHole.push({ writer, score })
  }
  const ruling = card.ruled[hole.hole]
  if (ruling !== undefined) return { ...hole, written: onHole, score: ruling, differs: false, ruled: true }
  const differs = new Set(onHole.map((each) => each.score)).size > 1
  return { ...hole, written: onHole, score: differs ? null : (onHole[0]?.score ?? null), differs, ruled: false }
}

/** What a writer has on a hole: what undo goes back to. */
export function writtenBy(hole: HoleNow, writer: string): WrittenScore {
  return hole.written.find((each) => each.writer === writer)?.score ?? null
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

/** The last score this phone wrote that is not taken back yet and can still be. */
export function toUndo(facts: readonly KeptFact[], cards: readonly CardNow[]): KeptFact | null {
  const takenBack = new Set(facts.map((kept) => kept.undoes))
  for (let i = facts.length - 1; i >= 0; i--) {
    const kept = facts[i]
    if (kept?.fact.kind !== 'score' || kept.undoes !== null || takenBack.has(kept.seq)) continue
    if (kept.state === 'refused' || kept.state === 'late') continue
    const { cardId } = kept.fact
    const card = cards.find((each) => each.card.cardId === cardId)
    return card && !card.closed ? kept : null
  }
  return null
}
