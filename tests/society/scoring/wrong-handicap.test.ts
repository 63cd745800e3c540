// Promise: a ruling on a wrong handicap sets the index or the course handicap, and every competition is counted again by
// its own allowance; board, working and day file say the same. A score returned too low costs nothing where the hole comes
// out the same, and that is computed. Rules of Golf 2023, 3.3b(3), 3.3b(4), 21.1b(2); allowances as the terms have them.
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { dayOfRecord } from '@/lib/boards/day-of-record'
import { parseDayFile } from '@/lib/facts/day-file'
import { courseHandicap } from '@/lib/rules/handicap/course-handicap'
import { playingHandicap } from '@/lib/rules/handicap/playing-handicap'
import { scoreDay } from '@/lib/rules/score-day'
import { dayFileOf } from '@/lib/society/export-day'
import { cardWorking } from '@/lib/society/read-card'
import { ruleByChoice } from '@/lib/society/rule-by-choice'
import { ruleOnCard } from '@/lib/society/rule-on-card'
import { book } from '@/lib/store/client'
import { type DayInPlay, dayInPlay, got, over, playEverything } from './day-in-play'

let day: DayInPlay

beforeEach(async () => {
  day = await dayInPlay()
  await playEverything(day, () => over(18))
})
afterEach(() => day.close())

const desk = () => day.w.actor
const card = () => ({ dayId: day.dayId, cardId: day.cardOf(day.players(1)[0]!) })
const wrong = (over: object) =>
  ruleByChoice(desk(), {
    ...card(),
    fault: 'handicap-wrong',
    choice: 'right-handicap',
    reason: 'Index of May.',
    ...over,
  })

/** What the player plays off in each competition, by the percentage of its allowance. */
async function playsOff() {
  const record = await day.record()
  const [first] = day.players(1)
  const counted = dayOfRecord(record)
  return record.competitions.map((one) => {
    const handicaps = scoreDay(counted).find((result) => result.competition === one.id)!.standings
    const row = handicaps.find(({ players, entrant }) => entrant === first || players.includes(first!))!
    return { percent: Number(one.terms.allowance), row, id: one.id }
  })
}

describe('a ruling on a wrong handicap', () => {
  it('by the right index recounts each competition by its own allowance', async () => {
    got(await wrong({ measure: 'index', value: 126 }))
    const record = await day.record()
    const [first] = day.players(1)
    const entry = record.entries.find((one) => one.id === first)!
    const tee = record.tees.find((one) => one.id === entry.roundTeeId)!
    const course = courseHandicap(126, tee, record.edition)
    const player = dayOfRecord(record).players.find((one) => one.id === first)!
    expect(player).toMatchObject({ indexTenths: 126, indexBefore: entry.indexTenths })
    expect(player.playingHandicap).toBeUndefined()
    const offs = new Set<number>()
    for (const { percent, row } of await playsOff()) {
      const own = row.players.length > 1 ? null : row.playingHandicap
      const due = playingHandicap(course, percent, record.edition)
      offs.add(due)
      if (own !== null) expect(own).toBe(due)
    }
    expect(offs.size).toBeGreaterThan(1)
    const { dayFile } = got(await dayFileOf(desk(), day.dayId))
    expect(JSON.stringify(dayFile)).toContain('"handicapIndexBefore"')
    expect(got(parseDayFile(JSON.parse(JSON.stringify(dayFile))))).toEqual(dayOfRecord(record))
  })

  it('by the right course handicap does the same, and the later ruling takes the place of the earlier', async () => {
    got(await wrong({ measure: 'index', value: 126 }))
    got(await wrong({ measure: 'course', value: 20, reason: 'Course handicap of the day.' }))
    const record = await day.record()
    expect(record.rulings.map(({ kind, value, replaces }) => [kind, value, replaces])).toEqual([
      ['handicap-index', 126, null],
      ['course-handicap', 20, 1],
    ])
    const player = dayOfRecord(record).players.find((one) => one.id === day.players(1)[0])!
    expect(player).toMatchObject({ courseHandicap: 20 })
    expect(player.indexBefore).toBeUndefined()
    for (const { percent, row } of await playsOff())
      if (row.players.length === 1) expect(row.playingHandicap).toBe(Math.floor((20 * percent) / 100 + 0.5))
    const { dayFile } = got(await dayFileOf(desk(), day.dayId))
    expect(got(parseDayFile(JSON.parse(JSON.stringify(dayFile))))).toEqual(dayOfRecord(record))
  })

  it('as days were ruled before is still read: one playing handicap for all', async () => {
    got(await ruleOnCard(desk(), { ...card(), kind: 'playing-handicap', value: 3, reason: 'As it was.' }))
    const record = await day.record()
    expect(record.rulings[0]).toMatchObject({ kind: 'playing-handicap', value: 3 })
    expect((await playsOff())[0]!.row.playingHandicap).toBe(3)
    await expect(
      book()
        .$executeRaw`INSERT INTO "Ruling" ("id","societyId","dayId","cardId","number","kind","value","clause","reason","byUserId","byName","ruledAt","sets")
        SELECT 'x',"societyId","dayId","cardId",9,'no-return',1,'','r',"byUserId","byName","ruledAt",'index' FROM "Ruling" LIMIT 1`,
    ).rejects.toThrow()
  })

  it('says in the working which index counts and which was confirmed', async () => {
    got(await wrong({ measure: 'index', value: 126 }))
    const working = got(await cardWorking(day.slug, day.daySlug, day.players(1)[0]!, { hole: 3 }))
    expect(JSON.stringify(working)).toContain('The committee ruled that this is the right figure')
  })

  it('refuses a handicap nobody can have', async () => {
    expect(await wrong({ measure: 'course', value: 540 })).toMatchObject({ code: 'not-understood' })
    expect(await wrong({ measure: 'index', value: null })).toMatchObject({ code: 'not-understood' })
  })
})

describe('a score lower than it was', () => {
  const lower = (hole: number, value: number) =>
    ruleByChoice(desk(), { ...card(), fault: 'score-lower', choice: 'no-effect', hole, value, reason: 'Said so.' })

  it('costs nothing where no competition counts the hole otherwise, and the figures are kept with it', async () => {
    const [first] = day.players(1)
    // Nobody scores points with these: the hole is worth nothing with 15 and with 16.
    got(await ruleOnCard(desk(), { ...card(), kind: 'hole-score', hole: 4, value: 15, reason: 'As on the card.' }))
    got(await lower(4, 16))
    const record = await day.record()
    expect(record.rulings.at(-1)).toMatchObject({ kind: 'hole-score', hole: 4, value: 15 })
    expect(record.rulings.at(-1)!.reason).toContain('Hole 4, 15 on the card and 16 made: 0 points either way')
    expect(record.cards.find((one) => one.entryId === first)).toBeDefined()
  })

  it('is refused the exception where the hole changes, with what it is worth either way', async () => {
    const refused = await lower(3, 30)
    if (refused.ok) throw new Error('ruled')
    expect(refused.faults[0]!.sentence).toMatch(/Hole 3, \d+ on the card and 30 made: .* or 0 points/)
    expect((await day.record()).rulings).toEqual([])
    expect(await lower(3, 1)).toMatchObject({ code: 'not-understood' })
  })
})
