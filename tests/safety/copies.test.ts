// Promise: a copy made while the book is written to is whole and checked; a restored copy is the book of that moment, to
// the row; a running server is never restored over; a migration leaves the way back beside it.
import { type ChildProcess, execFileSync, spawn } from 'node:child_process'
import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Copy, copiesToDrop, isCopyOld } from '@/lib/facts/copies'
import { copyCaution, scheduledCopy } from '@/lib/society/keep-copies'
import { copiesIn, copyList, copyWhenDue, faultOf, makeCopy, manifestOf, rotateCopies } from '@/lib/store/copies'
import { migrate } from '@/lib/store/migrate'
import { migrateSafely } from '@/lib/store/migrate-safely'
import { restoreCopy } from '@/lib/store/restore'
import { FOLDER } from '../setup/book'

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(process.env[FOLDER]!, 'copies-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function newBook(name: string): string {
  const file = join(folder, name, 'book.db')
  migrate(file)
  return file
}

function addSociety(file: string, slug: string): void {
  const db = new Database(file)
  db.prepare('INSERT INTO "Society" (id, slug, name, createdAt) VALUES (?, ?, ?, ?)').run(
    slug,
    slug,
    `The ${slug} society`,
    '2026-06-13T10:00:00.000+00:00',
  )
  db.close()
}

const slugs = (file: string) => {
  const db = new Database(file, { readonly: true })
  const all = db.prepare('SELECT slug FROM "Society" ORDER BY slug').pluck().all()
  db.close()
  return all
}

/** A process that writes as fast as it can, as a server would, holding the book; killed without warning. */
function writer(file: string): Promise<ChildProcess> {
  const child = spawn(
    process.execPath,
    ['--conditions=react-server', '--import', 'tsx', 'tests/safety/busy-server.ts', file],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  )
  return new Promise((resolve, reject) => {
    child.stdout!.once('data', () => resolve(child))
    child.once('exit', () => reject(new Error('the busy server did not start')))
  })
}

describe('a copy', () => {
  it('is whole while a server writes; is refused over a running server; comes back to the row', async () => {
    const file = newBook('rehearsal')
    addSociety(file, 'before')
    const server = await writer(file)
    const copies = join(folder, 'rehearsal', 'copies')
    const copy = await makeCopy('asked', new Date('2026-06-13T12:00:00Z'), file, copies)
    const at = join(copies, copy.fileName)
    expect(faultOf(at)).toBeNull()
    const there = slugs(at)
    expect(there).toContain('before')
    expect(manifestOf(at)!.rows.Society).toBe(there.length)
    expect(statSync(at).mode & 0o077).toBe(0)

    const held = await restoreCopy(at, new Date('2026-06-13T12:30:00Z'), file)
    expect(held).toMatchObject({ ok: false, code: 'server-running' })

    const ended = new Promise((resolve) => server.once('exit', resolve))
    server.kill('SIGKILL')
    await ended
    addSociety(file, 'written-after-the-copy')
    const later = slugs(file)
    expect(later.length).toBeGreaterThan(there.length)

    const restored = await restoreCopy(at, new Date('2026-06-13T13:00:00Z'), file)
    if (!restored.ok) throw new Error(restored.sentence)
    expect(slugs(file)).toEqual(there)
    // What was there before is kept, with everything written after the copy.
    expect(slugs(restored.value.aside!)).toEqual(later)
  })

  it('is refused when it was changed, cut short, made by a later version, or is no book at all', async () => {
    const file = newBook('damaged')
    const copies = join(folder, 'damaged', 'copies')
    const now = new Date('2026-06-13T12:00:00Z')
    const copy = join(copies, (await makeCopy('asked', now, file, copies)).fileName)
    const spoilt = (name: string, how: (path: string) => void) => {
      const path = join(copies, name)
      cpSync(copy, path)
      how(path)
      return restoreCopy(path, now, file)
    }
    const before = slugs(file)
    expect(await restoreCopy(join(copies, 'none.db'), now, file)).toMatchObject({ code: 'no-such-copy' })
    expect(
      await spoilt('changed.db', (path) => {
        cpSync(`${copy}.json`, `${path}.json`)
        appendFileSync(path, 'x')
      }),
    ).toMatchObject({ code: 'copy-damaged' })
    expect(
      await spoilt('later.db', (path) => {
        const db = new Database(path)
        db.exec(
          `INSERT INTO _prisma_migrations (id, checksum, migration_name, finished_at) VALUES ('x', 'x', '29990101000000_later', '2999')`,
        )
        db.close()
      }),
    ).toMatchObject({ code: 'copy-newer' })
    const empty = new Database(join(copies, 'empty.db'))
    empty.exec('CREATE TABLE t (x)')
    empty.close()
    expect(await restoreCopy(join(copies, 'empty.db'), now, file)).toMatchObject({ code: 'copy-newer' })
    expect(await restoreCopy('package.json', now, file)).toMatchObject({ code: 'copy-damaged' })
    expect(slugs(file)).toEqual(before)
  })

  it('is taken before a migration, and not before the first one', async () => {
    const file = join(folder, 'migrating', 'book.db')
    const first = await migrateSafely(new Date('2026-06-13T12:00:00Z'), file)
    expect(first.copy).toBeNull()
    expect(first.applied.length).toBeGreaterThan(1)
    const second = await migrateSafely(new Date('2026-06-13T12:00:00Z'), file)
    expect(second).toEqual({ applied: [], copy: null })
    // As an older version left it: without the last migration's row, so that it is ahead again.
    const old = join(folder, 'older', 'book.db')
    migrate(old, oneMigration(join(folder, 'one')))
    addSociety(old, 'kept-by-the-copy')
    const third = await migrateSafely(new Date('2026-06-14T12:00:00Z'), old)
    expect(third.applied.length).toBeGreaterThan(0)
    expect(slugs(third.copy!)).toEqual(['kept-by-the-copy'])
    expect(manifestOf(third.copy!)!.kind).toBe('before-migration')
    expect(manifestOf(third.copy!)!.migrations.length).toBe(1)
  })

  it('is made by the clock once, whichever process asks, and the old ones go', async () => {
    const file = newBook('clock')
    process.env.DATABASE_URL = `file:${file}`
    const turn = { daily: 2, weekly: 1, monthly: 1 }
    const noon = (day: number) => new Date(Date.UTC(2026, 5, day, 12))
    const both = await Promise.all([copyWhenDue(24, turn, noon(1)), copyWhenDue(24, turn, noon(1))])
    expect(both.filter((one) => typeof one === 'object')).toHaveLength(1)
    expect(await copyWhenDue(24, turn, new Date(Date.UTC(2026, 5, 1, 20)))).toBe('not-due')
    for (let day = 2; day <= 9; day++)
      expect(await copyWhenDue(24, turn, noon(day))).toMatchObject({ kind: 'scheduled' })
    expect(copyList().map((copy) => copy.madeAt.slice(0, 10))).toEqual(['2026-06-09', '2026-06-08'])
    const half = (name: string, at: string) => {
      writeFileSync(join(folder, 'clock', 'copies', name), 'half a book')
      utimesSync(join(folder, 'clock', 'copies', name), new Date(at), new Date(at))
    }
    half('.half-of-a-killed-server', '2026-12-30T00:00:00Z')
    half('.half-at-work', '2026-12-31T23:00:00Z')
    expect(rotateCopies(turn, new Date('2027-01-01T00:00:00Z'))).toHaveLength(0)
    expect(readdirSync(join(folder, 'clock', 'copies')).filter((name) => name.startsWith('.half'))).toEqual([
      '.half-at-work',
    ])
    rmSync(join(folder, 'clock', 'copies', '.half-at-work'))
    const left = readdirSync(join(folder, 'clock', 'copies')).filter((name) => !name.startsWith('schedule'))
    expect(left).toHaveLength(4)
  })

  it('with an unreadable manifest beside it stays usable, and the file is named', async () => {
    const file = newBook('unreadable')
    process.env.DATABASE_URL = `file:${file}`
    const copies = join(folder, 'unreadable', 'copies')
    const made = await makeCopy('asked', new Date('2026-06-01T12:00:00Z'))
    for (const [name, text] of [
      ['empty', ''],
      ['cut', '{"daybookCopy":1,'],
      ['other', '{"name":"somebody else\u2019s"}'],
    ] as const) {
      writeFileSync(join(copies, `${name}.db`), '')
      writeFileSync(join(copies, `${name}.db.json`), text)
    }
    mkdirSync(join(copies, 'folder.db'))
    mkdirSync(join(copies, 'folder.db.json'))
    const found = copiesIn()
    expect(found.copies).toEqual([made])
    expect(found.unreadable).toEqual(['cut.db.json', 'empty.db.json', 'folder.db.json', 'other.db.json'])
    expect(copyCaution(new Date('2026-06-02T12:00:00Z'))).toBe(
      'A file in the folder of copies cannot be read: cut.db.json. Whoever runs the server should look at it or remove it.',
    )
    expect(await copyWhenDue(24, { daily: 2, weekly: 1, monthly: 1 }, new Date('2026-06-03T12:00:00Z'))).toMatchObject({
      kind: 'scheduled',
    })
    expect(readdirSync(copies).filter((name) => name.startsWith('.half'))).toEqual([])
  })

  it('dated in the future neither stops the next one nor passes for the newest', async () => {
    const file = newBook('future')
    process.env.DATABASE_URL = `file:${file}`
    await makeCopy('scheduled', new Date('2035-01-01T12:00:00Z'))
    const turn = { daily: 2, weekly: 1, monthly: 1 }
    const now = new Date('2026-06-03T12:00:00Z')
    expect(await copyWhenDue(24, turn, now)).toMatchObject({ kind: 'scheduled' })
    expect(await copyWhenDue(24, turn, new Date(now.getTime() + 3_600_000))).toBe('not-due')
    expect(copyCaution(new Date('2026-06-06T13:00:00Z'))).toContain('The last copy of the book was made 3 days ago.')
  })

  it('that cannot be made is said at the desk until the next one is', async () => {
    const file = newBook('failing')
    process.env.DATABASE_URL = `file:${file}`
    writeFileSync(join(folder, 'failing', 'copies'), 'a file where the folder should be')
    const now = new Date(Date.now() + 1000)
    await expect(scheduledCopy(now)).rejects.toThrow()
    expect(copyCaution(now)).toMatch(/^The copy of the book due at .* could not be made\./)
    rmSync(join(folder, 'failing', 'copies'))
    expect(await scheduledCopy(new Date(now.getTime() + 1000))).toBe('made')
    expect(copyCaution(new Date(now.getTime() + 2000))).toBeNull()
  })

  it('can be made and restored by command', () => {
    const file = newBook('command')
    addSociety(file, 'by-command')
    const run = (script: string, ...args: string[]) =>
      execFileSync(process.execPath, ['--conditions=react-server', '--import', 'tsx', script, ...args], {
        env: { ...process.env, DATABASE_URL: `file:${file}` },
        encoding: 'utf8',
      })
    const [, copy] = /^(\S+\.db): \d+ bytes, checked/.exec(run('scripts/backup.ts'))!
    addSociety(file, 'later')
    expect(run('scripts/restore.ts', copy!)).toMatch(/is kept in/)
    expect(slugs(file)).toEqual(['by-command'])
  })
})

describe('the rotation', () => {
  const copyAt = (at: Date, n: number): Copy => ({
    fileName: `${n}.db`,
    kind: n % 7 === 3 ? 'before-migration' : n % 3 === 0 ? 'asked' : 'scheduled',
    madeAt: at.toISOString(),
    bytes: 1,
    sha256: '0'.repeat(64),
  })
  const now = new Date('2026-11-25T12:00:00Z')
  const some = fc
    .array(fc.integer({ min: 0, max: 500 * 24 }), { maxLength: 120 })
    .map((hours) => hours.map((hour, n) => copyAt(new Date(now.getTime() - hour * 3_600_000), n)))

  it('keeps the newest, the young, and never more than it says', () => {
    fc.assert(
      fc.property(some, fc.nat(20), fc.nat(10), fc.nat(12), (copies, daily, weekly, monthly) => {
        const dropped = copiesToDrop(copies, { daily: daily + 1, weekly, monthly }, now)
        const kept = copies.filter((copy) => !dropped.includes(copy))
        const young = copies.filter((copy) => now.getTime() - Date.parse(copy.madeAt) < 2 * 86_400_000)
        for (const copy of young) expect(kept).toContain(copy)
        const newest = [...copies].sort((a, b) => b.madeAt.localeCompare(a.madeAt))[0]
        if (newest) expect(kept.map((copy) => copy.madeAt)).toContain(newest.madeAt)
        expect(kept.length).toBeLessThanOrEqual(young.length + daily + 1 + weekly + monthly + 1)
        // Once rotated, a second turn finds nothing more to drop.
        expect(copiesToDrop(kept, { daily: daily + 1, weekly, monthly }, now)).toEqual([])
      }),
    )
  })

  it('reaches a year back when a copy is made every day', () => {
    const copies = Array.from({ length: 400 }, (_, n) => ({
      ...copyAt(new Date(now.getTime() - n * 86_400_000), n),
      kind: 'scheduled' as const,
    }))
    const dropped = new Set(copiesToDrop(copies, { daily: 14, weekly: 8, monthly: 12 }, now))
    const kept = copies.filter((copy) => !dropped.has(copy))
    expect(kept.at(-1)!.madeAt.slice(0, 7)).toBe('2025-12')
    expect(kept.length).toBeGreaterThan(25)
    expect(kept.length).toBeLessThanOrEqual(34)
  })

  it('calls a copy old after two days', () => {
    const began = new Date('2026-11-25T11:00:00Z')
    expect(isCopyOld(undefined, began, now)).toBe(false)
    expect(isCopyOld(undefined, new Date('2026-11-20T11:00:00Z'), now)).toBe(true)
    expect(isCopyOld(copyAt(new Date('2026-11-23T11:59:00Z'), 1), began, now)).toBe(true)
    expect(isCopyOld(copyAt(new Date('2026-11-23T12:01:00Z'), 1), began, now)).toBe(false)
  })
})

function oneMigration(into: string): string {
  const [first] = readdirSync('prisma/migrations').sort()
  cpSync(join('prisma/migrations', first!), join(into, first!), { recursive: true })
  if (!existsSync(join(into, first!, 'migration.sql')) || !readFileSync(join(into, first!, 'migration.sql')).length)
    throw new Error('the first migration is empty')
  return into
}
