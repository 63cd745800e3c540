// A server of its own for one story, on the build that is there and on a book of its own: a story that withdraws players,
// closes days or begins with an empty book disturbs no other.

import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, type Page } from '@playwright/test'
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

/** @param kind 'demo': the invented society; 'empty': a book without any society. */
export async function startOwnBook(kind: 'demo' | 'empty'): Promise<OwnBook> {
  const folder = mkdtempSync(join(tmpdir(), 'daybook-own-'))
  const file = join(folder, 'book.db')
  const env = { DATABASE_URL: `file:${file}`, DAYBOOK_EMPTY: kind === 'empty' ? '1' : '0', DAYBOOK_ORIGIN: '' }
  script('scripts/migrate.ts', env)
  const printed = script('scripts/seed.ts', env)
  const path = /\/sign-in\/first\/\S+/.exec(printed)?.[0]
  if (kind === 'empty' && !path) throw new Error(`no link for the first society was printed: ${printed}`)
  const server = await benchServer(file)
  return {
    origin: server.base,
    file,
    firstLink: path ? `${server.base}${path}` : '',
    stop: async () => {
      await server.stop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

/** Signs the secretary of the demonstration in, by the screen, and waits for the desk. */
export async function signInAtDesk(page: Page, origin: string, address = '/desk/fernbrake'): Promise<void> {
  await page.goto(`${origin}/sign-in?next=${encodeURIComponent(address)}`)
  await page.getByLabel('E-mail').fill(OFFICERS[0].email)
  await page.getByLabel('Password').fill(PASSWORD)
  await page.getByRole('button', { name: 'Sign in', exact: true }).click()
  await expect(page).toHaveURL(`${origin}${address}`)
}

function script(name: string, settings: Readonly<Record<string, string>>): string {
  const run = spawnSync(process.execPath, ['--conditions=react-server', '--import', 'tsx', name], {
    env: { ...process.env, ...settings },
    encoding: 'utf8',
  })
  if (run.status !== 0) throw new Error(`${name} failed: ${run.stderr}`)
  return run.stdout
}
