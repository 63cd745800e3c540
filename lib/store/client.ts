import 'server-only'
import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3'
import { rememberFile } from './cannot-save'
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
    return oneAtATime(connection)
  }
}

type Connection = Awaited<ReturnType<PrismaBetterSqlite3['connect']>>

// The adapter has one connection and does not keep a statement from outside out of a transaction that happens to be
// open: it would read what is not committed yet and be undone by another request's rollback. So everything outside a
// transaction waits for its turn as the transactions do.
function oneAtATime(connection: Connection): Connection {
  let last: Promise<void> = Promise.resolve()
  async function turn(): Promise<() => void> {
    const before = last
    let done: () => void = () => {}
    last = new Promise<void>((resolve) => {
      done = resolve
    })
    await before
    return done
  }
  const { queryRaw, executeRaw, startTransaction } = connection
  async function inTurn<T>(work: () => Promise<T>): Promise<T> {
    const done = await turn()
    try {
      return await work()
    } finally {
      done()
    }
  }
  connection.queryRaw = (query) => inTurn(() => queryRaw.call(connection, query))
  connection.executeRaw = (query) => inTurn(() => executeRaw.call(connection, query))
  connection.startTransaction = async (level) => {
    const done = await turn()
    try {
      const transaction = await startTransaction.call(connection, level)
      const { commit, rollback } = transaction
      transaction.commit = () => commit.call(transaction).finally(done)
      transaction.rollback = () => rollback.call(transaction).finally(done)
      return transaction
    } catch (cause) {
      done()
      throw cause
    }
  }
  return connection
}

export function openBook(file: string): Book {
  const opened = new PrismaClient({ adapter: new Pragmas({ url: `file:${file}` }, { timestampFormat: 'iso8601' }) })
  rememberFile(opened, file)
  return opened
}

// One client a process: two of them in read-then-write transactions shut each other out. The development server reloads
// modules, so the one client is kept on the global object.
const kept = globalThis as { daybookBook?: Book }

export function book(): Book {
  kept.daybookBook ??= openBook(bookFile())
  return kept.daybookBook
}

// A second connection that only reads: in WAL mode it sees what is committed and never waits for a writer, so that a
// thousand readers of a board do not stand in the way of one score.
const keptReader = globalThis as { daybookReader?: { file: string; book: Book } }

export function reading(): Book {
  const file = bookFile()
  if (keptReader.daybookReader?.file !== file) keptReader.daybookReader = { file, book: openBook(file) }
  return keptReader.daybookReader.book
}
