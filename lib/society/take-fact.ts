// Decides what becomes of one fact from a phone, given the cards of its group as they stand. Plain values in and out:
// the saving is in enter-score.ts.

import { type CurrentCard, currentCard } from '@/lib/boards/current-card'
import { agreedScores, leftOf } from '@/lib/boards/match-cards'
import type { CardRecord, DayStatus, FactRecord, RulingRecord, SignatureRecord } from '@/lib/facts/day-record'
import type { CardId, DeviceId, EntryId, PairingId } from '@/lib/facts/ids'
import { endingAfter, type MatchEnding } from '@/lib/facts/match-ending'
import type { BallFact, ConcessionFact, DeviceFact } from '@/lib/facts/score-fact'
import type { HoleScore } from '@/lib/rules/day'
import { hasHole, placeOfHole, rangeInWords, shownHole } from '@/lib/rules/hole-numbers'
import { withConcession } from '@/lib/rules/matches/concede'
import { holesToPlay, type MatchToCount } from '@/lib/rules/matches/match-now'

/** The cards of one group as the book has them, moved on fact by fact while a delivery is taken. */
export interface GroupCards {
  readonly status: DayStatus
  readonly holes: number
  /** Number on the first flag of the card: 10 where the second nine is played. */
  readonly firstHole: number
  readonly entryIds: readonly EntryId[]
  readonly nameOf: Readonly<Record<string, string>>
  readonly cards: readonly CardRecord[]
  readonly facts: readonly FactRecord[]
  readonly rulings: readonly RulingRecord[]
  readonly signatures: readonly SignatureRecord[]
  /** Sides with somebody in the group; read only when a ball is written about. */
  readonly sides?: readonly { readonly id: string; readonly entryIds: readonly EntryId[] }[]
  /** What decides about signatures besides the cards; read only when one is delivered. */
  readonly signing?: SigningSources
}

export interface SigningSources {
  /** Matches of the day: a card is complete when its matches are. */
  readonly matches: readonly MatchToCount[]
  /** By entry: a competition beside the matches that needs every hole. */
  readonly beside: Readonly<Record<string, string | null>>
  /** Players of the sides that share one card. */
  readonly shared: readonly (readonly EntryId[])[]
  /** Matches of the day that have their row in the book. */
  readonly pairings: readonly MatchInBook[]
}

/** A match as the book has it: what is conceded goes into its ending. */
export interface MatchInBook {
  readonly id: PairingId
  /** "Ashgill and Verrow, Singles, Match Day" */
  readonly subject: string
  readonly a: string
  readonly b: string
  readonly entryIds: readonly EntryId[]
  readonly ending: MatchEnding
  /** Cards of its players who are in other groups. */
  readonly elsewhere: readonly Pick<CardRecord, 'state'>[]
}

type Role = SignatureRecord['role']

export type Taken =
  | { readonly kind: 'score'; readonly late: string | null; readonly withdraws: readonly Role[] }
  | { readonly kind: 'signature'; readonly entryId: EntryId; readonly handsIn: boolean }
  | { readonly kind: 'ball'; readonly late: string | null }
  | { readonly kind: 'concession'; readonly match: MatchInBook; readonly late: string | null }
  | { readonly kind: 'refused'; readonly code: string; readonly sentence: string }

/** `deviceId`: the phone it came from, as the book names it. */
export function takeFact(group: GroupCards, fact: DeviceFact, deviceId: DeviceId): Taken {
  const card = group.cards.find((one) => one.id === fact.cardId)
  if (!card)
    return no('card-not-in-group', 'That card is not in this group. Open the group it belongs to, or tell the desk.')
  if (!group.entryIds.includes(fact.writer))
    return no('writer-not-in-group', 'Whoever wrote that does not play in this group. Say on the card who you are.')
  if (fact.kind === 'drive' || fact.kind === 'ball-lost') return takeBall(group, card, fact)
  if (fact.kind === 'concession') return takeConcession(group, fact)
  const now = currentCard({ card, ...group })
  if (fact.kind === 'score') return takeScore(group, card, now, fact, deviceId)
  return takeSignature(group, card, asGroupPlays(group, card, now), fact)
}

const no = (code: string, sentence: string): Taken => ({ kind: 'refused', code, sentence })

const noSuchHole = (group: GroupCards, hole: number) =>
  no('no-such-hole', `This round has ${rangeInWords(group)}; there is no hole ${hole}.`)

/** A drive or a lost ball goes with the card it was written beside: late where a score would be. */
function takeBall(group: GroupCards, card: CardRecord, fact: BallFact): Taken {
  if (!hasHole(group, fact.hole)) return noSuchHole(group, fact.hole)
  const side = group.sides?.find((one) => one.id === fact.sideId)
  if (!side)
    return no(
      'side-not-in-group',
      'That side is not in this group any more. Look at the card as it is now, or tell the desk.',
    )
  if (fact.kind === 'drive' && fact.entryId !== null && !side.entryIds.includes(fact.entryId))
    return no('not-of-the-side', 'Whose drive that was does not play in this side.')
  const closed = whyClosed(group.status, card)
  return {
    kind: 'ball',
    late: closed && `${closed} What was written is kept as a late fact for the desk and does not count by itself.`,
  }
}

/** Rules of Golf 3.2b. Counts until a card of the match is handed in; what the desk wrote of its end stands. */
function takeConcession(group: GroupCards, fact: ConcessionFact): Taken {
  if (fact.hole !== null && !hasHole(group, fact.hole)) return noSuchHole(group, fact.hole)
  const match = group.signing?.pairings.find((one) => one.id === fact.matchId)
  if (!match?.entryIds.some((id) => group.entryIds.includes(id)))
    return no(
      'no-such-match',
      'That match is not in this group any more. Look at the card as it is now, or tell the desk.',
    )
  const { walkover, result, abandoned } = match.ending
  if (walkover || result || abandoned)
    return no('match-ended', 'The desk has written down how this match ended. Ask there to change it.')
  const cards = [...group.cards.filter((one) => match.entryIds.includes(one.entryId)), ...match.elsewhere]
  const closed = cards.map((one) => whyClosed(group.status, one)).find((why) => why !== null) ?? null
  return {
    kind: 'concession',
    match,
    late: closed && `${closed} What was conceded is kept as a late fact for the desk and does not count by itself.`,
  }
}

/** Null while scores still count on the card. */
export function whyClosed(status: DayStatus, card: Pick<CardRecord, 'state'>): string | null {
  if (status === 'closed') return 'The day is closed.'
  if (card.state === 'taken-in') return 'The desk has taken this card in.'
  if (card.state === 'handed-in') return 'This card is signed and handed in.'
  return null
}

function takeScore(
  group: GroupCards,
  card: CardRecord,
  now: CurrentCard,
  fact: Extract<DeviceFact, { kind: 'score' }>,
  deviceId: DeviceId,
): Taken {
  if (!hasHole(group, fact.hole)) return noSuchHole(group, fact.hole)
  const closed = whyClosed(group.status, card)
  if (closed)
    return {
      kind: 'score',
      late: `${closed} The score is kept as a late fact for the desk and does not count by itself.`,
      withdraws: [],
    }
  return { kind: 'score', late: null, withdraws: withdrawnBy(group, card, now, asWritten(fact, deviceId)) }
}

/** What decides about a score once it is saved. */
export type WrittenFact = Pick<FactRecord, 'hole' | 'score' | 'writer' | 'deviceId' | 'seq' | 'replaces'>

/** A phone takes the place of its own scores, and of those of another phone only where it says so. */
export function asWritten(fact: Extract<DeviceFact, { kind: 'score' }>, deviceId: DeviceId): WrittenFact {
  const { hole, score, writer, seq } = fact
  return { hole, score, writer, seq, deviceId, replaces: fact.replaces ?? [] }
}

/** Roles whose signature no longer covers the card once this fact stands: the hole reads otherwise, or is in dispute. */
export function withdrawnBy(
  sources: Pick<GroupCards, 'holes' | 'firstHole' | 'facts' | 'rulings' | 'signatures'>,
  card: CardRecord,
  now: CurrentCard,
  fact: WrittenFact,
): readonly Role[] {
  const live = [now.player, now.marker].filter((one) => one !== null)
  if (!live.length) return []
  const then = currentCard({ card, ...sources, facts: [...sources.facts, unsaved(card.id, fact)] })
  const place = placeOfHole(sources, fact.hole)
  const line = then.holes[place]
  if (!line || line.ruledBy !== null) return []
  return live.filter((one) => line.notAgreed || one.scores[place] !== line.score).map((one) => one.role)
}

/** A fact as it will read once it is saved: after everything else. */
export function unsaved(cardId: CardId, fact: WrittenFact, rest: Partial<FactRecord> = {}): FactRecord {
  const never = new Date(0)
  return {
    id: Number.MAX_SAFE_INTEGER,
    cardId,
    hole: fact.hole,
    score: fact.score,
    writer: fact.writer,
    deviceId: fact.deviceId,
    seq: fact.seq,
    replaces: fact.replaces,
    writtenAt: never,
    receivedAt: never,
    late: false,
    ...rest,
  }
}

function takeSignature(
  group: GroupCards,
  card: CardRecord,
  now: CurrentCard,
  fact: Extract<DeviceFact, { kind: 'signature' }>,
): Taken {
  const closed = whyClosed(group.status, card)
  if (closed) return no('card-closed', `${closed} It takes no further signature.`)
  const wrong = wrongSigner(group, card, now, fact)
  if (wrong) return wrong
  if (now.notAgreed.length)
    return no('not-agreed', `${holes(now.notAgreed)} not agreed. Agree on the score, or ask the committee to rule.`)
  if (now.missing.length)
    return no('holes-missing', `${holes(now.missing)} without a score. Enter the strokes or "no score", then sign.`)
  const differs = now.scores.flatMap((score, at) => (score === fact.scores[at] ? [] : [shownHole(group, at)]))
  if (differs.length || fact.scores.length !== now.scores.length)
    return no(
      'card-changed',
      `The card has changed since you signed: look at ${holes(differs).toLowerCase()} and sign again.`,
    )
  const other = fact.role === 'player' ? now.marker : now.player
  return { kind: 'signature', entryId: fact.writer, handsIn: other !== null }
}

/**
 * Rules of Golf 22.2 and 23.1: any partner certifies the card of the side. The marker is of another side; where a side is
 * alone in its group another of its players, and the two are never one person (3.3b).
 */
function wrongSigner(
  group: GroupCards,
  card: CardRecord,
  now: CurrentCard,
  { role, writer }: Extract<DeviceFact, { kind: 'signature' }>,
): Taken | null {
  const players = group.signing?.shared.find((side) => side.includes(card.entryId)) ?? [card.entryId]
  const isPlayer = players.includes(writer)
  const names = players.map((id) => group.nameOf[id] ?? 'the player')
  const who = names.length > 1 ? `${names.slice(0, -1).join(', ')} or ${names.at(-1)}` : names[0]
  if (role === 'player' && !isPlayer) return no('not-your-card', `Only ${who} signs this card as the player.`)
  const isAlone = players.length > 1 && group.entryIds.every((id) => players.includes(id))
  if (role === 'marker' && isPlayer && !isAlone)
    return no('own-marker', 'Nobody marks their own card. Hand the phone to the marker to sign.')
  const other = role === 'player' ? now.marker : now.player
  return other !== null && other.entryId === writer
    ? no('signed-twice', 'Two people sign a card. Hand the phone to another player of the side.')
    : null
}

/** The card with what its matches leave of it, by the cards of the group as they are in this delivery. */
function asGroupPlays(group: GroupCards, card: CardRecord, now: CurrentCard): CurrentCard {
  if (!group.signing || group.signing.matches.length === 0) return now
  const { matches, beside } = group.signing
  const agreed = new Map<string, readonly HoleScore[]>(
    group.cards.map((one) => [one.entryId, agreedScores(currentCard({ card: one, ...group }))]),
  )
  return leftOf(
    now,
    holesToPlay(matches, card.entryId, beside[card.entryId] ?? null, (player) => agreed.get(player)),
  )
}

/** "Hole 11", "Holes 4 and 11", "Holes 4, 9 and 11". */
function holes(numbers: readonly number[]): string {
  if (numbers.length < 2) return `Hole ${numbers[0] ?? ''}`.trim()
  return `Holes ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`
}

/** The group's cards after the fact was taken: what the next one of the same delivery meets. */
export function afterFact(
  group: GroupCards,
  fact: DeviceFact,
  deviceId: DeviceId,
  taken: Taken,
  now: Date,
): GroupCards {
  if (taken.kind === 'refused') return group
  if (taken.kind === 'score' && fact.kind === 'score') {
    const last = group.facts.at(-1)?.id ?? 0
    const added = unsaved(fact.cardId, asWritten(fact, deviceId), { id: last + 1, late: taken.late !== null })
    return {
      ...group,
      facts: [...group.facts, added],
      signatures: group.signatures.map((one) =>
        one.cardId === fact.cardId && one.withdrawnAt === null && taken.withdraws.includes(one.role)
          ? { ...one, withdrawnAt: now }
          : one,
      ),
    }
  }
  if (taken.kind === 'signature' && fact.kind === 'signature') {
    const { cardId, role, scores } = fact
    const signature = { cardId, role, entryId: taken.entryId, scores, signedAt: now, withdrawnAt: null }
    return {
      ...group,
      signatures: [...group.signatures, signature],
      cards: taken.handsIn
        ? group.cards.map((one) => (one.id === cardId ? { ...one, state: 'handed-in' as const } : one))
        : group.cards,
    }
  }
  if (taken.kind === 'ball') return group
  if (taken.kind === 'concession' && fact.kind === 'concession') {
    const { signing } = group
    if (!signing || taken.late !== null) return group
    const ending = endingAfter(taken.match.ending, fact)
    return {
      ...group,
      signing: {
        ...signing,
        matches: signing.matches.map((one) => (one.id === taken.match.id ? withConcession(one, fact) : one)),
        pairings: signing.pairings.map((one) => (one.id === taken.match.id ? { ...one, ending } : one)),
      },
    }
  }
  throw new Error(`A ${fact.kind} cannot be taken as a ${taken.kind}.`)
}
