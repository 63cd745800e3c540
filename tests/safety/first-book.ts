// The kept book of the first version, unpacked for one test; with `migrated`, brought up to this version.
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { gunzipSync } from 'node:zlib'
import { openBook } from '@/lib/store/client'
import { migrate } from '@/lib/store/migrate'
import { FOLDER } from '../setup/book'

export function unpackFirstBook(name: string): string {
  const file = join(process.env[FOLDER]!, `${name}.db`)
  writeFileSync(file, gunzipSync(readFileSync(join(import.meta.dirname, 'fixtures/first-book.db.gz'))))
  return file
}

/** Makes `file` the book of this process. */
export async function openAsBook(file: string): Promise<() => Promise<void>> {
  process.env.DATABASE_URL = `file:${file}`
  const kept = globalThis as { daybookBook?: ReturnType<typeof openBook> }
  await kept.daybookBook?.$disconnect()
  const opened = openBook(file)
  kept.daybookBook = opened
  return () => opened.$disconnect()
}

export async function migratedFirstBook(name: string): Promise<{ file: string; close: () => Promise<void> }> {
  const file = unpackFirstBook(name)
  migrate(file)
  return { file, close: await openAsBook(file) }
}
