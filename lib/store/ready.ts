import 'server-only'
import { statfsSync } from 'node:fs'
import { dirname } from 'node:path'
import { isMoved } from './cannot-save'
import { book, bookFile, reading } from './client'
import { migrationsAhead } from './migrate'

const LEAST_FREE = 100 * 1024 * 1024

const kept = globalThis as { daybookStopping?: boolean }

export function nowStopping(): void {
  kept.daybookStopping = true
}

/** What keeps this server from its work, in stable words; empty when nothing does. */
export async function notReady(): Promise<readonly string[]> {
  const wrong: string[] = []
  if (kept.daybookStopping) wrong.push('stopping')
  try {
    await reading().$queryRaw`SELECT "id" FROM "Society" LIMIT 1`
    if (isMoved(book())) wrong.push('book')
    else if (migrationsAhead(bookFile()).length > 0) wrong.push('migrations')
  } catch {
    // Whatever the reason: this address only says that it is so; the log of the failing request says why.
    wrong.push('book')
  }
  try {
    const disk = statfsSync(dirname(bookFile()))
    if (disk.bavail * disk.bsize < LEAST_FREE) wrong.push('disk')
  } catch {
    wrong.push('disk')
  }
  return wrong
}
