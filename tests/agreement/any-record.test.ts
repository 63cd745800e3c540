// Promise: whatever a day of the book holds, every place that shows it says the same places, scores and winners.

import { expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { dayOfRecord } from '@/lib/boards/day-of-record'
import { packsOf } from '@/lib/boards/group-pack'
import { resultSheetOf } from '@/lib/boards/result-sheet'
import { parseDayFile, writeDayFile } from '@/lib/facts/day-file'
import type { DayRecord } from '@/lib/facts/day-record'
import { FORMATS, formatOf } from '@/lib/rules/formats/catalogue'
import { scoreDay } from '@/lib/rules/score-day'
import { randomRecord } from '../boards/random-record'
import { withRarerTerms } from './rarer-terms'
import { atDesk, inFile, onCards, onPhone, onSheet } from './surfaces'

/** `npm run prove` asks for more. */
const DAYS = Number(process.env.AGREEMENT_RECORDS ?? 100)
const SHOWN = 5

const AT = new Date('2031-06-14T18:00:00Z')

function differencesOn(record: DayRecord): string[] {
  const board = boardOf(record, AT)
  const read = parseDayFile(JSON.parse(JSON.stringify(writeDayFile(dayOfRecord(record)))))
  if (!read.ok) return [`the day file is refused: ${JSON.stringify(read.faults)}`]
  const packs = packsOf({ ...record, showsPosition: true })
  return [
    ...inFile(board, scoreDay(read.value)),
    ...onSheet(board, resultSheetOf(record, { number: 1, reason: null, by: 'The secretary', at: AT })),
    ...atDesk(board),
    ...onCards(board, record),
    ...record.groups.flatMap((group) => onPhone(board, record, packs(group))),
  ]
}

it(`${DAYS} days of any kind read alike everywhere`, () => {
  const played = new Set<string>()
  const found: string[] = []
  for (let seed = 1; seed <= DAYS && found.length < SHOWN; seed += 1) {
    const record = withRarerTerms(randomRecord(seed, FORMATS[seed % FORMATS.length]), seed)
    for (const one of record.competitions) played.add(one.format)
    for (const what of differencesOn(record)) found.push(`seed ${seed}: ${what}`)
  }
  expect(found).toEqual([])
  expect(FORMATS.map((one) => one.id).filter((id) => !played.has(id))).toEqual([])
}, 3_600_000)

it('tells a score that is one out, wherever it stands', () => {
  const record = { ...randomRecord(1, formatOf('stableford')!), showsPosition: true }
  const singles = {
    ...record,
    competitions: record.competitions.slice(0, 1),
  }
  const plain = {
    ...singles,
    rulings: [],
    earlier: [],
    competitions: singles.competitions.map((one) => ({ ...one, countedDayIds: [] })),
  }
  const board = boardOf(plain, AT)
  const wrong = {
    ...board,
    competitions: board.competitions.map((one) => ({
      ...one,
      rows: one.rows.map((row) => ({
        ...row,
        score: row.score === null ? null : row.score + 1,
        place: (row.place ?? 0) + 1,
      })),
    })),
  }
  const file = parseDayFile(JSON.parse(JSON.stringify(writeDayFile(dayOfRecord(plain)))))
  if (!file.ok) throw new Error(JSON.stringify(file.faults))
  const sheet = resultSheetOf(plain, { number: 1, reason: null, by: 'The secretary', at: AT })
  const packs = packsOf(plain)
  const each = (of: typeof board) => [
    inFile(of, scoreDay(file.value)),
    onSheet(of, sheet),
    onCards(of, plain),
    plain.groups.flatMap((group) => onPhone(of, plain, packs(group))),
  ]
  expect(each(board).flat()).toEqual([])
  for (const found of each(wrong)) expect(found).not.toEqual([])
})
