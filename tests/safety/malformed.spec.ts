// Promise: whatever is sent, to whatever address, the server answers within five seconds, never with a failure of its own,
// never with its insides, and nothing in the book changes. DAYBOOK_MALFORMED says how many; the same seed, the same ones.
import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { expect, test } from '@playwright/test'
import Database from 'better-sqlite3'
import { builtActions, signIn } from './http/client'
import { OFFICERS, PASSWORD, type Prepared } from './http/prepared'
import { sendMany } from './http/send'

const BOOK = process.env.BROWSER_BOOK ?? 'data/browser/book.db'
const MANY = Number(process.env.DAYBOOK_MALFORMED ?? 6000)
const SEED = Number(process.env.DAYBOOK_SEED ?? 20260613)

/** Attempts are counted, boards are kept when they are looked at, a refused delivery is remembered with its sentence. */
const MAY_CHANGE = new Set([
  'Attempt',
  'RateLimit',
  'StandingsSnapshot',
  'RefusedFact',
  'Device',
  'Verification',
  'Session',
])

function contentOf(file: string): Record<string, string> {
  const db = new Database(file, { readonly: true })
  const tables = db
    .prepare(`SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'`)
    .pluck()
    .all() as string[]
  const content = Object.fromEntries(
    tables
      .filter((name) => !MAY_CHANGE.has(name))
      .map((name) => {
        const hash = createHash('sha256')
        let rows = 0
        for (const row of db.prepare(`SELECT * FROM "${name}" ORDER BY 1, 2`).raw().iterate()) {
          hash.update(JSON.stringify(row))
          rows++
        }
        return [name, `${rows} rows, ${hash.digest('hex')}`]
      }),
  )
  db.close()
  return content
}

test('malformed requests do no harm', async ({ baseURL }) => {
  test.setTimeout(30_000 + MANY * 40)
  const prepared = JSON.parse(
    execFileSync(
      process.execPath,
      ['--conditions=react-server', '--import', 'tsx', 'tests/safety/http/prepare.ts', 'fernbrake'],
      { env: { ...process.env, DATABASE_URL: `file:${BOOK}` }, encoding: 'utf8', maxBuffer: 1 << 26 },
    ),
  ) as Prepared
  // The treasurer gets past the door and into every form, and may change next to nothing.
  const cookies = [await signIn(baseURL!, OFFICERS.treasurer, PASSWORD)]
  const leaves = new Set(['leaveDesk', 'endOthers', 'endThisOne'])
  const actions = builtActions().filter((action) => !leaves.has(action.name))
  const before = contentOf(BOOK)
  const began = Date.now()
  const { found, statuses } = await sendMany(
    new URL(baseURL!),
    { targets: prepared.here, actions, cookies },
    SEED,
    MANY,
    24,
  )
  const seconds = (Date.now() - began) / 1000
  console.log(
    `${MANY} malformed requests in ${seconds.toFixed(0)} s: ${[...statuses]
      .sort(([a], [b]) => a - b)
      .map(([status, n]) => `${status}: ${n}`)
      .join(', ')}`,
  )
  expect(found.slice(0, 20)).toEqual([])
  expect(contentOf(BOOK)).toEqual(before)
  expect((await fetch(`${baseURL}/api/ready`)).status).toBe(200)
})
