// Promise: a day can be called off with its reason and put back on as it was; while it is off its links have ended, nothing
// is keyed, ruled, closed or published, and no round of it counts. Only a day on which nothing hangs is deleted.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import type { EntryId, UserId } from '@/lib/facts/ids'
import { callOffDay, putDayOn } from '@/lib/society/call-off-day'
import { closeDay } from '@/lib/society/close-day'
import { deleteDay } from '@/lib/society/delete-day'
import { deskDay, deskHome } from '@/lib/society/desk-day'
import { keyCard } from '@/lib/society/enter-score'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { publishResult } from '@/lib/society/publish-result'
import { publicStartSheet } from '@/lib/society/publish-start'
import { dayBoard, fixtures } from '@/lib/society/read-board'
import { ruleOnCard } from '@/lib/society/rule-on-card'
import { stopPlay } from '@/lib/society/stop-play'
import { takeCardIn } from '@/lib/society/take-card-in'
import { scorerOf } from '@/lib/society/who-is-asking'
import { book } from '@/lib/store/client'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got, LEVEL, Phone } from '../scoring/day-in-play'
import { aDay } from './world'

let day: DayInPlay
beforeAll(async () => {
  day = await dayInPlay()
})
afterAll(() => day.close())

const reason = 'The course is waterlogged'
const at = async () => ({ dayId: day.dayId, version: await day.version() })

describe('a day that is called off', () => {
  let entryId: EntryId
  let link: string
  beforeAll(async () => {
    entryId = day.players(1)[0]!
    link = (await day.record()).groups[0]!.linkKey
    await new Phone(day, 1, entryId).score(entryId, 1, 4).send()
    got(await callOffDay(day.w.actor, { ...(await at()), reason }))
  })

  it('says why on the fixture list, the start sheet and the board', async () => {
    const card = got(await fixtures(day.slug)).days.find((one) => one.daySlug === day.daySlug)
    expect(card).toMatchObject({ calledOff: reason, dayNumber: 1 })
    expect(got(await publicStartSheet(day.slug, day.daySlug))).toMatchObject({ calledOff: reason })
    const board = got(await dayBoard(day.slug, day.daySlug))
    expect(board).toMatchObject({ calledOff: reason, sentence: `Called off: ${reason}.`, cardsIn: 0 })
    expect(board.competitions.flatMap((one) => one.rows).every((row) => row.holesPlayed === 0)).toBe(true)
  })

  it('ends the links of its groups, and the card says why', async () => {
    expect(await scorerOf(link)).toMatchObject({ code: 'link-ended', sentence: `Called off: ${reason}.` })
  })

  it('takes nothing more: no score, card, ruling, result or change', async () => {
    const { actor } = day.w
    const cardId = day.cardOf(entryId)
    await expect(new Phone(day, 1, entryId).score(entryId, 2, 5).send()).rejects.toThrow(`Called off: ${reason}.`)
    const off = { ok: false, code: 'day-called-off' }
    expect(await keyCard(actor, { dayId: day.dayId, cardId, scores: [...LEVEL] })).toMatchObject(off)
    expect(await takeCardIn(actor, { dayId: day.dayId, cardId })).toMatchObject(off)
    const ruling = { dayId: day.dayId, cardId, kind: 'no-return', reason: 'None came' } as const
    expect(await ruleOnCard(actor, ruling)).toMatchObject(off)
    expect(await stopPlay(actor, { dayId: day.dayId, kind: 'stop-at-once', reason })).toMatchObject(off)
    expect(await closeDay(actor, await at())).toMatchObject(off)
    expect(await publishResult(actor, await at())).toMatchObject(off)
    expect(await freezeHandicaps(actor, await at())).toMatchObject(off)
    expect(await callOffDay(actor, { ...(await at()), reason })).toMatchObject(off)
  })

  it('has nothing due at the desk and stays in its place in the season', async () => {
    expect(got(await deskDay(day.w.actor, day.daySlug)).due).toEqual([])
    const [season] = got(await deskHome(day.w.actor)).seasons
    expect(season?.fixtures[0]).toMatchObject({ calledOff: reason, number: 1, next: null })
  })

  it('is refused by the database whatever the code above does', async () => {
    const later = new Date(Date.now() + 60_000)
    const row = await book().scoreFact.findFirstOrThrow()
    const { id: _, ...fact } = row
    await expect(book().scoreFact.create({ data: { ...fact, seq: 900, receivedAt: later } })).rejects.toThrow()
    const sheet = {
      id: 'x',
      societyId: day.w.actor.societyId,
      dayId: day.dayId,
      number: 1,
      sheet: '{}',
      edition: '2024',
    }
    const by = { scoreVersion: 0, byUserId: asId<UserId>('x'), byName: 'x', publishedAt: later }
    await expect(book().publication.create({ data: { ...sheet, ...by } })).rejects.toThrow()
    await expect(book().day.update({ where: { id: day.dayId }, data: { calledOffReason: null } })).rejects.toThrow()
    await expect(
      book().day.update({ where: { id: day.dayId }, data: { status: 'closed', closedAt: later } }),
    ).rejects.toThrow()
  })

  it('is put back on as it was, with its scores', async () => {
    got(await putDayOn(day.w.actor, await at()))
    expect((await scorerOf(link)).ok).toBe(true)
    const board = boardOf(await day.record(), new Date())
    expect(board.competitions[0]?.rows.find((row) => row.entryIds[0] === entryId)?.holesPlayed).toBe(1)
    expect(await putDayOn(day.w.actor, await at())).toMatchObject({ code: 'not-called-off' })
    const acts = await book().actRecord.findMany({ where: { subjectId: day.dayId }, orderBy: { id: 'desc' }, take: 2 })
    expect(acts.map((one) => one.act)).toEqual(['put-day-on', 'call-off-day'])
  })
})

describe('deleting', () => {
  it('is refused while something hangs on the day, says what, and offers calling off', async () => {
    const refusal = await deleteDay(day.w.actor, await at())
    expect(refusal).toMatchObject({ code: 'not-empty' })
    if (refusal.ok) throw new Error('deleted')
    expect(refusal.sentence).toContain('Call it off instead')
    expect(refusal.faults.map((fault) => fault.sentence)).toContain('Eight players entered.')
  })

  it('takes away an empty day, and the numbers of the season close up', async () => {
    const first = await aDay(day.w, { name: 'A slip', date: '2031-03-01' })
    expect((await day.record()).number).toBe(2)
    got(await deleteDay(day.w.actor, { dayId: first.dayId, version: 1 }))
    expect((await day.record()).number).toBe(1)
    expect(await book().round.count({ where: { dayId: first.dayId } })).toBe(0)
    const act = await book().actRecord.findFirstOrThrow({ orderBy: { id: 'desc' } })
    expect(act).toMatchObject({ act: 'delete-day', subject: 'A slip' })
  })
})
