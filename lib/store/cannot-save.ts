// A disk that is full, a file that may not be written to, a book that was moved away under its server: nothing may be
// called received then, and whoever waits is told why.
import 'server-only'
import { statSync } from 'node:fs'

/** The file at the address of the book is not the one this process has open: what is saved would be saved elsewhere. */
export class BookMoved extends Error {
  override readonly name = 'BookMoved'
  readonly code = 'BOOK_MOVED'
  constructor() {
    super('The file of the book was moved, replaced or deleted while the server had it open.')
  }
}

interface Opened {
  readonly file: string
  /** Which file it was when it was opened; null until it is there. */
  inode: bigint | null
}

const opened = new WeakMap<object, Opened>()

export function rememberFile(client: object, file: string): void {
  opened.set(client, { file, inode: inodeOf(file) })
}

export function isMoved(client: object): boolean {
  const known = opened.get(client)
  if (!known) return false
  const inode = inodeOf(known.file)
  known.inode ??= inode
  return known.inode !== inode
}

function inodeOf(file: string): bigint | null {
  return statSync(file, { bigint: true, throwIfNoEntry: false })?.ino ?? null
}

const FULL =
  /SQLITE_(FULL|READONLY|IOERR|CANTOPEN)|database or disk is full|readonly database|disk I\/O error|unable to open database|ENOSPC|EROFS/

/** Is this a fault of the place the book is kept in, and not of the program? */
export function isCannotSave(cause: unknown): boolean {
  for (let one = cause, depth = 0; one !== null && typeof one === 'object' && depth < 5; depth++) {
    if (one instanceof BookMoved) return true
    const { code, message } = one as { code?: unknown; message?: unknown }
    if (FULL.test(`${String(code)} ${String(message)}`)) return true
    one = (one as { cause?: unknown }).cause
  }
  return false
}
