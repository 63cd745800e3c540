// Promise: a new book shows two finished days, one in play today and six to come, and says the same every time but for
// the calendar.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { addDays, momentIn } from '@/lib/facts/calendar'
import { isBookEmpty } from '@/lib/society/found-society'
import { dayBoard, fixtures } from '@/lib/society/read-board'
import { readDayRecord } from '@/lib/store/day-record'
import { dayInPlayAt } from '@/seed/clock-of-demo'
import { demonstration } from '@/seed/demo'
import { ownBook } from '../setup/copy'
import { got } from '../society/setup/world'

const NOW = new Date()
const ZONE = 'Europe/London'
const TODAY = dayInPlayAt(NOW, ZONE).date
let close: () => Promise<void>
let slugs: readonly string[]

beforeAll(async () => {
  close = (await ownBook()).close
  await demonstration(NOW, ZONE)
  slugs = got(await fixtures('fernbrake')).days.map((day) => day.daySlug)
}, 300_000)
afterAll(() => close())

describe('the demonstration', () => {
  it('has nine days round today', async () => {
    expect(await isBookEmpty()).toBe(false)
    const { days, isDemo } = got(await fixtures('fernbrake'))
    expect(isDemo).toBe(true)
    expect(days.map((day) => day.status)).toEqual(['closed', 'closed', 'in-play', ...Array(6).fill('called')])
    expect(days.map((day) => day.date)).toEqual(
      [-48, -19, 0, 30, 51, 52, 84, 114, 148].map((offset) => addDays(TODAY, offset)),
    )
    expect(days.slice(0, 3).map((day) => day.published)).toEqual([2, 1, null])
  })

  it('decides the Spring Cup on the last six, and ranks nobody above the two who tied', async () => {
    const [cup] = got(await dayBoard('fernbrake', slugs[1]!)).competitions
    expect(cup?.rows.slice(0, 2).map((row) => [row.place, row.name, row.score])).toEqual([
      [1, 'Jago Trevennor', 38],
      [2, 'Freya Holmgarth', 38],
    ])
    expect(cup?.rows[0]?.tieSentence).toBe('Trevennor above Holmgarth, both 38: last nine 18 each, last six 11 to 10.')
    const scores = Object.fromEntries(cup!.rows.map((row) => [row.name, row.score]))
    expect(scores).toMatchObject({ 'Corin Haldane': 32, 'Emrys Coldbrook': 35, 'Una Tarrablane': 34 })
  })

  it('rules on a wrong figure, a blank hole and a card that did not come in', async () => {
    const day = (await readDayRecord({ societySlug: 'fernbrake', daySlug: slugs[0]! }))!
    expect(day.rulings.map((ruling) => ruling.kind)).toEqual([
      'hole-score',
      'card-stands',
      'no-return',
      'playing-handicap',
      'penalty-strokes',
    ])
  })

  it('writes nothing in the future, and lets nobody play before the start', async () => {
    const day = (await readDayRecord({ societySlug: 'fernbrake', daySlug: slugs[2]! }))!
    const moments = [
      ...day.facts.flatMap(({ writtenAt, receivedAt }) => [writtenAt, receivedAt]),
      ...day.signatures.map(({ signedAt }) => signedAt),
      ...day.cards.flatMap(({ takenInAt }) => takenInAt ?? []),
    ]
    expect(moments.length).toBeGreaterThan(200)
    expect(Math.max(...moments.map((moment) => moment.getTime()))).toBeLessThanOrEqual(NOW.getTime())
    for (const group of day.groups) {
      const start = momentIn(day.date, group.startTime, ZONE)
      const cards = day.cards.filter((card) => group.entryIds.includes(card.entryId)).map((card) => card.id)
      const first = day.facts.find((fact) => cards.includes(fact.cardId))
      if (first) expect(first.writtenAt.getTime()).toBeGreaterThan(start.getTime())
    }
  })

  it('shows today half way: some cards in, one hole not agreed, four groups still to go', async () => {
    const board = got(await dayBoard('fernbrake', slugs[2]!))
    expect(board.players).toBe(32)
    const rows = board.competitions[0]!.rows
    expect(rows.filter((row) => row.notAgreed.length > 0).map((row) => row.notAgreed)).toEqual([[11]])
    expect(rows.filter((row) => row.holesPlayed === 18)).toHaveLength(8)
    expect(rows.filter((row) => row.holesPlayed === 11)).toHaveLength(4)
    expect(rows.filter((row) => row.holesPlayed === 0)).toHaveLength(16)
    const day = (await readDayRecord({ societySlug: 'fernbrake', daySlug: slugs[2]! }))!
    expect(day.cards.filter((card) => card.state === 'taken-in')).toHaveLength(4)
    expect(
      day.entries
        .filter((entry) => entry.status === 'withdrawn')
        .map((entry) => entry.familyName)
        .sort(),
    ).toEqual(['Hathersall', 'Highmoor'])
  })
})
