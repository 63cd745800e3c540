// What the record of acts says of a thing before and after: the words a secretary knows it by, and the value.

import type { InWords } from '@/lib/facts/act-record'
import type { DayRecord, PaperTotals, PrizeRecord } from '@/lib/facts/day-record'
import { fullName, namesApart } from '@/lib/facts/person-name'
import type { CompetitionTerms } from '@/lib/facts/terms'
import type { HoleScore } from '@/lib/rules/day'
import { inWords as allowanceInWords, formatOf } from '@/lib/rules/formats/catalogue'
import { type RoundHoles, shownHole } from '@/lib/rules/hole-numbers'
import { clockInWords, dateInWords } from './dates-in-words'
import { figureOf, ratingOf, strokesFigure } from './figure'
import { rarerTermsInWords } from './terms-in-words'
import { tieRuleInWords } from './tie-sentences'
import type { HandicapTable } from './views'

interface DayAsKept {
  readonly name: string
  readonly date: string
  readonly entriesCloseOn: string | null
  readonly places: number | null
  readonly round: Pick<DayRecord['round'], 'courseName' | 'holes' | 'startKind' | 'firstTee' | 'intervalMinutes'>
  readonly tees: readonly { readonly name: string; readonly gender: string; readonly isDefault: boolean }[]
  readonly competitions: readonly {
    readonly name: string
    readonly format: string
    readonly terms: CompetitionTerms
    readonly prizes: readonly Omit<PrizeRecord, 'number'>[]
  }[]
}

export function dayWords(day: DayAsKept): InWords {
  const tee = (gender: string) => day.tees.find((one) => one.isDefault && one.gender === gender)?.name ?? 'none'
  return {
    Name: day.name,
    Date: dateInWords(day.date),
    Course: day.round.courseName,
    Holes: day.round.holes,
    Start: day.round.startKind === 'shotgun' ? 'shotgun' : 'tee times',
    'First tee': clockInWords(day.round.firstTee),
    'Minutes between groups': day.round.intervalMinutes,
    'Entries close': day.entriesCloseOn ? dateInWords(day.entriesCloseOn) : 'on the day',
    Places: day.places ?? 'as many as come',
    'Tee for men': tee('men'),
    'Tee for women': tee('women'),
    ...Object.fromEntries(
      day.competitions.flatMap((one, at) => [
        [`Competition ${at + 1}`, `${one.name}, ${formatOf(one.format)?.name ?? one.format}`],
        [
          `Terms of ${one.name}`,
          [
            `allowance ${allowanceInWords(one.terms.allowance)}`,
            tieRuleInWords(one.terms.ties),
            one.terms.guests === 'for-every-prize' ? 'guests play for every prize' : 'guests play for the guest prize',
            ...rarerTermsInWords(one),
          ].join('; '),
        ],
        [`Prizes of ${one.name}`, one.prizes.map(prizeWords)],
      ]),
    ),
  }
}

function prizeWords(prize: Omit<PrizeRecord, 'number'>): string {
  const value = prize.valuePence === null ? '' : `, £${(prize.valuePence / 100).toFixed(2)}`
  return `${prize.place}: ${prize.name}${prize.eligible === 'everybody' ? '' : ` (${prize.eligible})`}${value}`
}

const labelsOf = (day: Pick<DayRecord, 'entries'>) => namesApart(day.entries, (entry) => entry.id)

/** Everybody on the list of entries with what becomes of them. */
export function entryWords(day: Pick<DayRecord, 'entries' | 'tees'>): InWords {
  const tee = (id: string) => day.tees.find((one) => one.id === id)?.name ?? 'no tee'
  const labels = labelsOf(day)
  return named(
    day.entries.map((entry) => [
      labels.get(entry.id) ?? fullName(entry),
      entry.status === 'withdrawn' ? 'withdrawn' : `${entry.status}, ${tee(entry.roundTeeId)}`,
    ]),
  )
}

type GroupAsKept = Pick<DayRecord['groups'][number], 'startTime' | 'startHole' | 'entryIds'>

/** Everybody in the draw with the group and its start. */
export function groupWords(day: Pick<DayRecord, 'entries'>, groups: readonly GroupAsKept[]): InWords {
  const nameOf = labelsOf(day)
  return named(
    groups.flatMap((group, at) =>
      group.entryIds.map((id): [string, string] => [
        nameOf.get(id) ?? id,
        `group ${at + 1}, ${clockInWords(group.startTime)} from hole ${group.startHole}`,
      ]),
    ),
  )
}

export function sideWords(
  day: Pick<DayRecord, 'entries'>,
  sides: readonly (readonly string[])[],
  names: readonly (string | null)[] = [],
): InWords {
  const nameOf = labelsOf(day)
  return Object.fromEntries(
    sides.map((ids, at) => {
      const called = names[at] ? [`called ${names[at]}`] : []
      return [`Side ${at + 1}`, [...ids.map((id) => nameOf.get(id) ?? id), ...called]]
    }),
  )
}

/** What each player plays off from now on. */
export function frozenWords(table: HandicapTable): InWords {
  return named(
    table.rows.map((row) => [row.name, `${row.index}, course handicap ${strokesFigure(row.courseHandicap)}`]),
  )
}

/** Two of one name are told apart by a number, so that neither hides the other. */
function named(rows: readonly (readonly [string, string])[]): InWords {
  const words: Record<string, string> = {}
  for (const [name, value] of rows) {
    let key = name
    for (let at = 2; key in words; at++) key = `${name} (${at})`
    words[key] = value
  }
  return words
}

interface PersonAsKept {
  readonly firstName: string
  readonly familyName: string
  readonly knownAs?: string | null | undefined
  readonly gender: string
  readonly kind: string
  readonly regular: boolean
  readonly email?: string | null
  readonly phone?: string | null
  readonly handicapSource: string
  readonly memberSince: number | null
  readonly membershipNumber?: string | null | undefined
  readonly homeClub?: string | null | undefined
  readonly leftOn: string | null
  readonly labels?: readonly string[] | undefined
  readonly junior?: boolean
  readonly shownAs?: string
}

/** Contact details only as given or not: the record tells that they changed, never what they are. */
export function personWords(person: PersonAsKept): InWords {
  return {
    Name: fullName(person),
    Tees: person.gender,
    Kind: person.kind,
    Regular: person.regular,
    'Handicap kept': SOURCES[person.handicapSource] ?? person.handicapSource,
    'Member since': person.memberSince ?? 'not known',
    ...(person.membershipNumber === undefined ? {} : { 'Membership number': person.membershipNumber ?? 'none' }),
    ...(person.homeClub === undefined ? {} : { 'Home club': person.homeClub ?? 'not known' }),
    Left: person.leftOn ?? 'no',
    ...(person.labels === undefined ? {} : { 'Sorted under': person.labels }),
    ...(person.junior === undefined ? {} : { Junior: person.junior }),
    ...(person.shownAs === undefined ? {} : { 'Shown as': person.shownAs.replace('-', ' ') }),
  }
}

const SOURCES: Readonly<Record<string, string>> = {
  'home-club': 'by the home club',
  society: 'by the society',
  claimed: 'as claimed',
}

export const figureWords = (tenths: number | null, source: string): InWords => ({
  Handicap: figureOf(tenths),
  'Handicap kept': SOURCES[source] ?? source,
})

export function courseWords(course: {
  readonly name: string
  readonly place: string | null
  readonly tees: readonly {
    readonly name: string
    readonly gender: string
    readonly courseRatingTenths: number
    readonly slopeRating: number
    readonly holes: readonly {
      readonly hole: number
      readonly par: number
      readonly strokeIndex: number
      readonly yards: number | null
    }[]
  }[]
}): InWords {
  return {
    Name: course.name,
    Place: course.place ?? 'not said',
    ...Object.fromEntries(
      course.tees.flatMap((tee) => [
        [`${tee.name}, ${tee.gender}`, `rated ${ratingOf(tee.courseRatingTenths)}, slope ${tee.slopeRating}`],
        ...tee.holes.map((hole) => [
          `${tee.name}, ${tee.gender}, hole ${hole.hole}`,
          `par ${hole.par}, index ${hole.strokeIndex}${hole.yards === null ? '' : `, ${hole.yards} yards`}`,
        ]),
      ]),
    ),
  }
}

/** The holes that differ, as keyed: `{ 'Hole 4': 5 }`. */
/** "out 41, in 43, total 84"; "none" where nothing of the kind was entered. */
export function paperWords(paper: PaperTotals | undefined): string {
  const parts = (['out', 'in', 'total'] as const).flatMap((part) =>
    paper?.[part] === null || paper?.[part] === undefined ? [] : [`${part} ${paper[part]}`],
  )
  return parts.length > 0 ? parts.join(', ') : 'none'
}

export function holeWords(scores: readonly HoleScore[], round: Pick<RoundHoles, 'firstHole'>): InWords {
  return Object.fromEntries(
    scores.map((score, at) => [`Hole ${shownHole(round, at)}`, score === 'x' ? 'no score' : (score ?? 'blank')]),
  )
}
