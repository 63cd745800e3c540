// Promise: a day of any family that is called, played and published through the desk and the phones reads alike on the
// board, on the sheet, at the desk, on each phone, on the members' own pages, and to the score command on its exported file.

import { spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { parseDayFile } from '@/lib/facts/day-file'
import type { PersonId } from '@/lib/facts/ids'
import { scoreDay } from '@/lib/rules/score-day'
import type { CompetitionResult } from '@/lib/rules/standings'
import { cardPack } from '@/lib/society/card-pack'
import { dayFileOf } from '@/lib/society/export-day'
import { dayBoard, resultSheet } from '@/lib/society/read-board'
import { memberPage } from '@/lib/society/read-member'
import { ownBook } from '../setup/copy'
import { got, type World, world } from '../society/setup/world'
import { FAMILIES } from './families'
import { morePeople, nineHoles, type PlayedDay, Playing } from './played-day'
import { atDesk, inFile, onCards, onOwnPage, onPhone, onSheet } from './surfaces'

/** Days of each family. `npm run prove` asks for more. */
const DAYS = Number(process.env.AGREEMENT_DAYS ?? 1)
const FROM = Number(process.env.AGREEMENT_FROM ?? 1)

let w: World
let people: readonly PersonId[]
let nine: Awaited<ReturnType<typeof nineHoles>>
let close: () => Promise<void>
/** What was exported of the published days, for one run of the command at the end. */
const files = mkdtempSync(join(tmpdir(), 'daybook-agreement-'))
const scored: { readonly file: string; readonly results: readonly CompetitionResult[] }[] = []

beforeAll(async () => {
  close = (await ownBook()).close
  w = await world()
  people = await morePeople(w)
  nine = await nineHoles(w)
}, 120_000)
afterAll(() => close())

async function readEverywhere(day: PlayedDay): Promise<readonly string[]> {
  const board = got(await dayBoard('fernbrake', day.daySlug))
  const record = await day.record()
  const { dayFile } = got(await dayFileOf(w.actor, day.dayId))
  const file = parseDayFile(JSON.parse(JSON.stringify(dayFile)))
  if (!file.ok) return [`the day file is refused: ${JSON.stringify(file.faults)}`]
  const results = scoreDay(file.value)
  const found = [...inFile(board, results), ...atDesk(board), ...onCards(board, record)]
  for (const group of record.groups) found.push(...onPhone(board, record, got(await cardPack(day.scorer(group.id)))))
  // Everybody's page of a published day; of a day in play a few, which are read off the same board.
  for (const { personId, status } of record.entries.slice(0, record.status === 'closed' ? undefined : 3)) {
    if (status !== 'entered') continue
    const page = got(await memberPage({ kind: 'member', societyId: w.actor.societyId, personId }))
    found.push(...onOwnPage(board, page, personId, record))
  }
  if (record.status === 'closed') {
    found.push(...onSheet(board, got(await resultSheet('fernbrake', day.daySlug)).sheet))
    const at = join(files, `${day.daySlug}.json`)
    writeFileSync(at, JSON.stringify(dayFile))
    scored.push({ file: at, results })
  }
  return found.map((said) => `${day.daySlug}, ${record.status}: ${said}`)
}

const seeds = Array.from({ length: DAYS }, (_, at) => FROM + at)

it.each(FAMILIES.flatMap((family) => seeds.map((seed) => [family.name, seed, family] as const)))(
  '%s, day %i',
  async (_, seed, family) => {
    const playing = new Playing(w, people, seed * 100 + FAMILIES.indexOf(family), nine)
    const day = await playing.called(family)
    const found: string[] = []
    await playing.played(day, 0.4)
    found.push(...(await readEverywhere(day)))
    await playing.played(day, 1)
    await playing.trouble(day)
    await playing.closed(day)
    found.push(...(await readEverywhere(day)))
    if (family.rounds) {
      const second = await playing.again(day)
      await playing.played(second, 0.4)
      found.push(...(await readEverywhere(second)))
      await playing.played(second, 1)
      await playing.closed(second)
      found.push(...(await readEverywhere(second)))
    }
    expect(found).toEqual([])
  },
  120_000,
)

it('the score command prints for the exported files what was read from them', () => {
  const run = spawnSync('npm', ['run', '--silent', 'score', '--', ...scored.map(({ file }) => file)], {
    encoding: 'utf8',
    maxBuffer: 200_000_000,
  })
  expect(run.stderr).toBe('')
  const lines = scored.length > 1 ? run.stdout.trim().split('\n') : [run.stdout]
  const printed = lines.map((line) => JSON.parse(line) as { results: readonly CompetitionResult[] })
  const told = (results: readonly CompetitionResult[]) =>
    results.map(({ competition, standings, matches = [] }) => [
      competition,
      standings?.map((one) => [one.entrant, one.place, one.tied, one.score]) ?? [],
      matches.map((one) => [one.id, one.winner, one.result]),
    ])
  expect(printed.map(({ results }) => told(results))).toEqual(scored.map(({ results }) => told(results)))
}, 120_000)
