// The server the browser tests walk on: a fresh book, seeded, and the build that is there.
import { rmSync } from 'node:fs'

rmSync('data/browser', { recursive: true, force: true })
process.env.DATABASE_URL = 'file:./data/browser/book.db'
process.env.DAYBOOK_SECRET_FILE = 'data/browser/secret'
await import('./start.mjs')
