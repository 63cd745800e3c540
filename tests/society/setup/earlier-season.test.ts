// Promise: on the society's own page an earlier season stays within reach, with its days, and nothing of it is called next.

import { afterAll, beforeAll, expect, it } from 'vitest'
import { nextDay, nextSentence } from '@/app/(board)/_board/fixture-days'
import { openSeason } from '@/lib/society/open-season'
import { fixtures } from '@/lib/society/read-board'
import { ownBook } from '../../setup/copy'
import { aDay, got, type World, world } from './world'

let w: World
let close: () => Promise<void>
beforeAll(async () => {
  close = (await ownBook()).close
  w = await world()
  await aDay(w)
})
afterAll(() => close())

it('shows the newest season, and the earlier ones by name', async () => {
  const before = got(await fixtures('fernbrake'))
  const name = before.seasonName!
  got(await openSeason(w.actor, { name: 'The year after', startsOn: '2032-01-01', endsOn: '2032-12-31' }))
  const now = got(await fixtures('fernbrake'))
  expect(now).toMatchObject({ seasonName: 'The year after', isNewest: true, seasons: [{ name, days: 1 }], days: [] })
  const earlier = got(await fixtures('fernbrake', name))
  expect(earlier).toMatchObject({ seasonName: name, isNewest: false, seasons: [{ name: 'The year after', days: 0 }] })
  expect(earlier.days).toEqual(before.days)
  expect(nextSentence(earlier, nextDay(earlier))).toBe(`The days of ${name}.`)
  expect(got(await fixtures('fernbrake', 'no such year')).seasonName).toBe('The year after')
})
