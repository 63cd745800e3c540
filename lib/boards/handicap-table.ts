// From the figure each player came with to the strokes each plays with: the table of the freeze, and what it stores.

import type { DayRecord, EntryRecord } from '@/lib/facts/day-record'
import { byName, fullName } from '@/lib/facts/person-name'
import { FORMATS, inWords } from '@/lib/rules/formats/catalogue'
import type { CourseHandicap } from '@/lib/rules/handicap/course-handicap'
import { type BallSeed, lowestParOf } from '@/lib/rules/score/balls'
import { indexOf } from '@/lib/rules/score/day-index'
import { handicapInFull, ownHandicap } from '@/lib/rules/score/handicap-of-ball'
import { termsInForce } from '@/lib/rules/score/terms-in-force'
import { dayOfRecord } from './day-of-record'
import { figureOf, unroundedOf } from './figure'
import { competitionIdOf } from './ids-from-engine'
import type { HandicapTable } from './views'

export interface Figures {
  readonly course: CourseHandicap
  /** By competition id; a side with one ball has a handicap of its own, which no single player has. */
  readonly playing: ReadonlyMap<string, number>
}

/** Figures of everybody who plays and has one, by entry id. The engine's own: what is frozen is what is counted. */
export function figuresOf(record: DayRecord): ReadonlyMap<string, Figures> {
  // Without the cards: a ruling on one of them is no part of what the freeze fixed.
  const day = dayOfRecord(record, new Map())
  const index = indexOf(day)
  const seeds = [...index.players.values()].map(
    (line): BallSeed => ({ id: line.player.id, lines: [line], sheet: line.sheet, card: null }),
  )
  const lowestPar = lowestParOf(seeds)
  const terms = day.competitions.flatMap((one) => {
    const inForce = termsInForce(one, day, FORMATS)
    return inForce && inForce.format.strokes.kind !== 'for-the-side' ? [inForce] : []
  })
  return new Map(
    seeds.map((seed) => [
      seed.id,
      {
        course: seed.lines[0]!.course,
        playing: new Map(
          terms.map((one) => [one.competition.id, ownHandicap(handicapInFull(seed, one, lowestPar, record.edition))]),
        ),
      },
    ]),
  )
}

export function handicapTableOf(record: DayRecord): HandicapTable {
  const figures = figuresOf(record)
  const tees = new Map(record.tees.map((tee) => [tee.id, tee.name]))
  const entered = record.entries.filter((entry) => entry.status === 'entered').sort(byName)
  return {
    frozen: record.frozenAt !== null,
    edition: record.edition,
    competitions: record.competitions.map(({ id, name, terms }) => ({
      id,
      name,
      allowance: inWords(terms.allowance),
    })),
    rows: entered.flatMap((entry) => {
      const figure = figures.get(entry.id)
      if (!figure) return []
      return [
        {
          entryId: entry.id,
          name: nameOf(entry),
          note: noteOf(entry),
          tee: tees.get(entry.roundTeeId) ?? '',
          source: SOURCES[entry.handicapSource],
          index: figureOf(entry.indexTenths),
          unrounded: unroundedOf(figure.course.numerator, figure.course.denominator),
          courseHandicap: figure.course.rounded,
          playing: [...figure.playing].map(([competitionId, handicap]) => ({
            competitionId: competitionIdOf(competitionId),
            playingHandicap: handicap,
          })),
        },
      ]
    }),
    missing: entered
      .filter((entry) => entry.indexTenths === null)
      .sort(byName)
      .map((entry) => ({ entryId: entry.id, personId: entry.personId, name: nameOf(entry) })),
  }
}

/** Where a figure comes from; a society's own is never called an index. */
export const SOURCES: Readonly<Record<EntryRecord['handicapSource'], string>> = {
  'home-club': 'handicap index',
  society: 'society handicap',
  claimed: 'as told, not checked',
}

export const nameOf = (entry: EntryRecord) => fullName(entry)

export const noteOf = (entry: EntryRecord) =>
  entry.kind === 'guest' ? (entry.hostName ? `guest of ${entry.hostName}` : 'guest') : null
