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
    const aside = keepAside(file, now)
    const half = `${file}.restoring`
    copyFileSync(copy, half, constants.COPYFILE_FICLONE)
    flush(half)
    renameSync(half, file)
    flush(dirname(file))
    return { aside, migrated: migrate(file) }
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

function keepAside(file: string, now: Date): string | null {
  if (!existsSync(file)) return null
  const stamp = now.toISOString().replace(/[-:]|\.\d+/g, '')
  const aside = join(dirname(file), `aside-${stamp}-${basename(file)}`)
  for (const ending of ['-wal', '-shm', '']) {
    rmSync(aside + ending, { force: true })
    if (existsSync(file + ending)) renameSync(file + ending, aside + ending)
  }
  return aside
}
