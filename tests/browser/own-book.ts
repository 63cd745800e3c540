// A server of its own for one story, on the build that is there and on a book of its own: a story that withdraws players,
// closes days or begins with an empty book disturbs no other.

import { spawnSync } from 'node:child_process'
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Browser, expect, type Page } from '@playwright/test'
import Database from 'better-sqlite3'
import { benchServer } from '@/scripts/bench-server'
import { OFFICERS, PASSWORD } from '@/seed/members'

export interface OwnBook {
  /** Such as http://127.0.0.1:40123, without a slash at the end. */
  readonly origin: string
  /** The SQLite file of the book, to be read (never written) by a test. */
  readonly file: string
  /** The one-time address behind which the first society is set up; empty for the demonstration. */
  readonly firstLink: string
  stop(): Promise<void>
}

interface Seeded {
  readonly file: string
  readonly path: string
}

const started = new Set<OwnBook>()
/** Seeding the demonstration takes half a minute: once for all stories of a run, and every story has a copy. */
const seeded = new Map<'demo' | 'empty', Seeded>()

/** @param kind 'demo': the invented society; 'empty': a book without any society. */
export async function startOwnBook(kind: 'demo' | 'empty'): Promise<OwnBook> {
  const folder = mkdtempSync(join(tmpdir(), 'daybook-own-'))
  const file = join(folder, 'book.db')
  const first = seeded.get(kind) ?? seed(kind)
  seeded.set(kind, first)
  copyFileSync(first.file, file)
  const server = await benchServer(file)
  const book: OwnBook = {
    origin: server.base,
    file,
    firstLink: first.path && `${server.base}${first.path}`,
    stop: async () => {
      started.delete(book)
      await server.stop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
  started.add(book)
  return book
}

/** After a story, however far it came: also when its book or its first page was never there. */
export async function endOwnBooks(browser: Browser): Promise<void> {
  for (const context of browser.contexts()) await context.close()
  for (const book of [...started]) await book.stop()
}

/** Signs the secretary of the demonstration in, by the screen, and waits for the desk. */
export async function signInAtDesk(page: Page, origin: string, address = '/desk/fernbrake'): Promise<void> {
  await page.goto(`${origin}/sign-in?next=${encodeURIComponent(address)}`)
  await page.getByLabel('E-mail').fill(OFFICERS[0].email)
  await page.getByLabel('Password').fill(PASSWORD)
  await page.getByRole('button', { name: 'Sign in', exact: true }).click()
  await expect(page).toHaveURL(`${origin}${address}`)
}

/** For whoever runs one story many times: DAYBOOK_SEEDED_DEMO names a demonstration seeded today, as one file. */
function seed(kind: 'demo' | 'empty'): Seeded {
  const ready = process.env.DAYBOOK_SEEDED_DEMO
  if (kind === 'demo' && ready) return { file: ready, path: '' }
  const folder = mkdtempSync(join(tmpdir(), 'daybook-seeded-'))
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }))
  const file = join(folder, 'book.db')
  const env = { DATABASE_URL: `file:${file}`, DAYBOOK_EMPTY: kind === 'empty' ? '1' : '0', DAYBOOK_ORIGIN: '' }
  script('scripts/migrate.ts', env)
  const path = /\/sign-in\/first\/\S+/.exec(script('scripts/seed.ts', env))?.[0] ?? ''
  if (kind === 'empty' && !path) throw new Error('no link for the first society was printed')
  // A copy takes the one file: what the seed wrote beside it goes into it first.
  const book = new Database(file)
  book.pragma('wal_checkpoint(TRUNCATE)')
  book.close()
  return { file, path }
}

function script(name: string, settings: Readonly<Record<string, string>>): string {
  const run = spawnSync(process.execPath, ['--conditions=react-server', '--import', 'tsx', name], {
    env: { ...process.env, ...settings },
    encoding: 'utf8',
  })
  if (run.status !== 0) throw new Error(`${name} failed: ${run.stderr}`)
  return run.stdout
}
