// A day of the book as the form shows it: what it is filled with, and what it is merged with when another desk was quicker.

import type { CourseRow } from '@/lib/boards/desk-views'
import type { CallDay } from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import type { Gender } from '@/lib/rules/day'

/** The day of the book back in the shape in which it was called. */
export function asCalled(record: DayRecord, places: number | null, courses: readonly CourseRow[]): CallDay {
  const course = courses.find((one) => one.courseId === record.round.courseId)
  const tee = (gender: Gender) => {
    const usual = record.tees.find((one) => one.gender === gender && one.isDefault)
    return course?.tees.find((one) => one.gender === gender && one.name === usual?.name)?.teeId ?? null
  }
  return {
    seasonId: record.season.id,
    name: record.name,
    date: record.date,
    courseId: record.round.courseId,
    holes: record.round.holes === 9 ? 9 : 18,
    startKind: record.round.startKind,
    firstTee: record.round.firstTee,
    intervalMinutes: record.round.intervalMinutes,
    entriesCloseOn: record.entriesCloseOn,
    places,
    teeMen: tee('men'),
    teeWomen: tee('women'),
    competitions: record.competitions.map(({ name, format, terms, prizes }) => ({
      name,
      format,
      terms,
      prizes: prizes.map((prize) => ({
        name: prize.name,
        place: prize.place,
        eligible: prize.eligible,
        division: prize.division ?? null,
        valuePence: prize.valuePence,
      })),
    })),
  }
}
