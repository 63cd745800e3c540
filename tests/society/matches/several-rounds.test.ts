// Promise: a competition over several days of the book is one sum of them; a change on an earlier day is on the later
// board at once, whoever kept a finished one; the exported day file counts the same.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { parseDayFile } from '@/lib/facts/day-file'
import type { DayId } from '@/lib/facts/ids'
import { scoreDay } from '@/lib/rules/score-day'
import { callAgain } from '@/lib/society/call-again'
import { proposeDay } from '@/lib/society/call-day'
import { changeHandicap } from '@/lib/society/change-handicap'
import { countDays } from '@/lib/society/count-days'
import { enterPlayers } from '@/lib/society/enter-players'
import { keyCard } from '@/lib/society/enter-score'
import { dayFileOf } from '@/lib/society/export-day'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { publishStart } from '@/lib/society/publish-start'
import { countedBoard, dayBoard } from '@/lib/society/read-board'
import { playerCard } from '@/lib/society/read-card'
import { ruleOnCard } from '@/lib/society/rule-on-card'
import { book } from '@/lib/store/client'
import { readDayRecord } from '@/lib/store/day-record'
import { dayVersionOf } from '@/lib/store/day-versions'
import { peopleOfSheets } from '@/lib/store/privacy'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got, over } from '../scoring/day-in-play'
import { aDay } from '../setup/world'

let first: DayInPlay
let second: { dayId: DayId; slug: string }

const record = async (dayId: DayId) => (await readDayRecord({ societyId: first.w.actor.societyId, dayId }))!
const at = async (dayId: DayId) => ({ dayId, version: (await record(dayId)).version })
const later = async () => got(await dayBoard('fernbrake', second.slug))
const singles = async () => (await later()).competitions[0]!

const EVENING = new Date('2031-06-14T18:00:00Z')

async function key(dayId: DayId, familyName: string, scores: readonly number[]): Promise<void> {
  const day = await record(dayId)
  const entry = day.entries.find((one) => one.familyName === familyName)!
  const card = day.cards.find((one) => one.entryId === entry.id)!
  got(await keyCard(first.w.actor, { dayId, cardId: card.id, scores: [...scores] }, EVENING))
}

beforeAll(async () => {
  first = await dayInPlay()
  second = got(
    await callAgain(first.w.actor, {
      ...(await at(first.dayId)),
      name: 'Spring Cup, afternoon',
      date: '2031-06-14',
      firstTee: '14:30',
      courseId: first.w.courseId,
      holes: 18,
    }),
  )
  // Said by the officer at the screen: its date lies far ahead too.
  await book().day.update({ where: { id: second.dayId }, data: { playedAheadAt: new Date() } })
}, 240_000)
afterAll(() => first.close())

describe('a further round', () => {
  it('has the same field, groups and sides, and is added up with the first', async () => {
    const [was, is] = [await record(first.dayId), await record(second.dayId)]
    const people = (day: typeof is) => {
      const of = new Map(day.entries.map((entry) => [entry.id, entry.personId]))
      return {
        groups: day.groups.map((group) => group.entryIds.map((id) => of.get(id))),
        sides: day.competitions.map((one) => one.sides.map((side) => side.entryIds.map((id) => of.get(id)))),
      }
    }
    expect(people(is)).toEqual(people(was))
    expect(is.groups[0]!.startTime).toBe('14:30')
    expect(is.competitions.map((one) => one.countedDayIds)).toEqual([[first.dayId], [first.dayId]])
    expect(is.earlier.map((one) => one.id)).toEqual([first.dayId])
  })

  it('adds up, each round off its own frozen figure, and the day file says the same', async () => {
    got(
      await changeHandicap(first.w.actor, {
        personId: asId(first.w.people[0]!),
        indexTenths: 120,
        source: 'home-club',
        from: new Date().toISOString().slice(0, 10),
        reason: 'Between the rounds',
      }),
    )
    got(await freezeHandicaps(first.w.actor, await at(second.dayId)))
    got(await publishStart(first.w.actor, await at(second.dayId)))
    await key(first.dayId, 'Haldane', over(0))
    await key(second.dayId, 'Haldane', over(0))
    await key(second.dayId, 'Storrey', over(18))
    const alone = boardOf(await record(first.dayId), new Date()).competitions[0]!.rows
    const row = (await singles()).rows.find((one) => one.name === 'Corin Haldane')!
    const [morning, afternoon] = row.rounds!
    expect(morning).toMatchObject({ daySlug: first.daySlug, score: alone.find((one) => one.name === row.name)!.score })
    // A figure of 12.0 instead of 3.1 is worth strokes in the afternoon and none in the morning.
    expect(afternoon!.score!).toBeGreaterThan(morning!.score!)
    expect(row.score).toBe(morning!.score! + afternoon!.score!)
    expect(row.holes).toHaveLength(18)

    const { dayFile } = got(await dayFileOf(first.w.actor, second.dayId))
    const read = parseDayFile(JSON.parse(JSON.stringify(dayFile)))
    if (!read.ok) throw new Error(JSON.stringify(read.faults))
    const board = await later()
    for (const [place, result] of scoreDay(read.value).entries())
      expect(board.competitions[place]!.rows.map((one) => [one.entrant, one.place, one.score])).toEqual(
        result.standings.map((one) => [one.entrant, one.place, one.score]),
      )
  })

  it('shows a player’s card of this day with the total of both', async () => {
    const day = await record(second.dayId)
    const entry = day.entries.find((one) => one.familyName === 'Haldane')!
    const card = got(await playerCard('fernbrake', second.slug, entry.id))
    expect(card.readings[0]!.own).toHaveLength(18)
    expect(card.readings[0]!.row.rounds).toHaveLength(2)
  })
})

describe('somebody who plays the first round and not the second', () => {
  it('stays on the board with the round missing, and among those whose name may have to be replaced', async () => {
    const day = await record(second.dayId)
    const gone = day.entries.find((one) => one.familyName === 'Coldbrook')!
    await key(first.dayId, 'Coldbrook', over(9))
    got(await enterPlayers(first.w.actor, { ...(await at(second.dayId)), enter: [], withdraw: [gone.id] }))
    const row = (await singles()).rows.find((one) => one.name === `${gone.firstName} ${gone.familyName}`)!
    expect(row).toMatchObject({ away: true, note: 'did not play Spring Cup, afternoon', holesPlayed: 18 })
    expect(row.rounds!.map((round) => round.score === null)).toEqual([false, true])
    const named = await peopleOfSheets({ societySlug: 'fernbrake', daySlug: second.slug })
    expect(named.map((one) => one.personId)).toContain(gone.personId)
  })
})

describe('a change on the earlier day', () => {
  it('is on the later board at once, although that day itself has not moved', async () => {
    const before = got(await countedBoard('fernbrake', second.slug))
    const kept = got(await countedBoard('fernbrake', second.slug))
    expect(kept.text).toBe(before.text)
    const totalOf = async (name: string) => (await singles()).rows.find((one) => one.name === name)!.score
    const was = (await totalOf('Magnus Storrey')) ?? 0
    const moved = await record(second.dayId)
    await key(first.dayId, 'Storrey', over(0))
    expect((await record(second.dayId)).scoreVersion).toBe(moved.scoreVersion)
    expect(got(await countedBoard('fernbrake', second.slug)).version).not.toBe(before.version)
    expect(await dayVersionOf(second.dayId)).toBe((await later()).version)
    expect(await totalOf('Magnus Storrey')).toBeGreaterThan(was)
    const card = (await record(first.dayId)).cards.find(
      (one) => one.entryId === moved.earlier[0]!.entries.find((entry) => entry.familyName === 'Storrey')!.id,
    )!
    got(
      await ruleOnCard(first.w.actor, {
        dayId: first.dayId,
        cardId: card.id,
        kind: 'disqualified',
        reason: 'Signed for a wrong score',
      }),
    )
    expect((await singles()).rows.find((one) => one.name === 'Magnus Storrey')!.noPlace).toBe('disqualified')
  })

  it('counts no more once the day is taken out of the sum', async () => {
    const day = await record(second.dayId)
    got(
      await countDays(first.w.actor, {
        ...(await at(second.dayId)),
        competitionId: day.competitions[0]!.id,
        dayIds: [],
      }),
    )
    expect((await singles()).rows[0]!.rounds).toBeUndefined()
    expect((await later()).competitions[1]!.rows[0]!.rounds).toHaveLength(2)
    got(
      await countDays(first.w.actor, {
        ...(await at(second.dayId)),
        competitionId: day.competitions[1]!.id,
        dayIds: [],
      }),
    )
    expect((await later()).competitions[1]!.rows[0]!.rounds).toBeUndefined()
    expect((await record(second.dayId)).earlier).toEqual([])
  })

  it('of other terms are added up as they were published, and the sheet says so', async () => {
    const proposal = got(await proposeDay(first.w.actor, first.w.seasonId))
    const cup = proposal.competitions[0]!
    const terms = { ...cup.terms, allowance: 90, allowanceFrom: 'house-choice', allowanceReason: 'As ever' } as const
    const third = await aDay(first.w, {
      name: 'Third',
      date: '2031-06-20',
      entriesCloseOn: null,
      competitions: [{ ...cup, terms }],
    })
    const [one] = (await record(third.dayId)).competitions
    const asked = async (over: object) =>
      countDays(first.w.actor, {
        ...(await at(third.dayId)),
        competitionId: one!.id,
        dayIds: [first.dayId],
        ...over,
      })
    const said = 'Spring Cup counts as it was published, off 100 % and not 90 %.'
    got(await asked({}))
    const board = boardOf(await record(third.dayId), new Date()).competitions[0]!
    expect(board.moreTerms).toContain(said)
    expect(board.tieRule).toMatch(/^The last round first, /)
    const published = boardOf(await record(first.dayId), new Date()).competitions[0]!.rows
    for (const row of board.rows) {
      const then = published.find((one) => one.name === row.name)
      if (then && row.rounds?.[0]?.score !== null) expect(row.rounds![0]!.score).toBe(then.score)
    }
    // What is added up already is not asked for again.
    got(await asked({}))
  })

  it('is refused for a later day and for the day itself', async () => {
    const day = await record(first.dayId)
    const asked = async (dayIds: DayId[]) =>
      countDays(first.w.actor, { ...(await at(first.dayId)), competitionId: day.competitions[0]!.id, dayIds })
    expect(await asked([first.dayId])).toMatchObject({ ok: false, code: 'not-understood' })
    expect(await asked([asId('nobody')])).toMatchObject({ ok: false, code: 'not-understood' })
  })
})
