// Promise: times and dates read alike on every screen, paper and file: "10.00 am" for a tee time and for a moment, with
// the year on every date, by the society's own clock; and nothing but lib/boards/dates-in-words writes them.
import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import {
  clockInWords,
  dateInWords,
  dayInWords,
  momentInWords,
  shortDateInWords,
  timeInWords,
} from '@/lib/boards/dates-in-words'

describe('times and dates', () => {
  it('writes a tee time and a moment alike', () => {
    expect(['00:05', '09:30', '10:00', '12:00', '14:52'].map(clockInWords)).toEqual([
      '12.05 am',
      '9.30 am',
      '10.00 am',
      '12.00 pm',
      '2.52 pm',
    ])
    expect(timeInWords('2026-04-25T13:52:00Z', 'Europe/London')).toBe('2.52 pm')
    expect(timeInWords(new Date('2026-12-25T00:05:00Z'), 'Europe/London')).toBe('12.05 am')
    expect(timeInWords('2026-04-25T13:52:00Z', 'Pacific/Auckland')).toBe('1.52 am')
  })

  it('writes every date with its year, long and short', () => {
    expect(dateInWords('2026-06-13')).toBe('Saturday 13 June 2026')
    expect(shortDateInWords('2026-06-13')).toBe('13 Jun 2026')
    expect(shortDateInWords('2026-09-05')).toBe('5 Sep 2026')
    expect(dateInWords('2024-02-29')).toBe('Thursday 29 February 2024')
  })

  it('takes the day of a moment from the clock on the wall', () => {
    expect(dayInWords('2026-04-25T23:30:00Z', 'Europe/London')).toBe('Sunday 26 April 2026')
    expect(dayInWords('2026-04-25T23:30:00Z', 'America/New_York')).toBe('Saturday 25 April 2026')
    expect(momentInWords('2026-04-25T23:30:00Z', 'Europe/London')).toBe('26 Apr 2026, 12.30 am')
  })

  it('agrees with the platform about every day of four years', () => {
    const platform = new Intl.DateTimeFormat('en-GB', {
      timeZone: 'UTC',
      weekday: 'long',
      day: 'numeric',
      month: 'long',
      year: 'numeric',
    })
    for (let at = Date.UTC(2024, 0, 1); at < Date.UTC(2028, 0, 1); at += 86_400_000) {
      const date = new Date(at)
      expect(dateInWords(date.toISOString().slice(0, 10))).toBe(platform.format(date).replace(',', ''))
    }
  })
})

/** Ways to write a time or a date that have been tried before; the calendar's own are for machines, in figures. */
const WRITERS: readonly (readonly [RegExp, string])[] = [
  [/\.toLocale(Date|Time)?String\(/, 'the platform formats it'],
  [/Intl\.DateTimeFormat\([^)]/, 'the platform formats it'],
  [/\.get(UTC)?(Hours|Minutes)\(/, 'hours and minutes by hand'],
  [/\.replace\(['"/]:['"/]\w*, ?['"]\.['"]\)/, 'a colon made a point'],
  [/\b(Jan|Monday|January)['",]/, 'names of days or months'],
]
const MAY = ['lib/boards/dates-in-words.ts', 'lib/facts/calendar.ts']

const sources = (folder: string): string[] =>
  readdirSync(folder).flatMap((name) => {
    const path = join(folder, name)
    if (name === 'generated') return []
    return statSync(path).isDirectory() ? sources(path) : /\.tsx?$/.test(name) ? [path] : []
  })

it('nothing else in the program writes a time or a date', () => {
  const found = [...sources('app'), ...sources('lib')]
    .filter((path) => !MAY.includes(path))
    .flatMap((path) => {
      const text = readFileSync(path, 'utf8')
      return WRITERS.filter(([way]) => way.test(text)).map(([, what]) => `${path}: ${what}`)
    })
  expect(found).toEqual([])
})
