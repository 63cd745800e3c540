// A day whose handicaps are frozen may still move: its name, date, times, places and prizes. What rests on the handicaps
// (course, tees, forms of play, terms) is taken from the day itself and never worked out anew, so that a date can be
// moved whatever has become of the course, the edition of the rules or the size of the field meanwhile.

import type { DayRecord } from '@/lib/facts/day-record'
import { type Fault, ok, type Result, refused } from '@/lib/result'
import type { CourseKept } from '@/lib/store/courses'
import type { DayToKeep } from '@/lib/store/day-setup'
import type { SeasonKept } from '@/lib/store/seasons'
import { type DayForm, dateFaults, honest, prizeFaults } from './day-terms'
import { notUnderstood } from './parse-input'

/** What is to be written, or the refusal when something that is frozen would move. */
export function frozenDayToKeep(
  day: DayRecord,
  form: DayForm,
  season: SeasonKept,
  course: CourseKept | null,
): Result<DayToKeep, 'frozen' | 'not-understood'> {
  const fixed = frozenFaults(day, form, course)
  if (fixed.length > 0)
    return refused('frozen', 'Handicaps are frozen: course, tees and terms stay as they are.', fixed)
  const competitions = day.competitions.map(({ format, terms }, at) => {
    const { name, prizes } = form.competitions[at]!
    return { name, format, terms, prizes }
  })
  const faults = [...dateFaults(form, season), ...prizeFaults(competitions)]
  if (faults.length > 0) return notUnderstood(faults)
  const { courseId, courseName, holes } = day.round
  const { name, date, entriesCloseOn, places, startKind, firstTee, intervalMinutes } = form
  return ok({
    name,
    date,
    edition: day.edition,
    entriesCloseOn,
    places,
    round: { courseId, courseName, holes, startKind, firstTee, intervalMinutes },
    tees: day.tees.map(({ id: _, holes: played, ...tee }) => ({
      ...tee,
      holes: played.map((hole) => ({ ...hole, yards: hole.yards ?? null })),
    })),
    competitions,
  })
}

function frozenFaults(day: DayRecord, form: DayForm, course: CourseKept | null): readonly Fault[] {
  const faults: Fault[] = []
  if (form.courseId !== day.round.courseId || form.holes !== day.round.holes)
    faults.push({ place: 'courseId', sentence: 'The course stays.' })
  for (const [place, gender] of [
    ['teeMen', 'men'],
    ['teeWomen', 'women'],
  ] as const) {
    const was = day.tees.find((tee) => tee.gender === gender && tee.isDefault)?.name ?? null
    const asked = course?.tees.find((tee) => tee.teeId === form[place])?.name
    // A tee that the course does not have under this name any more cannot be named in a form: it stays.
    if (asked !== undefined && asked !== was)
      faults.push({ place, sentence: `The tee for ${gender} stays${was ? ` ${was}` : ''}.` })
  }
  if (form.competitions.length !== day.competitions.length)
    faults.push({ place: 'competitions', sentence: 'No competition can be added or taken away.' })
  else
    day.competitions.forEach((one, at) => {
      const asked = form.competitions[at]!
      if (asked.format !== one.format)
        faults.push({ place: `competitions[${at}].format`, sentence: `${one.name} keeps its form of play.` })
      else if (canonical(honest(asked, day.edition)) !== canonical(one.terms))
        faults.push({ place: `competitions[${at}].terms`, sentence: `${one.name} keeps its terms.` })
    })
  return faults
}

/** The same content whatever the order in which its keys were written. */
export function canonical(value: unknown): string {
  return JSON.stringify(value, (_, part) =>
    part && typeof part === 'object' && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  )
}
