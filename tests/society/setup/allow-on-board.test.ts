import { afterAll, beforeAll, expect, it } from 'vitest'
import type { EntryId } from '@/lib/facts/ids'
import { allowOnBoard } from '@/lib/society/allow-on-board'
import { dayBoard } from '@/lib/society/read-board'
import { book } from '@/lib/store/client'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got, Phone } from '../scoring/day-in-play'

let day: DayInPlay
beforeAll(async () => {
  day = await dayInPlay()
})
afterAll(() => day.close())

it('is off until it is allowed, at a version, with a record; and off again', async () => {
  const [a] = day.players(1) as [EntryId]
  await new Phone(day, 1, a).score(asId(a), 1, 5).send()
  const chances = async () => got(await dayBoard(day.slug, day.daySlug)).competitions.map((one) => one.chances)
  expect((await chances()).every((one) => one === undefined)).toBe(true)

  const { dayId, w } = day
  const version = await day.version()
  expect(await allowOnBoard(w.actor, { dayId, version: version - 1, showsChances: true })).toMatchObject({
    code: 'day-moved-on',
  })
  expect(await allowOnBoard({ kind: 'anybody' }, { dayId, version, showsChances: true })).toMatchObject({
    code: 'not-allowed',
  })
  expect(await allowOnBoard(w.actor, { dayId, version, showsChances: false })).toMatchObject({
    code: 'nothing-changed',
  })
  got(await allowOnBoard(w.actor, { dayId, version, showsChances: true }))
  expect((await chances())[0]?.entrants[a]).toMatchObject({ first: 'possible', holesLeft: 17 })
  expect((await day.record()).showsPosition).toBe(false)

  got(await allowOnBoard(w.actor, { dayId, version: version + 1, showsChances: false, showsPosition: true }))
  expect((await chances()).every((one) => one === undefined)).toBe(true)
  expect((await day.record()).showsPosition).toBe(true)
  const acts = await book().actRecord.findMany({ where: { act: 'allow-on-board' }, orderBy: { id: 'asc' } })
  expect(acts.map(({ before, after }) => [JSON.parse(before!), JSON.parse(after!)])).toMatchObject([
    [{ 'What it needs to win': 'not shown' }, { 'What it needs to win': 'shown' }],
    [
      { 'Position on the card': 'not shown', 'What it needs to win': 'shown' },
      { 'Position on the card': 'shown', 'What it needs to win': 'not shown' },
    ],
  ])
})
