import 'server-only'
import { mkdirSync } from 'node:fs'
import { dirname } from 'node:path'
import Database from 'better-sqlite3'

// Every server holds a shared lock on a small file beside its book, from start to end. The operating system lets go of
// it when the process dies, however it dies: no stale lock, no process number that belongs to somebody else by now.

const kept = globalThis as { daybookHeld?: Database.Database }

function openLock(file: string, wait: number): Database.Database {
  mkdirSync(dirname(file), { recursive: true })
  const db = new Database(`${file}-held`, { timeout: wait })
  db.exec('CREATE TABLE IF NOT EXISTS held (one)')
  return db
}

const isBusy = (cause: unknown) =>
  cause instanceof Error && 'code' in cause && /^SQLITE_(BUSY|LOCKED)/.test(String(cause.code))

/** Says that a server works with this book, until the process ends. */
export function holdBook(file: string): void {
  if (kept.daybookHeld) return
  const db = openLock(file, 10_000)
  db.exec('BEGIN')
  db.prepare('SELECT * FROM held').all()
  kept.daybookHeld = db
}

/** Runs `work` while no server holds the book and none can start with it. 'held' when one does. */
export async function alone<T>(file: string, work: () => Promise<T>): Promise<{ done: T } | 'held'> {
  let db: Database.Database | undefined
  try {
    db = openLock(file, 0)
    db.exec('BEGIN EXCLUSIVE')
  } catch (cause) {
    db?.close()
    if (isBusy(cause)) return 'held'
    throw cause
  }
  try {
    return { done: await work() }
  } finally {
    db.close()
  }
}

/** Runs `work` unless another process is at it at this moment. */
export async function oneProcess<T>(lockFile: string, work: () => Promise<T>): Promise<{ done: T } | 'other'> {
  const answer = await alone(lockFile, work)
  return answer === 'held' ? 'other' : answer
}
