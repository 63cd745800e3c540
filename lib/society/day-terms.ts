// What the form of a day comes to: its course's tees copied, its terms checked. Plain decisions, shared by calling and
// changing a day.

import type { z } from 'zod'
import { formatIn } from '@/lib/boards/format-of-competition'
import { isDate } from '@/lib/facts/calendar'
import type { callDay } from '@/lib/facts/commands'
import type { CompetitionTerms } from '@/lib/facts/terms'
import { type Fault, ok, type Result } from '@/lib/result'
import { editionFor } from '@/lib/rules/editions/editions'
import { proposedAllowance } from '@/lib/rules/formats/catalogue'
import type { CourseKept } from '@/lib/store/courses'
import type { CompetitionToKeep, DayToKeep, RoundTeeToKeep } from '@/lib/store/day-setup'
import type { SeasonKept } from '@/lib/store/seasons'
import { notUnderstood } from './parse-input'

export type DayForm = z.output<typeof callDay>

export function dayToKeep(form: DayForm, season: SeasonKept, course: CourseKept): Result<DayToKeep, 'not-understood'> {
  const faults = [...dateFaults(form, season), ...courseFaults(form, course), ...competitionFaults(form)]
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
      courseName: course.name,
      holes: form.holes,
      startKind: form.startKind,
      firstTee: form.firstTee,
      intervalMinutes: form.intervalMinutes,
    },
    tees: roundTees(form, course),
    competitions: form.competitions.map((one) => ({ ...one, terms: honest(one, edition) })),
  })
}

function dateFaults(form: DayForm, season: SeasonKept): readonly Fault[] {
  const faults: Fault[] = []
  if (!isDate(form.date)) faults.push({ place: 'date', sentence: 'The calendar has no such day.' })
  else if (form.date < season.startsOn || form.date > season.endsOn)
    faults.push({
      place: 'date',
      sentence: `${season.name} runs from ${season.startsOn} to ${season.endsOn}: this date lies outside.`,
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
  }
  if (form.teeMen === null && form.teeWomen === null)
    faults.push({ place: 'teeMen', sentence: 'Choose at least one tee.' })
  if (form.holes !== course.holes)
    faults.push({
      place: 'holes',
      sentence:
        form.holes === 9
          ? `A nine-hole day needs the rating of those nine holes: add them as a course of their own.`
          : `${course.name} has nine holes in the book: call a nine-hole day.`,
    })
  return faults
}

function competitionFaults(form: DayForm): readonly Fault[] {
  const faults: Fault[] = []
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
    const { allowance, maximum, ties } = one.terms
    const forSide = format.strokes.kind === 'for-the-side'
    if (Array.isArray(allowance) && !forSide)
      faults.push({ place: `${place}.terms.allowance`, sentence: 'Give one percentage of the course handicap.' })
    else if (Array.isArray(allowance) && allowance.length !== format.sideSize)
      faults.push({
        place: `${place}.terms.allowance`,
        sentence: `Give ${format.sideSize} shares, lowest handicap first.`,
      })
    if (format.value.kind === 'maximum' && !maximum)
      faults.push({ place: `${place}.terms.maximum`, sentence: 'Maximum score needs its maximum.' })
    if (format.isMatch && format.sideSize > 1)
      faults.push({
        place: `${place}.format`,
        sentence: 'A match between sides is read between any two cards of the day. Choose singles here.',
      })
    if (format.value.kind === 'shared')
      faults.push({
        place: `${place}.format`,
        sentence: 'A game shared inside the group cannot be read from the day yet. Choose points or stroke play.',
      })
    ties.steps.forEach((step, number) => {
      if ((step.kind === 'last' && step.holes > form.holes) || (step.kind === 'first-nine-last' && form.holes === 9))
        faults.push({
          place: `${place}.terms.ties.steps[${number}]`,
          sentence: 'That step of the countback has more holes than the day.',
        })
    })
  })
  return faults
}

/** The tees of the course as they stand now; the two chosen ones are what an entry gets unless told otherwise. */
function roundTees(form: DayForm, course: CourseKept): readonly RoundTeeToKeep[] {
  return course.tees.map(({ teeId, ...tee }) => ({
    ...tee,
    isDefault: teeId === (tee.gender === 'men' ? form.teeMen : form.teeWomen),
  }))
}

/** A figure says it is published only if it is; anything else is a house choice, and the sheet says so. */
function honest(one: CompetitionToKeep, edition: string): CompetitionTerms {
  if (one.terms.allowanceFrom === 'house-choice' || isPublished(one.format, one.terms.allowance, edition))
    return one.terms
  return { ...one.terms, allowanceFrom: 'house-choice' }
}

export function isPublished(format: string, allowance: CompetitionTerms['allowance'], edition: string): boolean {
  // The table's own figure, and the one it has for a small field: either may be chosen, the size being an estimate.
  return [0, 1].some((fieldSize) => {
    const proposed = proposedAllowance(format, fieldSize, edition)
    return proposed.from === 'published' && JSON.stringify(proposed.allowance) === JSON.stringify(allowance)
  })
}
