// The book's day as the engine takes it. The day file of the same day says the same, so that the score command and the
// board cannot disagree.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import { stoppedBy } from '@/lib/facts/day-rulings'
import type { CardId, EntryId } from '@/lib/facts/ids'
import { fullName } from '@/lib/facts/person-name'
import type { Card, Competition, Day, Player, Side, Tee } from '@/lib/rules/day'
import { termsOfRound } from './counted-terms'
import { type CurrentCard, currentCard } from './current-card'
import { asRuled } from './day-rulings'
import { formatIn } from './format-of-competition'
import {
  agreedScores,
  asMatchesLeave,
  hasMatches,
  leftOf,
  type MatchOfDay,
  matchesToCount,
  nothingNeeded,
} from './match-cards'
import { withNoPart } from './no-part'
import { earlierRounds, type MissingEntry, missingToday, roundsOf, sidesMissing } from './rounds-of-record'
import { sharedGroups } from './shared-games'
import { sideTeeOf } from './side-tee'
import { absentFrom, isOneBall, matchesOf, sideCards, sidesOf, teamsOf } from './sides-of-record'

// A record is one state of the book and never changes, so what is worked out from it is kept as long as it is.
const stands = new WeakMap<DayRecord, ReadonlyMap<string, CurrentCard>>()
const days = new WeakMap<DayRecord, Day>()

/** Every card of the day as it stands, by entry. */
export function cardsAsTheyStand(record: DayRecord): ReadonlyMap<string, CurrentCard> {
  const known = stands.get(record)
  if (known) return known
  const written = standing(record)
  const left =
    written.size > 0 && hasMatches(record) ? asMatchesLeave(record, written, matchesAgreed(record, written)) : written
  const cards = withoutNeed(record, left)
  stands.set(record, cards)
  return cards
}

/** Nobody waits for the card of a player who has no part in the day. */
function withoutNeed(record: DayRecord, cards: ReadonlyMap<string, CurrentCard>): ReadonlyMap<string, CurrentCard> {
  const idle = withNoPart(record)
  if (idle.size === 0) return cards
  return new Map(
    [...cards].map(([id, card]) => [id, idle.has(id as EntryId) ? leftOf(card, nothingNeeded(card.holes)) : card]),
  )
}

/** The matches of the day, counted on what is agreed: a hole in dispute decides nothing yet. */
export const matchesOfDay = (record: DayRecord): readonly MatchOfDay[] =>
  hasMatches(record) ? matchesAgreed(record, standing(record)) : []

function matchesAgreed(record: DayRecord, written: ReadonlyMap<string, CurrentCard>): readonly MatchOfDay[] {
  const agreed = new Map([...written].map(([id, card]) => [id, { ...card, scores: agreedScores(card) }]))
  return matchesToCount(record, counted(record, agreed, true))
}

function standing(record: DayRecord): ReadonlyMap<string, CurrentCard> {
  // Of a day that was called off nothing counts, whatever was written before.
  if (record.calledOff) return new Map()
  const factsOf = grouped(record.facts)
  const signaturesOf = grouped(record.signatures)
  const rulingsOf = grouped(record.rulings)
  return new Map(
    record.cards.map((card) => [
      card.entryId,
      currentCard({
        card,
        holes: record.round.holes,
        firstHole: record.round.firstHole,
        facts: factsOf.get(card.id) ?? [],
        signatures: signaturesOf.get(card.id) ?? [],
        rulings: rulingsOf.get(card.id) ?? [],
        abandoned: stoppedBy(record.dayRulings),
      }),
    ]),
  )
}

function grouped<T extends { readonly cardId: CardId }>(rows: readonly T[]): ReadonlyMap<string, T[]> {
  const by = new Map<string, T[]>()
  for (const row of rows) {
    const list = by.get(row.cardId)
    if (list) list.push(row)
    else by.set(row.cardId, [row])
  }
  return by
}

/** `cards` other than those of the record itself: an empty map leaves out what was written and ruled. */
export function dayOfRecord(record: DayRecord, cards?: ReadonlyMap<string, CurrentCard>): Day {
  if (cards) return counted(record, cards, false)
  const known = days.get(record)
  if (known) return known
  const day = counted(record, cardsAsTheyStand(record), true)
  days.set(record, day)
  return day
}

/** `withMissing`: with whoever played an earlier round of a sum and not this one. */
function counted(whole: DayRecord, cards: ReadonlyMap<string, CurrentCard>, withMissing: boolean): Day {
  const record = whole.calledOff ? { ...whole, earlier: [] } : whole
  // Who waits or withdrew does not play; who has no figure yet cannot be counted until somebody gives one.
  const playing = record.entries.filter((entry) => entry.status === 'entered' && entry.indexTenths !== null)
  const ids = new Set(playing.map((entry) => entry.id))
  const cardsThen = (before: DayRecord) => cardsOfRound(before, cardsAsTheyStand(before), true)
  const missing = withMissing ? missingToday(record, playing, cardsThen) : []
  const away = sidesMissing(record, missing)
  const sides = [...sidesOf(record, ids), ...away]
  const own = cardsOfRound(record, cards)
  const earlier = earlierRounds(record, [...playing, ...missing], sides, cardsThen)
  const ruled = (entryId: EntryId) => cards.get(entryId)?.playingHandicap ?? null
  const competitions = record.competitions.map((one) =>
    asRuled(record, competitionOf(record, one, ids, sides, missing)),
  )
  const absent = absentFrom(record, competitions, sides, new Set([...ids, ...missing.map((entry) => entry.id)]))
  const teams = teamsOf(record, new Set([...ids, ...absent.map(({ id }) => id)]))
  return {
    date: record.date,
    courseName: record.round.courseName,
    edition: record.edition,
    closed: record.status === 'closed',
    tees: [
      ...record.tees.map(
        ({ id, name, gender, courseRatingTenths, slopeRating, holes }): Tee => ({
          id,
          name,
          gender,
          courseRatingTenths,
          slopeRating,
          holes,
        }),
      ),
      ...earlier.tees,
    ],
    players: [...playing, ...missing].map((entry): Player => {
      const byHand = ruled(entry.id)
      const right = cards.get(entry.id)
      const index = right?.indexTenths ?? null
      const course = right?.courseHandicap ?? null
      return {
        id: entry.id,
        name: fullName(entry),
        indexTenths: index ?? entry.indexTenths!,
        tee: entry.roundTeeId,
        ...(course === null ? {} : { courseHandicap: course }),
        ...(index === null ? {} : { indexBefore: entry.indexTenths! }),
        ...(byHand === null ? {} : { playingHandicap: { '*': byHand } }),
        ...(entry.kind === 'guest' ? { guest: true } : {}),
        ...(entry.labels?.length ? { groups: entry.labels } : {}),
      }
    }),
    sides,
    cards: [
      ...playing.flatMap((entry) => own.get(entry.id) ?? []),
      ...sideCards(record, sides, own, ruled),
      ...missing.map(({ id }): Card => ({ player: id, scores: [], missed: true })),
      ...away
        .filter((side) => isOneBall(record, side))
        .map(({ id }): Card => ({ player: id, scores: [], missed: true })),
      ...earlier.cards,
    ],
    competitions,
    ...(teams.length > 0 ? { teams } : {}),
    ...(absent.length > 0 ? { absent } : {}),
  }
}

/** Cards as they stand, by entry. Of an earlier day a handicap by ruling goes with the card, for that round alone. */
function cardsOfRound(
  { groups, round }: Pick<DayRecord, 'groups' | 'round'>,
  cards: ReadonlyMap<string, CurrentCard>,
  earlier = false,
): ReadonlyMap<string, Card> {
  const startHole = new Map<string, number>(
    groups.flatMap((group) => group.entryIds.map((id) => [id, group.startHole] as const)),
  )
  return new Map(
    [...cards].map(([entryId, card]) => [
      entryId,
      {
        player: entryId,
        scores: card.scores,
        ...(card.outcome ? { outcome: card.outcome } : {}),
        ...(Object.keys(card.penaltyStrokes).length ? { penaltyStrokes: card.penaltyStrokes } : {}),
        ...(card.penaltyPoints ? { penaltyPoints: card.penaltyPoints } : {}),
        startHole: startHole.get(entryId) ?? round.firstHole,
        ...(earlier && card.indexTenths !== null ? { indexTenths: card.indexTenths } : {}),
        ...(earlier && card.courseHandicap !== null ? { courseHandicap: card.courseHandicap } : {}),
        ...(earlier && card.playingHandicap !== null ? { playingHandicap: card.playingHandicap } : {}),
      },
    ]),
  )
}

function competitionOf(
  record: DayRecord,
  competition: CompetitionRecord,
  playing: ReadonlySet<string>,
  sides: readonly Side[],
  missing: readonly MissingEntry[],
): Competition {
  // What the engine reads; the rest of the terms is about prizes and the sheet.
  const {
    allowanceFrom: _from,
    allowanceReason: _reason,
    guests: _g,
    onePrize: _p,
    sidesPrizes: _s,
    sideTee: named,
    ...rest
  } = competition.terms
  // A divisor stands in place of the allowance: no day is read in which both are given.
  const { allowance: _allowance, ...divided } = rest
  const terms = rest.dividedBy === undefined ? rest : divided
  const format = formatIn(competition)
  const groups = format && sharedGroups(record, format, playing)
  const rounds = roundsOf(record, competition)
  const roundTerms = record.earlier.flatMap((earlier, at) => {
    const then = competition.countedDayIds.includes(earlier.id) ? termsOfRound(competition, earlier) : null
    return then ? [{ round: at + 2, ...then }] : []
  })
  const sideTee = sideTeeOf(record, named)
  const entrants = format?.sideSize === 1 && !format.isMatch ? entrantsAmong(competition, playing, missing) : undefined
  return {
    id: competition.id,
    name: competition.name,
    format: competition.format,
    ...terms,
    ...(sideTee === null ? {} : { sideTee }),
    ...(format?.isMatch ? { matches: matchesOf(competition, playing, sides) } : {}),
    ...(groups ? { groups } : {}),
    ...(rounds ? { rounds } : {}),
    ...(roundTerms.length > 0 ? { roundTerms } : {}),
    ...(entrants ? { entrants } : {}),
  }
}

/** Where somebody has missed this day: whoever plays, and of the others those who played a day that is counted here. */
function entrantsAmong(
  { countedDayIds }: CompetitionRecord,
  playing: ReadonlySet<string>,
  missing: readonly MissingEntry[],
): string[] | undefined {
  if (missing.length === 0) return undefined
  const counted = missing.filter(({ days }) => days.some((id) => countedDayIds.includes(id)))
  return [...playing, ...counted.map((entry) => entry.id)]
}
