// A test's own book: a copy of the migrated file, opened as the one client of this process.
import { randomUUID } from 'node:crypto'
import { copyFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Book, openBook } from '@/lib/store/client'
import { FOLDER } from './book'

export async function ownBook(): Promise<{ book: Book; file: string; close: () => Promise<void> }> {
  const folder = process.env[FOLDER]
  if (!folder) throw new Error('tests/setup/book.ts did not run before this test')
  const file = join(folder, `${randomUUID()}.db`)
  copyFileSync(join(folder, 'template.db'), file)
  process.env.DATABASE_URL = `file:${file}`
  const kept = globalThis as { daybookBook?: Book }
  await kept.daybookBook?.$disconnect()
  const book = openBook(file)
  kept.daybookBook = book
  return { book, file, close: () => book.$disconnect() }
}
