// Decisions about the entry list that entering a member and entering a guest share.

import { markersOfDay } from '@/lib/boards/card-holders'
import { hasScores } from '@/lib/boards/drawn-day'
import { figuresOf } from '@/lib/boards/handicap-table'
import { competitionIdOf } from '@/lib/boards/ids-from-engine'
import type { DayRecord } from '@/lib/facts/day-record'
import type { RoundTeeId } from '@/lib/facts/ids'
import { ok, type Refused, type Result, refused } from '@/lib/result'
import type { Tx } from '@/lib/store/client'
import { dayRecordIn } from '@/lib/store/day-record'
import { freezeFigures } from '@/lib/store/entries'
import { type CardsToWrite, writeCards } from '@/lib/store/groups'

export interface Entered {
  readonly version: number
  /** How many got a place by this change, whoever waited before not counted. */
  readonly entered: number
  /** Names in full, of those who were taken out. */
  readonly withdrawn: readonly string[]
  /** Names of those who had to be put on the waiting list. */
  readonly waiting: readonly string[]
  /** Names of those who got a place because somebody withdrew. */
  readonly movedUp: readonly string[]
}

export function closedForEntries(day: DayRecord): Refused<'entries-over'> | null {
  if (day.status !== 'closed') return null
  return refused('entries-over', 'The day is closed: nobody can be put in or taken out any more.')
}

/** The tee asked for, or the day's own for the gender. */
export function teeFor(
  day: DayRecord,
  gender: 'men' | 'women',
  roundTeeId: RoundTeeId | null,
): Result<RoundTeeId, 'no-tee' | 'wrong-tee'> {
  if (roundTeeId === null) {
    const own = day.tees.find((tee) => tee.gender === gender && tee.isDefault)
    if (own) return ok(own.id)
    return refused('no-tee', `The day has no tee for ${gender}. Choose one under the day's course first.`)
  }
  const tee = day.tees.find((one) => one.id === roundTeeId)
  if (!tee) return refused('no-tee', 'The day has no such tee.')
  if (tee.gender !== gender)
    return refused('wrong-tee', `${tee.name} is rated for ${tee.gender} here: choose a tee rated for ${gender}.`)
  return ok(tee.id)
}

/** Whoever comes in after the freeze plays off the figure of that moment, fixed at once like everybody else's. */
export async function freezeLate(tx: Tx, before: DayRecord): Promise<void> {
  if (before.status === 'called') return
  const day = await dayRecordIn(tx, { societyId: before.society.id, dayId: before.id })
  if (!day) throw new Error(`Day ${before.id} went away while somebody was entered.`)
  const figures = figuresOf(day)
  await freezeFigures(
    tx,
    day.entries.flatMap((entry) => {
      const figure = figures.get(entry.id)
      if (entry.frozen || entry.status !== 'entered' || entry.indexTenths === null || !figure) return []
      return [
        {
          entryId: entry.id,
          indexTenths: entry.indexTenths,
          courseNumerator: figure.course.numerator,
          courseDenominator: figure.course.denominator,
          courseHandicap: figure.course.rounded,
          labels: entry.labels ?? [],
          playing: [...figure.playing].map(([id, playingHandicap]) => ({
            competitionId: competitionIdOf(id),
            playingHandicap,
          })),
        },
      ]
    }),
  )
}

/** Once the start is published, a change of who plays or with whom changes the cards too. */
export async function cardsAfterChange(tx: Tx, before: DayRecord): Promise<void> {
  if (before.startPublishedAt === null) return
  const day = await dayRecordIn(tx, { societyId: before.society.id, dayId: before.id })
  if (!day) throw new Error(`Day ${before.id} went away while its cards were written.`)
  await writeCards(tx, day, cardsFor(day))
}

/** A card for everybody in a group, or one a side of one ball; cards with scores on them stay whatever happens. */
export function cardsFor(day: DayRecord): CardsToWrite {
  const wanted = markersOfDay(day)
  const kept = new Map(day.cards.map((card) => [card.entryId, card]))
  return {
    fresh: [...wanted].filter(([entryId]) => !kept.has(entryId)).map(([entryId, markerId]) => ({ entryId, markerId })),
    marked: [...wanted].flatMap(([entryId, markerId]) => {
      const card = kept.get(entryId)
      return card && card.markerId !== markerId && card.state === 'out' ? [{ cardId: card.id, markerId }] : []
    }),
    empty: day.cards
      .filter((card) => !wanted.has(card.entryId) && !hasScores(day, card.entryId))
      .map((card) => card.id),
  }
}
