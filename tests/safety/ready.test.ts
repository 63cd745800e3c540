// Promise: readiness says in single words what is wrong and nothing of anybody; settings are refused each with its line.
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { GET as health } from '@/app/api/health/route'
import { settings } from '@/lib/facts/settings'
import { notReady, nowStopping } from '@/lib/store/ready'
import { FOLDER } from '../setup/book'
import { ownBook } from '../setup/copy'

describe('readiness', () => {
  it('is given when the book opens and is up to date', async () => {
    const { close } = await ownBook()
    expect(await notReady()).toEqual([])
    await close()
  })

  it('is not when a migration is missing, the book is not there, or the server is stopping', async () => {
    const { file, close } = await ownBook()
    const db = new Database(file)
    db.prepare(
      'DELETE FROM _prisma_migrations WHERE migration_name = (SELECT max(migration_name) FROM _prisma_migrations)',
    ).run()
    db.close()
    expect(await notReady()).toEqual(['migrations'])
    await close()
    process.env.DATABASE_URL = `file:${join(process.env[FOLDER]!, 'nowhere', 'book.db')}`
    expect(await notReady()).toEqual(['book', 'disk'])
    nowStopping()
    expect(await notReady()).toContain('stopping')
  })

  it('and health say nothing else', async () => {
    expect(await health().json()).toEqual({ alive: true })
  })
})

describe('the settings', () => {
  it('are all optional, and an empty one is none', () => {
    const read = settings.parse({ DAYBOOK_COPY_EVERY_HOURS: '', DAYBOOK_LOG: '' })
    expect(read).toMatchObject({ DAYBOOK_COPY_EVERY_HOURS: 24, DAYBOOK_LOG: 'info', DAYBOOK_BEHIND_PROXY: '0' })
  })

  it('that are wrong stop a start, one line each', () => {
    const run = spawnSync(process.execPath, ['--conditions=react-server', '--import', 'tsx', 'scripts/migrate.ts'], {
      env: {
        ...process.env,
        DAYBOOK_ZONE: 'Mars/Olympus',
        DAYBOOK_COPIES_DAILY: 'many',
        DAYBOOK_SECRET: 'short',
        DAYBOOK_LOG: 'loud',
      },
      encoding: 'utf8',
    })
    expect(run.status).toBe(1)
    expect(run.stdout).toBe('')
    expect(run.stderr.trim().split('\n')).toEqual([
      'DAYBOOK_SECRET must have at least 32 characters.',
      'DAYBOOK_ZONE must be a time zone such as Europe/London.',
      'DAYBOOK_COPIES_DAILY must be a whole number from 1 to 366.',
      'DAYBOOK_LOG must be silent, error, warn or info.',
    ])
  })
})
