// A card read under another format of the rules: what it would have been worth, and where it would have come.

import type { DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import type { Day } from '@/lib/rules/day'
import { inWords as allowanceInWords } from '@/lib/rules/formats/catalogue'
import type { Format } from '@/lib/rules/formats/format'
import { type CardReading, readableAs, readCardAs } from '@/lib/rules/readings/read-card-as'
import type { HoleLine, WorkingStep } from '@/lib/rules/standings'
import { dayHead } from './board'
import { sharedCard } from './card-holders'
import { cardsAsTheyStand, dayOfRecord } from './day-of-record'
import { namesOf } from './entrant-names'
import type { CompetitionBoard, DayHead } from './views'

/** A format a card can be read as, and with whom. */
export interface ReadableAs {
  readonly format: string
  readonly name: string
  readonly family: Format['family']
}

export interface CardRead extends DayHead {
  readonly entryId: EntryId
  /** The player, or the side the card is read with. */
  readonly name: string
  readonly format: string
  readonly formatName: string
  readonly formatSentence: string
  readonly allowance: string
  readonly allowanceFrom: string
  readonly unit: CompetitionBoard['unit']
  readonly score: number | null
  readonly noPlace: string | null
  /** Among all cards of the day; null for a side, which stands alone. */
  readonly place: number | null
  readonly level: boolean
  readonly of: number
  readonly playingHandicap: number | null
  readonly holes: readonly HoleLine[]
  readonly hole: number | null
  /** Of the hole asked for, else of the handicap and the total. */
  readonly steps: readonly WorkingStep[]
  readonly sentence: string | null
  readonly choices: readonly ReadableAs[]
}

/** Singles for everybody, and the formats of sides the player is in on this day. */
export function formatsToReadAs(day: Day, entryId: EntryId, isShared: boolean): readonly ReadableAs[] {
  // The card of a side's one ball is nobody's own.
  const single = isShared ? [] : readableAs(1)
  const sides = [...sidesOf(day, entryId).values()].flatMap(({ players, ball }) => readableAs(players.length, ball))
  return [...new Set([...single, ...sides])].map(({ id, name, family }) => ({ format: id, name, family }))
}

/** Null when there is no such card, format or hole. */
export function cardReadAs(
  record: DayRecord,
  entryId: EntryId,
  formatId: string,
  hole: number | null,
): CardRead | null {
  if (!cardsAsTheyStand(record).has(entryId)) return null
  const day = dayOfRecord(record)
  const names = namesOf(record)
  const choices = formatsToReadAs(day, entryId, sharedCard(record, entryId) !== null)
  if (!choices.some(({ format }) => format === formatId)) return null
  const reading = readingOf(day, entryId, formatId)
  if (reading === null) return null
  const { standing, result, format } = reading
  const working = hole === null ? null : reading.holeWorking(hole)
  if (hole !== null && working === null) return null
  const single = format.side.to === 1
  return {
    ...dayHead(record),
    entryId,
    name: single
      ? names.full(entryId)
      : new Intl.ListFormat('en-GB').format(standing.players.map((id) => names.full(id))),
    format: format.id,
    formatName: format.name,
    formatSentence: format.sentence,
    allowance: allowanceInWords(result.allowance),
    allowanceFrom: result.allowanceFrom,
    unit: result.unit,
    score: standing.holesPlayed === 0 ? null : standing.score,
    noPlace: standing.noPlace ?? null,
    place: single ? standing.place : null,
    level: standing.tied,
    of: result.standings.filter(({ place }) => place !== null).length,
    playingHandicap: standing.playingHandicap,
    holes: standing.holes,
    hole,
    steps: working?.steps ?? reading.steps,
    sentence: working?.sentence ?? null,
    choices,
  }
}

function readingOf(day: Day, entryId: EntryId, formatId: string): CardReading | null {
  const alone = readCardAs(day, [entryId], formatId)
  if (alone !== null) return alone
  for (const { players } of sidesOf(day, entryId).values()) {
    const together = readCardAs(day, players, formatId)
    if (together !== null) return together
  }
  return null
}

/** One side of each size the player is in: of partners with own cards, or of a ball that was theirs together. */
function sidesOf(day: Day, entryId: EntryId) {
  const bySize = new Map<number, { players: readonly string[]; ball: Format['ball'] }>()
  for (const { players } of day.sides) {
    if (players.length < 2 || !players.includes(entryId) || bySize.has(players.length)) continue
    const own = players.every((id) => day.cards.some((card) => card.player === id && (card.round ?? 1) === 1))
    bySize.set(players.length, { players, ball: own ? 'own' : 'one' })
  }
  return bySize
}
