// Promise: what the desk reads about a phone's unsent scores is what is still on it after its last delivery, not before.

import { afterAll, beforeAll, expect, it } from 'vitest'
import type { DeviceId } from '@/lib/facts/ids'
import type { DeviceFact } from '@/lib/facts/score-fact'
import { deliverFacts, saysOf } from '@/lib/society/enter-score'
import { book } from '@/lib/store/client'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got } from '../scoring/day-in-play'

let day: DayInPlay
beforeAll(async () => {
  day = await dayInPlay()
})
afterAll(() => day.close())

const deviceId = asId<DeviceId>('a-phone-that-sends-in-parts')

function scores(from: number, to: number): DeviceFact[] {
  const [writer] = day.players(1)
  return Array.from({ length: to - from + 1 }, (_, at) => ({
    kind: 'score',
    seq: from + at,
    cardId: day.cardOf(writer!),
    writer: writer!,
    writtenAt: '2031-06-14T10:00:00.000Z',
    hole: from + at,
    score: 5,
  }))
}

const unsent = async () =>
  (await book().device.findFirstOrThrow({ where: { id: { endsWith: deviceId } }, select: { unsent: true } })).unsent

it('counts down with every delivery of a phone that sends in parts', async () => {
  got(await deliverFacts(day.scorer(1), { deviceId, facts: scores(1, 5), unsent: 12 }))
  expect(await unsent()).toBe(7)
  got(await deliverFacts(day.scorer(1), { deviceId, facts: scores(6, 11), unsent: 7 }))
  expect(await unsent()).toBe(1)
  got(await deliverFacts(day.scorer(1), { deviceId, facts: scores(12, 12), unsent: 1 }))
  expect(await unsent()).toBe(0)
})

it('reads a repeat like the delivery it repeats, and never falls below nothing', async () => {
  got(await deliverFacts(day.scorer(1), { deviceId, facts: scores(10, 12), unsent: 4 }))
  expect(await unsent()).toBe(1)
  expect(saysOf({ deviceId, facts: scores(1, 3), unsent: 2 })).toEqual({ unsent: 0 })
  expect(saysOf({ deviceId, facts: scores(1, 3) })).toEqual({})
})
