// What stands where the book should be is looked at before anything is written into it.
import 'server-only'
import { accessSync, constants, existsSync, statSync } from 'node:fs'
import { dirname } from 'node:path'
import Database from 'better-sqlite3'
import { knownMigrations } from './migrate'

/** Why this file is not a book this version can work with, in a sentence; null for a book, or where none is yet. */
export function bookFault(file: string): string | null {
  const folder = nearestFolder(file)
  if (!statSync(folder).isDirectory()) return `${folder} is a file, not a folder: the book cannot be kept in it.`
  if (!mayWrite(folder)) return `The folder ${folder} cannot be written to by this user, and the book is kept there.`
  if (!existsSync(file)) return null
  if (statSync(file).isDirectory()) return `${file} is a folder. DATABASE_URL names the file of the book in it.`
  if (!mayWrite(file)) return `${file} cannot be written to by this user.`
  return contentFault(file)
}

function contentFault(file: string): string | null {
  let db: Database.Database | undefined
  try {
    db = new Database(file, { readonly: true, fileMustExist: true })
    const tables = db
      .prepare(`SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'`)
      .pluck()
      .all() as string[]
    if (tables.length === 0) return null
    const ledger = tables.includes('_prisma_migrations')
    if (!ledger) return `${file} is a database, but not a book of Daybook. Nothing was changed in it.`
    const done = db
      .prepare('SELECT migration_name FROM _prisma_migrations WHERE finished_at IS NOT NULL AND rolled_back_at IS NULL')
      .pluck()
      .all() as string[]
    if (done.length > 0 && !tables.includes('Society'))
      return `${file} is a database, but not a book of Daybook. Nothing was changed in it.`
    const known = new Set(knownMigrations().map((one) => one.name))
    const strange = done.find((name) => !known.has(name))
    return strange === undefined
      ? null
      : `${file} was brought up to date by a later version of the program (${strange}). Start that version, or put the copy made before it back (npm run restore).`
  } catch (cause) {
    if (cause instanceof Error && 'code' in cause) return `${file} cannot be read as a book: ${cause.message}.`
    throw cause
  } finally {
    db?.close()
  }
}

function nearestFolder(file: string): string {
  let folder = dirname(file)
  while (!existsSync(folder) && dirname(folder) !== folder) folder = dirname(folder)
  return folder
}

function mayWrite(path: string): boolean {
  try {
    accessSync(path, constants.W_OK)
    return true
  } catch (cause) {
    if (cause instanceof Error && 'code' in cause) return false
    throw cause
  }
}
