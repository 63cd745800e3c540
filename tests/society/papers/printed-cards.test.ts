// Promise: a card for each player in a group, with that player's own strokes, tee, marker and the way to the phone card.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type PrintedCards, printedCards } from '@/lib/boards/printed-cards'
import type { DayRecord } from '@/lib/facts/day-record'
import { enterPlayers } from '@/lib/society/enter-players'
import { freezeHandicaps, handicapTable } from '@/lib/society/freeze-handicaps'
import { makeDraw } from '@/lib/society/make-draw'
import { publishStart } from '@/lib/society/publish-start'
import { groupLinkOfCode } from '@/lib/society/who-is-asking'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../../setup/copy'
import { aDay, got, type World, world } from '../setup/world'

let close: () => Promise<void>
let w: World
let record: DayRecord
let printed: PrintedCards

beforeAll(async () => {
  close = (await ownBook()).close
  w = await world('printers')
  const { dayId } = await aDay(w)
  const read = async () => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
  const version = async () => (await read()).version
  got(
    await enterPlayers(w.actor, {
      dayId,
      version: await version(),
      enter: w.people.slice(0, 7).map((personId) => ({ personId })),
    }),
  )
  got(await freezeHandicaps(w.actor, { dayId, version: await version() }))
  got(await makeDraw(w.actor, { dayId, version: await version(), way: 'random', groupSize: 4, seed: 11 }))
  got(await publishStart(w.actor, { dayId, version: await version() }))
  record = await read()
  printed = printedCards(record)
})
afterAll(() => close())

describe('cards for the printer', () => {
  it('are one for each player in a group, in starting order', () => {
    expect(printed.cards.map((card) => card.entryId)).toEqual(record.groups.flatMap((group) => group.entryIds))
    expect(printed.cards).toHaveLength(7)
    expect(printed.without).toEqual([])
  })

  it('carry the playing handicap of the first competition, and all of its strokes', async () => {
    const table = got(await handicapTable(w.actor, record.id))
    for (const card of printed.cards) {
      const row = table.rows.find((one) => one.entryId === card.entryId)
      expect(card.playingHandicap).toBe(row?.playing[0]?.playingHandicap)
      expect(card.holes.reduce((sum, hole) => sum + hole.strokes, 0)).toBe(card.playingHandicap)
      expect(card.holes).toHaveLength(18)
    }
  })

  it('stand on the player’s own tee', () => {
    const una = printed.cards.find((card) => card.name === 'Una Tarrablane')
    expect(una?.tee).toBe('Red')
    expect(una?.holes[12]?.par).toBe(5)
    expect(printed.cards.find((card) => card.name === 'Jago Trevennor')?.holes[12]?.par).toBe(4)
  })

  it('are marked by somebody of the same group, never by the player', () => {
    for (const card of printed.cards) {
      const group = printed.cards.filter((other) => other.group === card.group).map((other) => other.name)
      expect(card.marker).not.toBe(card.name)
      expect(group).toContain(card.marker)
    }
  })

  it('lead to the card of their group', async () => {
    for (const card of printed.cards) {
      const key = record.groups.find((group) => group.number === card.group)?.linkKey
      expect(card.link).toBe(`/card/${key}`)
      expect(card.code).not.toBeNull()
    }
    const found = await groupLinkOfCode(printed.cards[0]!.code!, '127.0.0.1', new Date('2031-06-14T09:00:00Z'))
    expect(found).toMatchObject({ ok: true })
  })

  it('leave out who has no figure, by name', () => {
    const nameless = {
      ...record,
      entries: record.entries.map((entry, at) => (at === 0 ? { ...entry, indexTenths: null } : entry)),
    }
    const again = printedCards(nameless)
    expect(again.cards).toHaveLength(6)
    expect(again.without).toEqual([`${record.entries[0]!.firstName} ${record.entries[0]!.familyName}`])
  })
})
