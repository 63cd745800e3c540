// Promise: a round on the second nine counts as the same round on the first does, and every number that is shown is the
// one on the flag. Invented days, ours.
import { describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { cardWorkingOf } from '@/lib/boards/card-working'
import { dayOfRecord } from '@/lib/boards/day-of-record'
import { groupPack } from '@/lib/boards/group-pack'
import { matchSheetOf } from '@/lib/boards/match-sheet'
import { onTheCourse } from '@/lib/boards/on-the-course'
import { playerCardOf } from '@/lib/boards/player-card'
import { printedCards } from '@/lib/boards/printed-cards'
import { resultSheetOf } from '@/lib/boards/result-sheet'
import { returnsOf } from '@/lib/boards/returns'
import { startSheetOf } from '@/lib/boards/start-sheet'
import { parseDayFile, writeDayFile } from '@/lib/facts/day-file'
import type { DayRecord } from '@/lib/facts/day-record'
import { onBackNine } from './back-nine'
import { randomRecord } from './random-record'

const NOW = new Date('2031-06-14T16:00:00Z')
const ZONE = 'Europe/London'
const NUMBERS = new Set(['hole', 'startHole', 'onHole', 'expectedHole', 'firstHole'])
const LISTS = new Set(['notAgreed', 'missing', 'lost', 'namedHoles'])
/** These count by the number of the hole, and so count a second nine as it stands in the eighteen. */
const BY_NUMBER = new Set(['thirds', 'one-two-three-four', 'three-part-match'])

const nines = Array.from({ length: 150 }, (_, seed) => randomRecord(seed + 1))
  .filter(
    (record) =>
      record.round.holes === 9 &&
      record.earlier.every((one) => one.round.holes === 9) &&
      !record.competitions.some((one) => BY_NUMBER.has(one.format)),
  )
  .slice(0, 8)

/** Figures with nine taken off every hole number; sentences are looked at by themselves. */
function plain(value: unknown, less: number): unknown {
  if (Array.isArray(value)) return value.map((one) => plain(one, less))
  if (typeof value === 'string') return value.replace(/\b\d+(st|nd|rd|th)?\b/g, 'n')
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => {
      if (NUMBERS.has(key) && typeof one === 'number') return [key, one - less]
      if (LISTS.has(key) && Array.isArray(one))
        return [key, one.map((each) => (typeof each === 'number' ? each - less : plain(each, less)))]
      return [key, plain(one, less)]
    }),
  )
}

const VIEWS: Readonly<Record<string, (record: DayRecord) => unknown>> = {
  'the board': (record) => boardOf(record, NOW),
  'the cards': (record) => record.entries.slice(0, 3).map((entry) => playerCardOf(record, entry.id)),
  'the result sheet': (record) => resultSheetOf(record, { number: 1, reason: null, by: 'P', at: NOW }),
  'a match of two cards': (record) => matchSheetOf(record, [record.cards[0]!.entryId], [record.cards[1]!.entryId]),
  'the working of the last hole but one': (record) =>
    record.entries
      .slice(0, 3)
      .map((entry) => cardWorkingOf(record, entry.id, { competition: 1, hole: record.round.firstHole + 7 }, ZONE)),
  'the returns': (record) => returnsOf(record, ZONE),
  'where everybody is': (record) => onTheCourse(record, [], NOW, ZONE),
  'the start sheet': (record) => startSheetOf(record, { withCodes: true }),
  'the printed cards': printedCards,
  'the packs of the phones': (record) => record.groups.map((group) => groupPack(record, group)),
}

describe('a round on the second nine', () => {
  it('is met often enough', () => expect(nines.length).toBe(8))

  it.each(Object.keys(VIEWS))('reads in %s as the same round on the first nine, nine numbers on', (name) => {
    const view = VIEWS[name]!
    for (const record of nines) expect(plain(view(onBackNine(record)), 9)).toEqual(plain(view(record), 0))
  })

  it('goes into a day file that is read back to the same day', () => {
    for (const record of nines) {
      const day = dayOfRecord(onBackNine(record))
      const read = parseDayFile(JSON.parse(JSON.stringify(writeDayFile(day))))
      expect(read).toEqual({ ok: true, value: expect.objectContaining({ cards: day.cards, tees: day.tees }) })
    }
  })
})
