// Promise: what weighs on the server is counted: a desk may take the book away, or have it copied, so many times an hour
// and is told so in a sentence; another society is not kept waiting; and the next hour begins anew.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { exportSociety } from '@/lib/society/export-society'
import { copyBook } from '@/lib/society/keep-copies'
import { ownBook } from '../../setup/copy'
import { type World, world } from '../setup/world'

let close: () => Promise<void>
let here: World
let there: World
beforeAll(async () => {
  close = (await ownBook()).close
  here = await world('fernbrake')
  there = await world('wetherlam')
})
afterAll(() => close())

const NOON = Date.parse('2031-06-14T12:00:00Z')
const at = (minutes: number) => new Date(NOON + minutes * 60_000)

it('an export is given twelve times an hour to each society', async () => {
  for (let time = 0; time < 12; time++) expect((await exportSociety(here.actor, at(time))).ok).toBe(true)
  expect(await exportSociety(here.actor, at(12))).toMatchObject({ ok: false, code: 'too-many-tries' })
  expect((await exportSociety(there.actor, at(12))).ok).toBe(true)
  expect((await exportSociety(here.actor, at(90))).ok).toBe(true)
})

it('a copy of the installation is made six times an hour, whoever asks', async () => {
  for (let time = 0; time < 6; time++)
    expect((await copyBook(time % 2 ? here.actor : there.actor, at(time))).ok).toBe(true)
  expect(await copyBook(here.actor, at(7))).toMatchObject({ ok: false, code: 'too-many-tries' })
  expect((await copyBook(here.actor, at(90))).ok).toBe(true)
})
