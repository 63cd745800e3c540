// The day file, version 1: a whole day in one JSON document. Read here and nowhere else; described in day-file.md.

import { ok, type Result, refused } from '@/lib/result'
import type { Card, Competition, Day, Player, Tee } from '@/lib/rules/day'
import { editionFor } from '@/lib/rules/editions/editions'
import { tenths } from '@/lib/rules/exact/fraction'
import type { FiveChoices } from '@/lib/rules/formats/format'
import { faultsOf } from './day-file-faults'
import { type DayFileShape, dayFileSchema } from './day-file-schema'
import { nonsenseIn } from './day-file-sense'

export type DayFileRefusal = 'day-file-not-readable' | 'day-file-makes-no-sense'

/** A JSON value as the day a score can be worked out from, or every fault with its place. */
export function parseDayFile(json: unknown): Result<Day, DayFileRefusal> {
  const parsed = dayFileSchema.safeParse(json)
  if (!parsed.success) {
    const sentence = 'The day file cannot be read as it is; each fault is named with its place.'
    return refused('day-file-not-readable', sentence, faultsOf(parsed.error.issues, json))
  }
  const nonsense = nonsenseIn(parsed.data)
  if (nonsense.length > 0) {
    const sentence = 'The day file contradicts itself; each fault is named with its place.'
    return refused('day-file-makes-no-sense', sentence, nonsense)
  }
  return ok(dayOf(parsed.data))
}

function dayOf(file: DayFileShape): Day {
  return {
    date: file.date,
    courseName: file.course.name,
    edition: file.edition ?? editionFor(file.date, file.region ?? 'gbi'),
    tees: file.course.tees.map(({ courseRating, ...tee }): Tee => ({ ...tee, courseRatingTenths: courseRating })),
    players: file.players.map(({ handicapIndex, handicapIndexBefore, playingHandicap, ...player }): Player => {
      const byHand = typeof playingHandicap === 'number' ? { '*': playingHandicap } : playingHandicap
      return {
        ...player,
        indexTenths: handicapIndex,
        ...(handicapIndexBefore === undefined ? {} : { indexBefore: handicapIndexBefore }),
        ...(byHand === undefined ? {} : { playingHandicap: byHand }),
      }
    }),
    sides: file.sides,
    cards: file.cards.map(({ penaltyStrokes, handicapIndex, ...card }): Card => {
      const own = handicapIndex === undefined ? card : { ...card, indexTenths: handicapIndex }
      if (penaltyStrokes === undefined) return own
      const strokes = Object.entries(penaltyStrokes).map(([hole, n]) => [Number(hole), n] as const)
      return { ...own, penaltyStrokes: Object.fromEntries(strokes) }
    }),
    competitions: file.competitions.map(({ format, ...competition }): Competition => {
      if (typeof format === 'string') return { ...competition, format }
      const { name, ...custom } = format
      return { ...competition, format: name, custom }
    }),
    ...(file.teams === undefined ? {} : { teams: file.teams }),
    ...(file.absent === undefined ? {} : { absent: file.absent }),
    closed: file.closed,
  }
}

/** The same day as a document that `parseDayFile` reads back to an equal day. */
export function writeDayFile(day: Day): unknown {
  return {
    dayFile: 1,
    date: day.date,
    edition: day.edition,
    closed: day.closed,
    course: {
      name: day.courseName ?? '',
      tees: day.tees.map(({ courseRatingTenths, holes, ...tee }) => ({
        ...tee,
        courseRating: courseRatingTenths / 10,
        holes,
      })),
    },
    players: day.players.map(({ indexTenths, indexBefore, ...player }) => ({
      ...player,
      handicapIndex: writtenIndex(indexTenths),
      ...(indexBefore === undefined ? {} : { handicapIndexBefore: writtenIndex(indexBefore) }),
    })),
    sides: day.sides,
    cards: day.cards.map(({ indexTenths, ...card }) => ({
      ...card,
      ...(indexTenths === undefined ? {} : { handicapIndex: writtenIndex(indexTenths) }),
    })),
    competitions: day.competitions.map(({ custom, format, ...competition }) => ({
      ...competition,
      format: custom === undefined ? format : { name: format, ...choicesOf(custom) },
    })),
    ...(day.teams === undefined ? {} : { teams: day.teams }),
    ...(day.absent === undefined ? {} : { absent: day.absent }),
  }
}

const writtenIndex = (inTenths: number) => (inTenths < 0 ? tenths(inTenths) : inTenths / 10)

/** Only the five choices, whatever else a finished format carries. */
function choicesOf({ side, ball, strokes, value, count }: FiveChoices): FiveChoices {
  return { side, ball, strokes, value, count }
}
