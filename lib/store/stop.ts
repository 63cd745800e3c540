import 'server-only'
import Database from 'better-sqlite3'
import { bookFile } from './client'

/** The last thing a server does: what stands in the journal goes into the book, so that one file holds everything. */
export function settleBook(): void {
  const db = new Database(bookFile(), { fileMustExist: true, timeout: 2000 })
  db.pragma('wal_checkpoint(TRUNCATE)')
  db.close()
}
