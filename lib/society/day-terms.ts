// What the form of a day comes to: its course's tees copied, its terms checked. Plain decisions, shared by calling and
// changing a day.

import type { z } from 'zod'
import { dateInWords } from '@/lib/boards/dates-in-words'
import { formatIn, isPublishedFor } from '@/lib/boards/format-of-competition'
import { teeTerm, teeTermInWords } from '@/lib/boards/side-tee'
import { twiceRound } from '@/lib/boards/twice-round'
import { ballClashes } from '@/lib/facts/balls-on-a-card'
import { isDate } from '@/lib/facts/calendar'
import type { callDay } from '@/lib/facts/commands'
import { contradictions } from '@/lib/facts/format-choices'
import { whyNotYet } from '@/lib/facts/formats-offered'
import type { CompetitionTerms } from '@/lib/facts/terms'
import { termsThatDoNotFit } from '@/lib/facts/terms-that-fit'
import { type Fault, ok, type Result } from '@/lib/result'
import { editionFor } from '@/lib/rules/editions/editions'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { ballValueOf } from '@/lib/rules/formats/format'
import { hasHole, type RoundHoles, rangeInWords } from '@/lib/rules/hole-numbers'
import type { CourseKept } from '@/lib/store/courses'
import type { CompetitionToKeep, DayToKeep, RoundTeeToKeep } from '@/lib/store/day-setup'
import type { SeasonKept } from '@/lib/store/seasons'
import { notUnderstood } from './parse-input'

export type DayForm = z.output<typeof callDay>

export function dayToKeep(form: DayForm, season: SeasonKept, kept: CourseKept): Result<DayToKeep, 'not-understood'> {
  const course = asPlayed(kept, form.holes)
  const round = { holes: form.holes, firstHole: nineOf(form, course) ?? 1 }
  const faults = [
    ...dateFaults(form, season),
    ...courseFaults(form, course),
    ...competitionFaults(form, round),
    ...sideTeeFaults(form, course),
  ]
  if (faults.length > 0) return notUnderstood(faults)
  const edition = editionFor(form.date)
  return ok({
    name: form.name,
    date: form.date,
    edition,
    entriesCloseOn: form.entriesCloseOn,
    places: form.places,
    round: {
      courseId: course.courseId,
      courseName: courseNameOf(form, course),
      holes: form.holes,
      startKind: form.startKind,
      firstTee: form.firstTee,
      intervalMinutes: form.intervalMinutes,
    },
    tees: roundTees(form, course),
    competitions: form.competitions.map((one) => ({ ...one, terms: honest(one, edition) })),
  })
}

/** Eighteen holes on a course of nine are its nine holes twice. */
function asPlayed(course: CourseKept, holes: number): CourseKept {
  if (course.holes !== 9 || holes !== 18) return course
  return { ...course, name: `${course.name}, nine holes twice`, holes: 18, tees: course.tees.map(twiceRound) }
}

export function dateFaults(form: Pick<DayForm, 'date' | 'entriesCloseOn'>, season: SeasonKept): readonly Fault[] {
  const faults: Fault[] = []
  if (!isDate(form.date)) faults.push({ place: 'date', sentence: 'The calendar has no such day.' })
  else if (form.date < season.startsOn || form.date > season.endsOn)
    faults.push({
      place: 'date',
      sentence: `${season.name} runs from ${dateInWords(season.startsOn)} to ${dateInWords(season.endsOn)}: this date lies outside.`,
    })
  if (form.entriesCloseOn !== null) {
    if (!isDate(form.entriesCloseOn))
      faults.push({ place: 'entriesCloseOn', sentence: 'The calendar has no such day.' })
    else if (form.entriesCloseOn > form.date)
      faults.push({ place: 'entriesCloseOn', sentence: 'Entries close on the day itself at the latest.' })
  }
  return faults
}

function courseFaults(form: DayForm, course: CourseKept): readonly Fault[] {
  const faults: Fault[] = []
  for (const [place, gender, teeId] of [
    ['teeMen', 'men', form.teeMen],
    ['teeWomen', 'women', form.teeWomen],
  ] as const) {
    if (teeId === null) continue
    const tee = course.tees.find((one) => one.teeId === teeId)
    if (!tee) faults.push({ place, sentence: `${course.name} has no such tee.` })
    else if (tee.gender !== gender)
      faults.push({ place, sentence: `${tee.name} is rated for ${tee.gender}: choose a tee rated for ${gender}.` })
    else if (hasTeesOf(course, form.holes) && tee.holes.length !== form.holes)
      faults.push({
        place,
        sentence: `${tee.name} is rated over ${tee.holes.length} holes, the day has ${form.holes}.`,
      })
  }
  const [men, women] = [form.teeMen, form.teeWomen].map((id) => course.tees.find((one) => one.teeId === id))
  if (men && women && men.holes.length === 9 && women.holes.length === 9 && firstHole(men) !== firstHole(women))
    faults.push({ place: 'teeWomen', sentence: 'Men and women play the same nine: choose the same for both.' })
  if (form.teeMen === null && form.teeWomen === null)
    faults.push({ place: 'teeMen', sentence: 'Choose at least one tee.' })
  if (!hasTeesOf(course, form.holes))
    faults.push({
      place: 'holes',
      sentence:
        form.holes === 9
          ? `A nine-hole day needs the rating of those nine holes: add the front or the back nine, with its rating, to the card of ${course.name}.`
          : `${course.name} has no tees rated over eighteen holes.`,
    })
  return faults
}

const hasTeesOf = (course: CourseKept, holes: number) => course.tees.some((tee) => tee.holes.length === holes)
const firstHole = (tee: CourseKept['tees'][number]) => tee.holes[0]?.hole ?? 1

/** The nine that is played of a course of eighteen, by the tees chosen; null when the whole course is. */
function nineOf(form: DayForm, course: CourseKept): number | null {
  if (form.holes === course.holes) return null
  const chosen = course.tees.find((tee) => tee.teeId === form.teeMen || tee.teeId === form.teeWomen)
  return chosen ? firstHole(chosen) : null
}

/** A nine of an eighteen says in its name which it is: the start sheet names the course before anybody sees a hole. */
function courseNameOf(form: DayForm, course: CourseKept): string {
  const nine = nineOf(form, course)
  return nine === null ? course.name : `${course.name}, ${rangeInWords({ holes: form.holes, firstHole: nine })}`
}

function competitionFaults(form: DayForm, round: RoundHoles): readonly Fault[] {
  const onCards = form.competitions.map((one) => ({ name: one.name, format: formatIn(one) }))
  const faults: Fault[] = ballClashes(onCards).map(({ at, sentence }) => ({
    place: `competitions[${at}].format`,
    sentence,
  }))
  const names = new Set<string>()
  form.competitions.forEach((one, at) => {
    const place = `competitions[${at}]`
    const format = formatIn(one)
    if (names.has(one.name.toLowerCase()))
      faults.push({ place: `${place}.name`, sentence: `Two competitions are called ${one.name}.` })
    names.add(one.name.toLowerCase())
    if (!format) {
      faults.push({ place: `${place}.format`, sentence: 'Choose a form of play from the list.' })
      return
    }
    if (one.terms.custom) {
      const wrong = ownFormatFaults(one.format, one.terms.custom)
      faults.push(...wrong.map((fault) => ({ ...fault, place: `${place}.${fault.place}` })))
      if (wrong.length > 0) return
    }
    const { allowance, maximum, ties } = one.terms
    const forSide = format.strokes.kind === 'for-the-side'
    if (Array.isArray(allowance) && !forSide)
      faults.push({ place: `${place}.terms.allowance`, sentence: 'Give one percentage of the course handicap.' })
    else if (Array.isArray(allowance) && allowance.length !== format.sideSize)
      faults.push({
        place: `${place}.terms.allowance`,
        sentence: `Give ${format.sideSize} shares, lowest handicap first.`,
      })
    if (ballValueOf(format.value).kind === 'maximum' && !maximum)
      faults.push({ place: `${place}.terms.maximum`, sentence: 'Maximum score needs its maximum.' })
    const notYet = whyNotYet(format)
    if (notYet !== null) faults.push({ place: `${place}.format`, sentence: notYet })
    if (format.namedHolesTimes !== undefined && !one.terms.namedHoles?.length)
      faults.push({ place: `${place}.terms.namedHoles`, sentence: 'Name the holes that count double.' })
    for (const term of ['namedHoles', 'countedHoles'] as const)
      for (const hole of one.terms[term] ?? [])
        if (!hasHole(round, hole))
          faults.push({
            place: `${place}.terms.${term}`,
            sentence: `The day has no hole ${hole}: it is played on ${rangeInWords(round)}.`,
          })
    for (const { term, inside, sentence } of termsThatDoNotFit(one.terms, format))
      faults.push({ place: `${place}.terms.${term}${inside}`, sentence })
    faults.push(...divisionFaults(one, place))
    ties.steps.forEach((step, number) => {
      if ((step.kind === 'last' && step.holes > form.holes) || (step.kind === 'first-nine-last' && form.holes === 9))
        faults.push({
          place: `${place}.terms.ties.steps[${number}]`,
          sentence: 'That step of the countback has more holes than the day.',
        })
      if (step.kind === 'holes' && (step.from > step.to || !hasHole(round, step.from) || !hasHole(round, step.to)))
        faults.push({
          place: `${place}.terms.ties.steps[${number}]`,
          sentence: `A window runs from a hole to a later one, and the day has ${rangeInWords(round)}.`,
        })
    })
  })
  return faults
}

/** The tees of a side's card are tees somebody can be put on. */
function sideTeeFaults(form: DayForm, course: CourseKept): readonly Fault[] {
  const tees = new Set(roundTees(form, course).map(teeTerm))
  return form.competitions.flatMap(({ terms: { sideTee } }, at) =>
    sideTee === undefined || tees.has(sideTee)
      ? []
      : [
          {
            place: `competitions[${at}].terms.sideTee`,
            sentence: `The day has no ${teeTermInWords(sideTee).replace(/^the /, '')}: choose others.`,
          },
        ],
  )
}

/** What may still be wrong when only names and prizes can move: two of one name, a prize of no division. */
export function prizeFaults(competitions: DayForm['competitions']): readonly Fault[] {
  return competitions.flatMap((one, at) => {
    const twin = competitions.findIndex((other) => other.name.toLowerCase() === one.name.toLowerCase())
    const place = `competitions[${at}]`
    return [
      ...(twin < at ? [{ place: `${place}.name`, sentence: `Two competitions are called ${one.name}.` }] : []),
      ...divisionFaults(one, place),
    ]
  })
}

/** Two divisions of one name cannot be told apart, and a prize needs the division it is won in. */
function divisionFaults({ terms, prizes }: DayForm['competitions'][number], place: string): readonly Fault[] {
  const divisions = terms.divisions ?? []
  const faults: Fault[] = []
  divisions.forEach(({ id, name }, at) => {
    const twin = divisions.findIndex((one) => one.id === id || one.name.toLowerCase() === name.toLowerCase())
    if (twin < at)
      faults.push({ place: `${place}.terms.divisions[${at}].name`, sentence: `Two divisions are called ${name}.` })
  })
  prizes.forEach(({ division, name }, at) => {
    if (division && !divisions.some((one) => one.id === division))
      faults.push({
        place: `${place}.prizes[${at}].division`,
        sentence: `${name} is for a division that the terms do not have.`,
      })
  })
  return faults
}

/** Choices that contradict each other, and a name under which everybody would expect something else. */
function ownFormatFaults(name: string, custom: NonNullable<CompetitionTerms['custom']>): readonly Fault[] {
  const wanted = name.toLowerCase()
  const known = FORMATS.find((one) => one.id === wanted || one.name.toLowerCase() === wanted)
  return [
    ...(known
      ? [{ place: 'format', sentence: `${known.name} is on the list already: give your own format another name.` }]
      : []),
    ...contradictions(custom).map((one) => ({ ...one, place: `terms.custom.${one.place}` })),
  ]
}

/** The tees of the course as they stand now; the two chosen ones are what an entry gets unless told otherwise. */
function roundTees(form: DayForm, course: CourseKept): readonly RoundTeeToKeep[] {
  const nine = nineOf(form, course)
  const played = course.tees.filter(
    (tee) => tee.holes.length === form.holes && (nine === null || firstHole(tee) === nine),
  )
  return played.map(({ teeId, ...tee }) => ({
    ...tee,
    isDefault: teeId === (tee.gender === 'men' ? form.teeMen : form.teeWomen),
  }))
}

/** A figure says it is published only if it is; anything else is a house choice, and the sheet says so. */
export function honest(
  { format, terms }: Pick<CompetitionToKeep, 'format' | 'terms'>,
  edition: string,
): CompetitionTerms {
  const form = { format, custom: terms.custom }
  if (terms.allowanceFrom === 'house-choice' || isPublishedFor(form, terms.allowance, edition)) return terms
  return { ...terms, allowanceFrom: 'house-choice' }
}
