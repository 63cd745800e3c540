// Promise: of two processes that counted a board the later version stays, whoever is slower to write it down.

import { afterAll, beforeAll, expect, it } from 'vitest'
import type { DayId } from '@/lib/facts/ids'
import { book } from '@/lib/store/client'
import { keepSnapshot } from '@/lib/store/snapshots'
import { ownBook } from '../setup/copy'
import { aDay, world } from '../society/setup/world'

let close: () => Promise<void>
let dayId: DayId
beforeAll(async () => {
  close = (await ownBook()).close
  dayId = (await aDay(await world())).dayId
})
afterAll(() => close())

const write = (dayVersion: number, scoreVersion: number) =>
  keepSnapshot({ dayId, dayVersion, scoreVersion, board: `${dayVersion}.${scoreVersion}`, countedAt: new Date() })
const stands = async () => (await book().standingsSnapshot.findUniqueOrThrow({ where: { dayId } })).board

it.each([
  [2, 5, '2.5'],
  [2, 4, '2.5'],
  [1, 9, '2.5'],
  [2, 6, '2.6'],
  [3, 1, '3.1'],
] as const)('after %i.%i it stands at %s', async (dayVersion, scoreVersion, board) => {
  await write(dayVersion, scoreVersion)
  expect(await stands()).toBe(board)
})
