// Promise: a day that lies ahead is not keyed, closed or published until an officer has said that it is played early; and
// a day with cards still out is closed only by naming how many count as not returned.

import { afterAll, beforeAll, expect, it } from 'vitest'
import { cardsAsTheyStand } from '@/lib/boards/day-of-record'
import { returnsOf } from '@/lib/boards/returns'
import type { EntryId } from '@/lib/facts/ids'
import { closeDay } from '@/lib/society/close-day'
import { deskDay } from '@/lib/society/desk-day'
import { keyCard } from '@/lib/society/enter-score'
import { playDayAhead } from '@/lib/society/play-day-ahead'
import { publishResult } from '@/lib/society/publish-result'
import { reopenDay } from '@/lib/society/reopen-day'
import { takeCardIn } from '@/lib/society/take-card-in'
import { book } from '@/lib/store/client'
import { type DayInPlay, dayInPlay, got, LEVEL, over, playEverything } from './day-in-play'

let day: DayInPlay
beforeAll(async () => {
  day = await dayInPlay()
  await book().day.update({ where: { id: day.dayId }, data: { playedAheadAt: null } })
})
afterAll(() => day.close())

const at = async () => ({ dayId: day.dayId, version: await day.version() })
const key = (entryId: EntryId, scores: readonly number[] = LEVEL) =>
  keyCard(day.w.actor, { dayId: day.dayId, cardId: day.cardOf(entryId), scores: [...scores] })

it('refuses cards and a result before the date', async () => {
  const ahead = { ok: false, code: 'day-ahead' }
  expect(got(await deskDay(day.w.actor, day.daySlug)).isAhead).toBe(true)
  expect(await key(day.players(1)[0]!)).toMatchObject(ahead)
  expect(await closeDay(day.w.actor, { ...(await at()), notReturned: 8 })).toMatchObject({ ok: false })
  expect((await day.record()).facts).toEqual([])
})

it('takes them on the day itself', async () => {
  const onTheDay = new Date('2031-06-14T12:00:00Z')
  const keyed = { dayId: day.dayId, cardId: day.cardOf(day.players(1)[0]!), scores: [...LEVEL] }
  expect((await keyCard(day.w.actor, keyed, onTheDay)).ok).toBe(true)
  expect(await closeDay(day.w.actor, await at())).toMatchObject({ code: 'day-ahead' })
  expect(await publishResult(day.w.actor, await at())).toMatchObject({ ok: false })
})

it('takes them early once an officer has said so, on the record, and only once', async () => {
  got(await playDayAhead(day.w.actor, await at()))
  expect(await playDayAhead(day.w.actor, await at())).toMatchObject({ code: 'not-ahead' })
  expect((await key(day.players(1)[0]!, over(3))).ok).toBe(true)
  const act = await book().actRecord.findFirstOrThrow({ where: { act: 'play-day-ahead' } })
  expect(act.after).toContain('allowed')
})

it('says who is still out, and closes over them only when their number is named', async () => {
  const refusal = await closeDay(day.w.actor, await at())
  expect(refusal).toMatchObject({ code: 'cards-still-out', sentence: '8 cards are still out.' })
  if (!refusal.ok) expect(refusal.faults).toHaveLength(8)
  expect(await closeDay(day.w.actor, { ...(await at()), notReturned: 7 })).toMatchObject({ code: 'cards-still-out' })
  got(await closeDay(day.w.actor, { ...(await at()), notReturned: 8 }))
  const record = await day.record()
  expect(record.status).toBe('closed')
  expect(record.rulings).toHaveLength(8)
  expect(record.rulings.every((one) => one.kind === 'no-return')).toBe(true)
  const act = await book().actRecord.findFirstOrThrow({ where: { act: 'close-day' } })
  expect(JSON.parse(act.after!)['Not returned']).toHaveLength(8)
})

it('takes the ruling of the close back with the card that is accepted after opening the day again', async () => {
  got(await reopenDay(day.w.actor, { ...(await at()), reason: 'A card was found in the car.' }))
  const [found] = day.players(1)
  const card = { dayId: day.dayId, cardId: day.cardOf(found!) }
  const outcome = async () => cardsAsTheyStand(await day.record()).get(found!)?.outcome ?? null
  expect(await takeCardIn(day.w.actor, card)).toMatchObject({ code: 'card-not-ready' })
  expect(await outcome()).toBe('no-return')
  got(await keyCard(day.w.actor, { ...card, scores: [...LEVEL], signed: { player: true, marker: true } }))
  got(await takeCardIn(day.w.actor, card))
  expect(await outcome()).toBeNull()
  const view = returnsOf(await day.record(), 'Europe/London')
  expect(view).toMatchObject({ takenIn: 1, inTheWay: [] })
  expect(view.notReturned).toHaveLength(7)
  expect(view.groups[0]!.cards[0]).toMatchObject({ line: 'accepted', outcome: null })
})

it('never closes over a card that is handed in', async () => {
  const other = await dayInPlay()
  await playEverything(other, () => LEVEL)
  const refusal = await closeDay(other.w.actor, { dayId: other.dayId, version: await other.version(), notReturned: 8 })
  expect(refusal).toMatchObject({ code: 'cards-still-out' })
  if (!refusal.ok) expect(refusal.sentence).toContain('handed in and not accepted')
  await other.close()
})
