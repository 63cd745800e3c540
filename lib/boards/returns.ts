// The desk's returns from the day's record: the state of every card and everything in the way of closing the day.

import type { CardRecord, DayRecord, EntryRecord, FactRecord, RulingRecord } from '@/lib/facts/day-record'
import type { CardId, EntryId } from '@/lib/facts/ids'
import type { HoleLine } from '@/lib/rules/standings'
import { dayHead } from './board'
import { sharedCard } from './card-holders'
import {
  type CardFault,
  type CurrentCard,
  faultsOf,
  isHandedIn,
  keyOf,
  rulingsInForce,
  wantsInWords,
} from './current-card'
import { timeInWords } from './dates-in-words'
import { cardsAsTheyStand, dayOfRecord } from './day-of-record'
import { drivesShortOnCard } from './drives-short'
import { type Names, namesOf } from './entrant-names'
import { formatIn } from './format-of-competition'
import { groupsOnCourse } from './groups-on-course'
import { capital, listed, ordinal, scoreInWords } from './in-words'
import { withNoPart } from './no-part'
import { mainReading, type OwnLine, teeOfCard } from './own-handicaps'
import { NO_TOTALS, totalsThatDiffer } from './paper-totals'
import type { CardReturn, LateFactLine, ReturnHole, ReturnsView, RulingLine } from './returns-view'
import { rulingSentence } from './ruling-sentences'
import type { GroupOnCourse } from './views'

interface Desk {
  readonly record: DayRecord
  readonly names: Names
  /** Whose card it is, by the entry that holds it. */
  readonly called: (entryId: EntryId) => string
  readonly zone: string
}

export function returnsOf(record: DayRecord, zone: string): ReturnsView {
  const cards = cardsAsTheyStand(record)
  const main = mainReading(record, dayOfRecord(record))
  const names = namesOf(record)
  const called = calledApart(record, names, (id) => main.lines.get(id)?.playingHandicap ?? null)
  const desk: Desk = { record, names, called, zone }
  const rulings = rulingLines(desk)
  const onCourse = new Map(groupsOnCourse(record, cards).map((group) => [group.number, group]))
  const groups = record.groups.map((group) => ({
    number: group.number,
    startTime: group.startTime,
    startHole: group.startHole,
    cards: group.entryIds.flatMap((id) => {
      const entry = record.entries.find((one) => one.id === id)
      const card = cards.get(id)
      const kept = record.cards.find((one) => one.entryId === id)
      if (!entry || !card || !kept) return []
      if (withNoPart(record).has(id) && card.scores.every((score) => score === null)) return []
      return [cardReturn(desk, entry, kept, card, main.lines.get(id), rulings, onCourse.get(group.number))]
    }),
  }))
  const all = groups.flatMap((group) => group.cards)
  return {
    ...dayHead(record),
    dayId: record.id,
    version: record.version,
    scoreVersion: record.scoreVersion,
    isPublished: record.publications.length > 0,
    hasMatches: record.competitions.some((one) => formatIn(one)?.isMatch ?? false),
    unit: main.unit,
    takenIn: all.filter((card) => card.state === 'taken-in').length,
    cards: all.length,
    groups,
    rulings: [...rulings].reverse(),
    lateFacts: all.flatMap((card) => card.lateFacts).sort((a, b) => b.id - a.id),
    inTheWay: cardsInTheWay(record, cards),
    notReturned: all.filter((card) => card.outcome === 'no-return').map((card) => card.name),
  }
}

/**
 * Whose card it is. A side on one ball is named whole. Two of one name get the figure they play off, as father and son
 * are told apart on a card.
 */
function calledApart(
  record: DayRecord,
  names: Names,
  playsOff: (entryId: EntryId) => number | null,
): (entryId: EntryId) => string {
  const plain = (id: EntryId) => {
    const side = sharedCard(record, id)
    return side ? listed(side.entryIds.map(names.full)) : names.full(id)
  }
  const times = new Map<string, number>()
  for (const { entryId } of record.cards) times.set(plain(entryId), (times.get(plain(entryId)) ?? 0) + 1)
  return (id) => {
    const name = plain(id)
    const off = playsOff(id)
    return (times.get(name) ?? 0) < 2 || off === null ? name : `${name} (off ${off < 0 ? `+${-off}` : off})`
  }
}

/** A card that keeps the day from being closed: still out, or handed in and not accepted yet. */
export interface CardInTheWay extends CardFault {
  readonly cardId: CardId
  readonly entryId: EntryId
  readonly isOut: boolean
}

/** Cards that are neither taken in nor ruled out, each with what it wants. */
export function cardsInTheWay(record: DayRecord, cards: ReadonlyMap<string, CurrentCard>): readonly CardInTheWay[] {
  const names = namesOf(record)
  const order = record.groups.flatMap((group) => group.entryIds)
  const cardsInOrder = [...record.cards].sort((a, b) => order.indexOf(a.entryId) - order.indexOf(b.entryId))
  return cardsInOrder.flatMap((kept) => {
    const card = cards.get(kept.entryId)
    const entry = record.entries.find((one) => one.id === kept.entryId)
    // Signed on the phone after the day was opened again: the card without which it was closed has come in.
    const cameIn = card !== undefined && card.closedWithout !== null && isHandedIn(kept.state, card)
    if (withNoPart(record).has(kept.entryId)) return []
    if (!card || entry?.status !== 'entered' || kept.state === 'taken-in' || (card.outcome && !cameIn)) return []
    const wants = wantsInWords(card) || 'The card is ready: accept it.'
    const name = names.full(kept.entryId)
    return [
      {
        place: name,
        sentence: `${name}: ${wants}`,
        cardId: kept.id,
        entryId: kept.entryId,
        isOut: !isHandedIn(kept.state, card),
      },
    ]
  })
}

function cardReturn(
  desk: Desk,
  entry: EntryRecord,
  kept: CardRecord,
  card: CurrentCard,
  own: OwnLine | undefined,
  rulings: readonly RulingLine[],
  group: GroupOnCourse | undefined,
): CardReturn {
  const { record, names } = desk
  const tee = teeOfCard(record, entry, own)
  const paper = kept.paper ?? NO_TOTALS
  const begun = card.missing.length < card.holes.length
  const drives = begun && !card.outcome ? drivesShortOnCard(record, entry.id, names) : []
  const faults = kept.state === 'taken-in' ? [] : faultsOf(card)
  return {
    cardId: kept.id,
    entryId: entry.id,
    name: desk.called(entry.id),
    player: names.full(entry.id),
    isSide: sharedCard(record, entry.id) !== null,
    note: names.note(entry.id),
    tee: { name: tee?.name ?? '', gender: tee?.gender ?? entry.gender },
    playingHandicap: own?.playingHandicap ?? null,
    marker: kept.markerId ? { entryId: kept.markerId, name: names.full(kept.markerId) } : null,
    state: kept.state,
    takenInAt: kept.takenInAt?.toISOString() ?? null,
    outcome: card.outcome,
    stands: card.stands,
    line:
      drives.length > 0 && isHandedIn(kept.state, card)
        ? `${lineOf(kept, card, group)}, too few drives`
        : lineOf(kept, card, group),
    holes: (tee?.holes ?? []).map((hole, at) => returnHole(desk, card, hole, own?.holes[at], at)),
    out: own?.out ?? null,
    in: own?.in ?? null,
    gross: own?.gross ?? null,
    score: own?.score ?? null,
    missing: card.missing,
    notNeeded: card.notNeeded,
    notAgreed: card.notAgreed,
    signatures: record.signatures
      .filter((one) => one.cardId === kept.id)
      .map((one) => ({
        role: one.role,
        name: one.entryId ? names.full(one.entryId) : 'on paper',
        onPaper: one.entryId === null,
        signedAt: one.signedAt.toISOString(),
        covers: one.withdrawnAt === null,
      })),
    faults,
    drivesShort: drives,
    lateFacts: card.lateFacts.map((fact) => lateLine(desk, entry, card, fact)),
    rulings: rulings.filter((one) => one.cardId === kept.id),
    paper,
    isReady:
      kept.state === 'handed-in' &&
      card.outcome === null &&
      faults.length === 0 &&
      drives.length === 0 &&
      card.lateFacts.length === 0 &&
      totalsThatDiffer(card.scores, paper).length === 0,
  }
}

function returnHole(
  desk: Desk,
  card: CurrentCard,
  hole: { readonly hole: number; readonly par: number; readonly strokeIndex: number; readonly yards?: number },
  line: HoleLine | undefined,
  at: number,
): ReturnHole {
  const now = card.holes[at]
  const opinions = now?.opinions ?? []
  const written = opinions.map((fact) => ({
    writer: keyOf(fact),
    name: opinionName(desk.names, fact, opinions),
    score: fact.score,
    writtenAt: fact.writtenAt.toISOString(),
    receivedAt: fact.receivedAt.toISOString(),
  }))
  return {
    hole: hole.hole,
    par: hole.par,
    strokeIndex: hole.strokeIndex,
    yards: hole.yards ?? null,
    strokes: line?.strokes ?? 0,
    score: now?.score ?? null,
    value: line?.value ?? null,
    notAgreed: now?.notAgreed ?? false,
    ruled: (now?.ruledBy ?? null) !== null,
    written,
    sentence: now?.notAgreed
      ? now.opinions
          .map(
            (fact) =>
              `${capital(opinionName(desk.names, fact, opinions))} wrote ${scoreInWords(fact.score)} at ${timeInWords(fact.writtenAt, desk.zone)}.`,
          )
          .join(' ')
      : null,
  }
}

export function writerName(names: Names, writer: string): string {
  return writer === 'desk' ? 'the desk' : names.full(writer)
}

/** "Gethin Maesgoch on another phone" where the name wrote differently on two: the first one to write has the plain name. */
export function opinionName(names: Names, fact: FactRecord, opinions: readonly FactRecord[]): string {
  const name = writerName(names, fact.writer)
  const isFirst = opinions.findLast((one) => one.writer === fact.writer) === fact
  return isFirst ? name : `${name} on another phone`
}

/** Short, for the list of cards. */
function lineOf(kept: CardRecord, card: CurrentCard, group: GroupOnCourse | undefined): string {
  if (card.outcome && card.closedWithout !== null && isHandedIn(kept.state, card)) return 'handed in'
  if (card.outcome)
    return { 'no-return': 'no return', disqualified: 'disqualified', withdrawn: 'withdrawn' }[card.outcome]
  if (kept.state === 'taken-in') return 'accepted'
  if (card.notAgreed.length)
    return card.notAgreed.length === 1
      ? `hole ${card.notAgreed[0]} differs`
      : `holes ${listed(card.notAgreed.map(String))} differ`
  if (isHandedIn(kept.state, card)) return 'handed in'
  if (card.missing.length === card.holes.length) return 'not started'
  if (card.missing.length === 0) return 'finished, not signed'
  return group?.onHole ? `on the ${ordinal(group.onHole)}` : `${card.missing.length} holes to enter`
}

function lateLine(
  { names, called, zone }: Desk,
  entry: EntryRecord,
  card: CurrentCard,
  fact: FactRecord,
): LateFactLine {
  const now = card.holes.find((one) => one.hole === fact.hole)?.score ?? null
  const has = fact.score === now ? 'The card had it already.' : `The card has ${scoreInWords(now)}.`
  return {
    id: fact.id,
    cardId: fact.cardId,
    name: called(entry.id),
    hole: fact.hole,
    score: fact.score,
    by: writerName(names, fact.writer),
    writtenAt: fact.writtenAt.toISOString(),
    receivedAt: fact.receivedAt.toISOString(),
    sentence: `${called(entry.id)}, hole ${fact.hole}: ${scoreInWords(fact.score)}, written at ${timeInWords(fact.writtenAt, zone)} and received at ${timeInWords(fact.receivedAt, zone)}. ${has}`,
  }
}

/** In the order they were given; those replaced say by which. */
export function rulingLines({
  record,
  called,
}: Pick<Desk, 'record'> & { readonly called: (entryId: EntryId) => string }): readonly RulingLine[] {
  const inForce = new Set(rulingsInForce(record.rulings).map((one) => one.number))
  const entryOf = new Map(record.cards.map((card) => [card.id, card.entryId]))
  return [...record.rulings]
    .sort((a, b) => a.number - b.number)
    .map((ruling) => {
      const entryId = entryOf.get(ruling.cardId) ?? ('' as EntryId)
      return {
        number: ruling.number,
        cardId: ruling.cardId,
        entryId,
        name: called(entryId),
        hole: ruling.hole,
        sentence: sentenceOf(ruling),
        reason: ruling.reason,
        clause: ruling.clause,
        by: ruling.byName,
        at: ruling.ruledAt.toISOString(),
        replaces: ruling.replaces,
        replacedBy: inForce.has(ruling.number)
          ? null
          : (record.rulings.find((one) => one.replaces === ruling.number)?.number ?? null),
      }
    })
}

function sentenceOf(ruling: RulingRecord): string {
  return ruling.kind === 'withdrawn-ruling' && ruling.replaces !== null
    ? `Ruling ${ruling.replaces} is taken back.`
    : rulingSentence(ruling)
}
