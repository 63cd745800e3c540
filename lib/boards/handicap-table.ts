// From the figure each player came with to the strokes each plays with: the table of the freeze, and what it stores.

import type { CompetitionRecord, DayRecord, EntryRecord } from '@/lib/facts/day-record'
import { formatOf, inWords } from '@/lib/rules/formats/catalogue'
import { comparesStrokes } from '@/lib/rules/formats/format'
import { type CourseHandicap, courseHandicap, parOf } from '@/lib/rules/handicap/course-handicap'
import { parDifference } from '@/lib/rules/handicap/par-difference'
import { playingHandicap } from '@/lib/rules/handicap/playing-handicap'
import { figureOf, unroundedOf } from './figure'
import type { HandicapTable } from './views'

export interface Figures {
  readonly course: CourseHandicap
  /** By competition id; a side with one ball has a handicap of its own, which no single player has. */
  readonly playing: ReadonlyMap<string, number>
}

/** Figures of everybody who plays and has one, by entry id. */
export function figuresOf(record: DayRecord): ReadonlyMap<string, Figures> {
  const tees = new Map(record.tees.map((tee) => [tee.id, tee]))
  const playing = record.entries.filter((entry) => entry.status === 'entered')
  const lowestPar = Math.min(...playing.flatMap((entry) => parOf(tees.get(entry.roundTeeId) ?? { holes: [] })))
  const figures = new Map<string, Figures>()
  for (const entry of playing) {
    const tee = tees.get(entry.roundTeeId)
    if (!tee || entry.indexTenths === null) continue
    const course = courseHandicap(entry.indexTenths, tee, record.edition)
    const par = parDifference(parOf(tee), lowestPar)
    figures.set(entry.id, {
      course,
      playing: new Map(
        record.competitions.flatMap((one) => {
          const figure = playingIn(one, course, par, record.edition)
          return figure === null ? [] : [[one.id, figure] as const]
        }),
      ),
    })
  }
  return figures
}

function playingIn(one: CompetitionRecord, course: CourseHandicap, parGap: number, edition: string): number | null {
  const format = formatOf(one.format)
  if (!format || typeof one.terms.allowance !== 'number') return null
  if (format.strokes.kind === 'none') return 0
  if (format.strokes.kind === 'for-the-side') return null
  return playingHandicap(course, one.terms.allowance, edition) + (comparesStrokes(format) ? parGap : 0)
}

export function handicapTableOf(record: DayRecord): HandicapTable {
  const figures = figuresOf(record)
  const tees = new Map(record.tees.map((tee) => [tee.id, tee.name]))
  const entered = record.entries
    .filter((entry) => entry.status === 'entered')
    .sort(
      (a, b) => a.familyName.localeCompare(b.familyName, 'en-GB') || a.firstName.localeCompare(b.firstName, 'en-GB'),
    )
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
            competitionId,
            playingHandicap: handicap,
          })),
        },
      ]
    }),
    missing: entered
      .filter((entry) => entry.indexTenths === null)
      .map((entry) => ({ entryId: entry.id, name: nameOf(entry) })),
  }
}

/** Where a figure comes from; a society's own is never called an index. */
export const SOURCES: Readonly<Record<EntryRecord['handicapSource'], string>> = {
  'home-club': 'handicap index',
  society: 'society handicap',
  claimed: "on the host's word",
}

export const nameOf = (entry: EntryRecord) => `${entry.firstName} ${entry.familyName}`

export const noteOf = (entry: EntryRecord) =>
  entry.kind === 'guest' ? (entry.hostName ? `guest of ${entry.hostName}` : 'guest') : null
