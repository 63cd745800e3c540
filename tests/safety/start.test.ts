// Promise: whatever is wrong with an installation is said in a sentence and ends with code 1 before anything is changed;
// commands and service read the same settings and work on the book these name; two starts at once make one society.
import { spawn, spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { bookFault } from '@/lib/store/book-fault'
import { migrate } from '@/lib/store/migrate'
import { FOLDER } from '../setup/book'

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(process.env[FOLDER]!, 'start-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const TS = ['--conditions=react-server', '--import', 'tsx']
const environment = (settings: Readonly<Record<string, string>>) => {
  const { DATABASE_URL: _, ...env } = process.env
  return { ...env, ...settings }
}
function run(script: string, settings: Readonly<Record<string, string>>) {
  const args = script.endsWith('.ts') ? [...TS, script] : [script]
  return spawnSync(process.execPath, args, { env: environment(settings), encoding: 'utf8', timeout: 60_000 })
}
const path = (name: string) => join(folder, name)

describe('a start', () => {
  it.each([
    ['PORT', 'abc', 'PORT must be a whole number from 1 to 65535, not abc.'],
    ['PORT', '99999', 'PORT must be a whole number from 1 to 65535, not 99999.'],
    ['HOST', '203.0.113.9', 'HOST must be an address of this machine, not 203.0.113.9 (EADDRNOTAVAIL).'],
  ])('with %s=%s is refused', (name, value, sentence) => {
    const { status, stderr, stdout } = run('scripts/start.mjs', { PORT: '39911', [name]: value })
    expect({ status, stderr: stderr.trim(), stdout }).toEqual({ status: 1, stderr: sentence, stdout: '' })
  })

  it('on a port that is in use is refused before anything is done', async () => {
    const other = createServer()
    const port = await new Promise<number>((resolve) =>
      other.listen(0, '127.0.0.1', () => resolve((other.address() as { port: number }).port)),
    )
    const started = spawn(process.execPath, ['scripts/start.mjs'], {
      env: environment({ PORT: String(port), DATABASE_URL: `file:${path('never/book.db')}` }),
    })
    let said = ''
    started.stderr.on('data', (piece) => {
      said += piece
    })
    const code = await new Promise((resolve) => started.on('close', resolve))
    other.close()
    expect(code).toBe(1)
    expect(said).toContain(`Something else listens on port ${port} of 127.0.0.1.`)
    expect(existsSync(path('never'))).toBe(false)
  })

  it('never puts the demonstration with its printed password behind a public address', () => {
    const file = path('public.db')
    migrate(file)
    const origin = 'https://days.example.org'
    const { status, stderr } = run('scripts/seed.ts', { DATABASE_URL: `file:${file}`, DAYBOOK_ORIGIN: origin })
    expect(status).toBe(1)
    expect(stderr).toContain(`is not put behind ${origin}. Set DAYBOOK_EMPTY=1`)
    const db = new Database(file, { readonly: true })
    expect(db.prepare('SELECT count(*) FROM "Society"').pluck().get()).toBe(0)
    db.close()
  })

  it('beside another one on the same new book makes one society', async () => {
    const file = path('twice.db')
    migrate(file)
    const settings = {
      DATABASE_URL: `file:${file}`,
      DAYBOOK_EMPTY: '1',
      DAYBOOK_SOCIETY: 'The Twice Started',
      DAYBOOK_OFFICER_PASSWORD: 'twelve letters or more',
    }
    const one = () =>
      new Promise((resolve) =>
        spawn(process.execPath, [...TS, 'scripts/seed.ts'], { env: environment(settings) }).on('close', resolve),
      )
    expect(await Promise.all([one(), one()])).toEqual([0, 0])
    const db = new Database(file, { readonly: true })
    expect(db.prepare('SELECT "name" FROM "Society"').pluck().all()).toEqual(['The Twice Started'])
    db.close()
  })
})

describe('what stands where the book should be', () => {
  it('is refused and left as it is when it is no book, or a later one', () => {
    const foreign = path('foreign.db')
    const db = new Database(foreign)
    db.exec('CREATE TABLE "Recipe" (name TEXT)')
    db.close()
    const before = readFileSync(foreign)
    expect(bookFault(foreign)).toMatch(/is a database, but not a book of Daybook/)
    expect(run('scripts/migrate.ts', { DATABASE_URL: `file:${foreign}` })).toMatchObject({ status: 1, stdout: '' })
    expect(readFileSync(foreign).equals(before)).toBe(true)

    writeFileSync(path('notes.db'), 'Buy balls, and a new glove for the left hand. '.repeat(40))
    expect(bookFault(path('notes.db'))).toMatch(/cannot be read as a book: file is not a database/)
    mkdirSync(path('folder.db'))
    expect(bookFault(path('folder.db'))).toMatch(/is a folder/)
    writeFileSync(path('plain'), '')
    expect(bookFault(path('plain/book.db'))).toMatch(/is a file, not a folder/)

    const later = path('later.db')
    migrate(later)
    expect(bookFault(later)).toBeNull()
    const book = new Database(later)
    book.exec(`UPDATE _prisma_migrations SET migration_name = '29991231000000_of_the_future'
      WHERE migration_name = (SELECT max(migration_name) FROM _prisma_migrations)`)
    book.close()
    expect(bookFault(later)).toMatch(/later version of the program \(29991231000000_of_the_future\)/)
    const refused = run('scripts/migrate.ts', { DATABASE_URL: `file:${later}` })
    expect(refused.status).toBe(1)
    expect(refused.stderr.trim().split('\n')).toHaveLength(1)
    expect(bookFault(path('not/yet/there.db'))).toBeNull()
  })

  it('may not be another kind of database', () => {
    const { status, stderr } = run('scripts/migrate.ts', { DATABASE_URL: 'postgres://localhost/book' })
    expect([status, stderr.trim()]).toEqual([1, 'DATABASE_URL must begin with file:, not postgres:'])
  })
})

describe('a command', () => {
  it('works on the book of the settings file, says which, and stops where there is none', () => {
    const file = path('settings/book.db')
    migrate(file)
    writeFileSync(path('daybook.env'), `DATABASE_URL=file:${file}\nDAYBOOK_ZONE="Europe/London"\n`)
    const made = run('scripts/backup.ts', { DAYBOOK_SETTINGS: path('daybook.env') })
    expect(made.stderr).toContain(`The book: ${file}`)
    expect(made.stdout).toContain(path('settings/copies'))
    for (const script of ['scripts/backup.ts', 'scripts/export.ts']) {
      const none = run(script, { DATABASE_URL: `file:${path('mistyped/book.db')}` })
      expect(none.status, script).toBe(1)
      expect(none.stderr, script).toMatch(/^There is no book at .*mistyped/)
    }
    expect(existsSync(path('mistyped'))).toBe(false)
    const lost = run('scripts/backup.ts', { DAYBOOK_SETTINGS: path('nowhere.env') })
    expect([lost.status, lost.stderr]).toEqual([
      1,
      `DAYBOOK_SETTINGS names ${path('nowhere.env')}, and there is no such file.\n`,
    ])
  })
})
