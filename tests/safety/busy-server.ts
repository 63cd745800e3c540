// Stands for a server in the rehearsal of a restore: holds the book and writes a society every few milliseconds.
import Database from 'better-sqlite3'
import { holdBook } from '@/lib/store/held'

const file = process.argv[2]!
holdBook(file)
const db = new Database(file)
db.pragma('journal_mode = WAL')
const add = db.prepare('INSERT INTO "Society" (id, slug, name, createdAt) VALUES (?, ?, ?, ?)')
let n = 0
setInterval(() => {
  n++
  add.run(`busy-${n}`, `busy-${n}`, 'Busy', '2026-06-13T10:00:00.000+00:00')
  if (n === 3) process.stdout.write('busy\n')
}, 3)
