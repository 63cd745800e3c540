// Promise: a card accepted by a slip of the hand is opened again without a ruling. What was written stays, the new
// figures are added to it, the record says who did it and when; once a result is out, the reason is asked for.

import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { CardId } from '@/lib/facts/ids'
import { closeDay } from '@/lib/society/close-day'
import { keyCard } from '@/lib/society/enter-score'
import { publishResult } from '@/lib/society/publish-result'
import { dayBoard } from '@/lib/society/read-board'
import { readRecord } from '@/lib/society/read-record'
import { reopenCard } from '@/lib/society/reopen-card'
import { reopenDay } from '@/lib/society/reopen-day'
import { returns } from '@/lib/society/returns'
import { takeCardIn } from '@/lib/society/take-card-in'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got, over, playEverything } from './day-in-play'

let day: DayInPlay

beforeEach(async () => {
  day = await dayInPlay()
})
afterEach(() => day.close())

const desk = () => day.w.actor
const signed = { player: true, marker: true }
const enter = (cardId: CardId, scores: (number | 'x' | null)[]) =>
  keyCard(desk(), { dayId: day.dayId, cardId, scores, signed })
const accept = (cardId: CardId) => takeCardIn(desk(), { dayId: day.dayId, cardId })
const open = (cardId: CardId, reason = '') => reopenCard(desk(), { dayId: day.dayId, cardId, reason })

describe('a card opened again', () => {
  it('is entered anew: facts are added, no ruling is made, and the record has the act', async () => {
    const [first] = day.players(1)
    const cardId = day.cardOf(first!)
    const right = over(20)
    got(await enter(cardId, right.with(17, 9)))
    got(await accept(cardId))
    expect(await enter(cardId, right)).toMatchObject({ code: 'card-closed' })

    got(await open(cardId, 'The 18th was read wrong.'))
    got(await open(cardId, 'The 18th was read wrong.'))
    const record = await day.record()
    expect(record.cards.find((card) => card.id === cardId)).toMatchObject({ state: 'out', takenInAt: null })
    // Signed on paper and whole: it is no card that is still out, and nothing says that a signature is missing.
    const view = got(await returns(desk(), day.dayId))
    expect(view.groups[0]!.cards.find((card) => card.cardId === cardId)!.line).toBe('handed in')
    expect(view.inTheWay.find((card) => card.entryId === first)).toMatchObject({ isOut: false })
    const before = record.facts.length
    got(await enter(cardId, right))
    got(await accept(cardId))

    const after = await day.record()
    expect(after.facts.length).toBe(before + 1)
    expect(after.rulings).toEqual([])
    const board = got(await dayBoard(day.slug, day.daySlug))
    const gross = right.reduce<number>((sum, one) => sum + Number(one), 0)
    expect(board.competitions[0]!.rows.find((row) => row.entrant === first)!.gross).toBe(gross)
    const acts = got(await readRecord(desk(), { act: 'reopen-card' }))
    expect(acts.lines).toHaveLength(1)
    expect(JSON.stringify(acts.lines[0])).toContain('The 18th was read wrong.')
    // The signatures of the first time stand or are given again: only the hole changed.
    const [again, firstTime] = got(await readRecord(desk(), { act: 'enter-score' })).lines.map((line) =>
      JSON.stringify(line),
    )
    expect(firstTime).toContain('Signed')
    expect(again).toContain('18')
    expect(again).not.toContain('Signed')
  })

  it('may also have been handed in only: a paper card saved with both signatures', async () => {
    const [first] = day.players(1)
    const cardId = day.cardOf(first!)
    got(await enter(cardId, over(20)))
    expect(await enter(cardId, over(21))).toMatchObject({ code: 'card-closed' })
    got(await open(cardId))
    got(await enter(cardId, over(21)))
    got(await accept(cardId))
  })

  it('is refused on a closed day, and asks for the reason once a result is out', async () => {
    await playEverything(day, () => over(18))
    for (const card of (await day.record()).cards) got(await accept(card.id))
    const { id } = (await day.record()).cards[0]!
    got(await closeDay(desk(), { dayId: day.dayId, version: await day.version() }))
    expect(await open(id, 'A slip')).toMatchObject({ code: 'day-closed' })
    got(await publishResult(desk(), { dayId: day.dayId, version: await day.version() }))
    got(await reopenDay(desk(), { dayId: day.dayId, version: await day.version(), reason: 'A card was read wrong.' }))
    expect(await open(id)).toMatchObject({ code: 'not-understood' })
    got(await open(id, 'The 7 on the 4th was a 1.'))
    expect(got(await returns(desk(), day.dayId))).toMatchObject({ takenIn: 7, isPublished: true })
  })

  it('of another day or society is not there', async () => {
    expect(await open(asId('no-such-card'))).toMatchObject({ code: 'not-found' })
  })
})
