import 'server-only'
import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3'
import { PrismaClient } from './generated/client'

export type Book = PrismaClient
/** The same book inside a transaction. */
export type Tx = Omit<Book, '$connect' | '$disconnect' | '$on' | '$transaction' | '$extends'>

/** The file behind DATABASE_URL, which reads `file:./data/daybook.db` when nothing is set. */
export function bookFile(): string {
  const url = process.env.DATABASE_URL ?? 'file:./data/daybook.db'
  if (!url.startsWith('file:')) throw new Error(`DATABASE_URL must begin with file:, not ${url.split(':')[0]}:`)
  return url.slice('file:'.length)
}

class Pragmas extends PrismaBetterSqlite3 {
  override async connect() {
    const connection = await super.connect()
    // FULL, not NORMAL: a score that a phone was told is received must survive a power cut.
    await connection.executeScript(
      'PRAGMA journal_mode = WAL; PRAGMA foreign_keys = ON; PRAGMA busy_timeout = 5000; PRAGMA synchronous = FULL;',
    )
    return connection
  }
}

export function openBook(file: string): Book {
  return new PrismaClient({ adapter: new Pragmas({ url: `file:${file}` }, { timestampFormat: 'iso8601' }) })
}

// One client a process: two of them in read-then-write transactions shut each other out. The development server reloads
// modules, so the one client is kept on the global object.
const kept = globalThis as { daybookBook?: Book }

export function book(): Book {
  kept.daybookBook ??= openBook(bookFile())
  return kept.daybookBook
}
