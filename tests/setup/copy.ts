// A test's own book: a copy of the migrated file, opened as the one client of this process.
import { randomUUID } from 'node:crypto'
import { copyFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Book, openBook } from '@/lib/store/client'
import { TEMPLATE } from './book'

export async function ownBook(): Promise<{ book: Book; file: string; close: () => Promise<void> }> {
  const file = join(process.cwd(), 'data', 'tests', `${randomUUID()}.db`)
  copyFileSync(TEMPLATE, file)
  process.env.DATABASE_URL = `file:${file}`
  const kept = globalThis as { daybookBook?: Book }
  await kept.daybookBook?.$disconnect()
  const book = openBook(file)
  kept.daybookBook = book
  return { book, file, close: () => book.$disconnect() }
}
