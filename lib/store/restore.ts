// Puts a copy in the place of the book. The present book is kept aside, whatever state it is in.
import 'server-only'
import { constants, copyFileSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import Database from 'better-sqlite3'
import { ok, type Result, refused } from '@/lib/result'
import { bookFile } from './client'
import { digestOf, faultOf, flush, manifestOf, migrationsIn } from './copies'
import { alone } from './held'
import { knownMigrations, migrate } from './migrate'

export interface Restored {
  readonly aside: string | null
  readonly migrated: readonly string[]
}

type No = 'no-such-copy' | 'copy-damaged' | 'copy-newer' | 'server-running'

export async function restoreCopy(copy: string, now: Date, file = bookFile()): Promise<Result<Restored, No>> {
  if (!existsSync(copy)) return refused('no-such-copy', `There is no file ${copy}.`)
  const manifest = manifestOf(copy)
  if (manifest && manifest.sha256 !== (await digestOf(copy)))
    return refused('copy-damaged', `${copy} is not the file its manifest describes: it was changed or cut short.`)
  const fault = faultOf(copy)
  if (fault) return refused('copy-damaged', fault)
  const strange = strangeMigration(copy)
  if (strange) return refused('copy-newer', strange)
  const answer = await alone(file, async () => {
    mkdirSync(dirname(file), { recursive: true })
    const ready = `${file}.restoring`
    removeWithJournal(ready)
    copyFileSync(copy, ready, constants.COPYFILE_FICLONE)
    // In one file and of this version before it becomes the book: from then on nothing is left to do.
    const migrated = migrate(ready)
    inOneFile(ready)
    flush(ready)
    const aside = keepAside(file, now)
    if (existsSync(`${file}-wal`)) emptyJournal(file)
    // One step from the whole old book to the whole new one, whenever the power goes.
    renameSync(ready, file)
    flush(dirname(file))
    return { aside, migrated }
  })
  if (answer === 'held')
    return refused('server-running', 'A server is working with this book. Stop it first, then restore.')
  return ok(answer.done)
}

/** A copy made by a later version of the program would lose what this version does not know. */
function strangeMigration(copy: string): string | null {
  const known = new Map(knownMigrations().map((one) => [one.name, one.checksum]))
  const db = new Database(copy, { readonly: true })
  try {
    const there = migrationsIn(db)
    if (there.length === 0) return `${copy} is a database, but not a book.`
    const strange = there.find((one) => known.get(one.name) !== one.checksum)
    if (!strange) return null
    return known.has(strange.name)
      ? `The migration ${strange.name} of ${copy} is not the one of this version.`
      : `${copy} was made by a later version of the program (${strange.name}). Update the program first.`
  } finally {
    db.close()
  }
}

/** The book as it lies, journal too, under a name of its own. The book itself stays where it is. */
function keepAside(file: string, now: Date): string | null {
  if (!existsSync(file)) return null
  const aside = freeAside(file, now)
  for (const ending of ['-wal', '']) {
    if (!existsSync(file + ending)) continue
    copyFileSync(file + ending, `${aside}${ending}.half`, constants.COPYFILE_FICLONE)
    flush(`${aside}${ending}.half`)
    // The journal first: a book that has its name has its journal beside it.
    renameSync(`${aside}${ending}.half`, aside + ending)
  }
  return aside
}

function freeAside(file: string, now: Date): string {
  const stamp = now.toISOString().replace(/[-:]|\.\d+/g, '')
  for (let n = 1; ; n++) {
    const aside = join(dirname(file), `aside-${stamp}${n === 1 ? '' : `-${n}`}-${basename(file)}`)
    if (!existsSync(aside) && !existsSync(`${aside}-wal`)) return aside
  }
}

/** A journal that stays behind would be read into the book that takes this one's place. */
function emptyJournal(file: string): void {
  try {
    if (existsSync(file)) inOneFile(file)
  } catch (cause) {
    // What cannot be opened has no journal to write back; it is kept aside as it is.
    if (!(cause instanceof Database.SqliteError)) throw cause
  }
  for (const ending of ['-wal', '-shm']) rmSync(file + ending, { force: true })
}

function inOneFile(file: string): void {
  const db = new Database(file)
  try {
    db.pragma('wal_checkpoint(TRUNCATE)')
    db.pragma('journal_mode = DELETE')
  } finally {
    db.close()
  }
}

function removeWithJournal(file: string): void {
  for (const ending of ['-wal', '-shm', '-journal', '']) rmSync(file + ending, { force: true })
}
