// The handicap of a side that plays one ball: whose handicaps, how they are combined, and what comes of it. The engine's own
// steps, on the day as it stands: before the freeze with the figures of now, after it with the frozen ones.

import type { DayRecord } from '@/lib/facts/day-record'
import type { CompetitionId, EntryId } from '@/lib/facts/ids'
import { asHandicap } from '@/lib/rules/exact/fraction'
import { FORMATS, inWords } from '@/lib/rules/formats/catalogue'
import { lowestParOf, seedsOf } from '@/lib/rules/score/balls'
import { indexOf } from '@/lib/rules/score/day-index'
import { allowanceOfSide, courseHandicapsOf, handicapInFull, ownHandicap } from '@/lib/rules/score/handicap-of-ball'
import { termsInForce } from '@/lib/rules/score/terms-in-force'
import { dayOfRecord } from './day-of-record'
import { namesOf } from './entrant-names'
import { strokesFigure } from './figure'
import { playerIds } from './ids-from-engine'
import { listed } from './in-words'

export interface SideHandicap {
  readonly sideId: string
  readonly name: string
  readonly entryIds: readonly EntryId[]
  readonly playingHandicap: number
  /** "Haldane 4 and Trevennor 23, 50 % of both added up: 13.5, and one for par." */
  readonly sentence: string
}

export interface SideHandicaps {
  readonly competitionId: CompetitionId
  readonly name: string
  readonly allowance: string
  readonly sides: readonly SideHandicap[]
}

/** Competitions in which a side plays one ball off one handicap, with the sides that have a figure of every player. */
export function sideHandicapsOf(record: DayRecord): readonly SideHandicaps[] {
  const day = dayOfRecord(record, new Map())
  const index = indexOf(day)
  const names = namesOf(record)
  return record.competitions.flatMap((one) => {
    const competition = day.competitions.find(({ id }) => id === one.id)
    const terms = competition && termsInForce(competition, day, FORMATS)
    if (terms?.format.strokes.kind !== 'for-the-side') return []
    const seeds = day.sides
      .filter((side) => side.competitions?.includes(one.id))
      .flatMap((side) => seedsOf(side.id, side.players, true, index, terms.competition.sideTee))
    const lowestPar = lowestParOf(seeds)
    const by = one.terms.dividedBy
    const allowance = by === undefined ? inWords(terms.allowance) : `added up and divided by ${by}`
    const sides = seeds.map((seed): SideHandicap => {
      const handicap = handicapInFull(seed, terms, lowestPar, record.edition)
      const courses = courseHandicapsOf(seed, terms)
      const each = seed.lines.map(
        ({ player }, at) => `${names.short(player.id)} ${strokesFigure(courses[at]!.rounded)}`,
      )
      const filled = courses
        .slice(seed.lines.length)
        .map(({ rounded }) => `${strokesFigure(rounded)} for a missing player`)
      const shares = by === undefined ? inWords(allowanceOfSide(courses.length, terms, record.edition)) : allowance
      const par = handicap.parDifference === 0 ? '' : `, and ${handicap.parDifference} for the par of the tees`
      return {
        sideId: seed.id,
        name: names.entrant(seed.id),
        entryIds: playerIds(seed.lines.map(({ player }) => player.id)),
        playingHandicap: ownHandicap(handicap),
        sentence: `${listed([...each, ...filled])}; ${shares}: ${asHandicap(handicap.full, 2)}${par}.`,
      }
    })
    return [{ competitionId: one.id, name: one.name, allowance, sides }]
  })
}

/** What somebody plays off in a side, by competition and entry. */
export function sideFigures(record: DayRecord): ReadonlyMap<CompetitionId, ReadonlyMap<EntryId, number>> {
  return new Map(
    sideHandicapsOf(record).map(({ competitionId, sides }) => [
      competitionId,
      new Map(sides.flatMap(({ entryIds, playingHandicap }) => entryIds.map((id) => [id, playingHandicap] as const))),
    ]),
  )
}
