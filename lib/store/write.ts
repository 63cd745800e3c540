import 'server-only'
import { BookMoved, isMoved } from './cannot-save'
import { type Book, book, type Tx } from './client'

// Another process may hold the file for a moment (P1008 and SQLITE_BUSY), or have won a race that this transaction can
// simply run again (P2034). Everything else is a bug and is thrown.
const AGAIN = new Set(['P1008', 'P2028', 'P2034'])
const WAITS = [10, 30, 80, 200, 500, 1000]

function worthAnotherTry(cause: unknown): boolean {
  if (typeof cause !== 'object' || cause === null) return false
  const code = 'code' in cause ? String(cause.code) : ''
  const message = 'message' in cause ? String(cause.message) : ''
  return AGAIN.has(code) || /SQLITE_BUSY|database is locked|SocketTimeout/.test(message)
}

/**
 * One transaction, run again while the book is busy. `work` must do nothing but talk to `tx`: it may run twice.
 * Begin with a write: SQLite then takes the write lock at once, instead of failing when a reader wants to become one.
 */
export async function write<T>(work: (tx: Tx) => Promise<T>, on: Book = book()): Promise<T> {
  for (let attempt = 0; ; attempt++) {
    try {
      return await on.$transaction(
        async (tx) => {
          const done = await work(tx)
          // Before it is committed, and so before anybody is told that it is saved.
          if (isMoved(on)) throw new BookMoved()
          return done
        },
        { maxWait: 15_000, timeout: 20_000 },
      )
    } catch (cause) {
      const wait = WAITS[attempt]
      if (wait === undefined || !worthAnotherTry(cause)) throw cause
      await new Promise((resolve) => setTimeout(resolve, wait))
    }
  }
}

/** Several questions answered from one and the same state of the book. */
export async function readAtOnce<T>(work: (tx: Tx) => Promise<T>, on: Book): Promise<T> {
  return on.$transaction(work, { maxWait: 15_000, timeout: 20_000 })
}
