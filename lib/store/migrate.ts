// Applies prisma/migrations in order without the command-line tool, and records them in the form that tool uses, so
// that either can take over from the other.

import { createHash, randomUUID } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import Database from 'better-sqlite3'

const LEDGER = `CREATE TABLE IF NOT EXISTS "_prisma_migrations" (
    "id"                    TEXT PRIMARY KEY NOT NULL,
    "checksum"              TEXT NOT NULL,
    "finished_at"           DATETIME,
    "migration_name"        TEXT NOT NULL,
    "logs"                  TEXT,
    "rolled_back_at"        DATETIME,
    "started_at"            DATETIME NOT NULL DEFAULT current_timestamp,
    "applied_steps_count"   INTEGER UNSIGNED NOT NULL DEFAULT 0
)`

const FOLDER = join(process.cwd(), 'prisma', 'migrations')

/** The migrations of this version, in order. */
export function knownMigrations(folder = FOLDER): readonly { name: string; sql: string; checksum: string }[] {
  return readdirSync(folder)
    .sort()
    .flatMap((name) => {
      const path = join(folder, name, 'migration.sql')
      if (!existsSync(path)) return []
      const sql = readFileSync(path, 'utf8')
      return [{ name, sql, checksum: createHash('sha256').update(sql).digest('hex') }]
    })
}

/** Names of the migrations applied now. Throws when an applied migration was edited since: that is never right. */
export function migrate(file: string, folder = FOLDER): readonly string[] {
  mkdirSync(dirname(file), { recursive: true })
  const db = new Database(file)
  try {
    db.pragma('journal_mode = WAL')
    db.pragma('busy_timeout = 5000')
    db.exec(LEDGER)
    const done = new Map(
      (
        db
          .prepare(
            'SELECT migration_name AS name, checksum FROM _prisma_migrations WHERE finished_at IS NOT NULL AND rolled_back_at IS NULL',
          )
          .all() as { name: string; checksum: string }[]
      ).map((row) => [row.name, row.checksum]),
    )
    const applied: string[] = []
    for (const { name, sql, checksum } of knownMigrations(folder)) {
      const known = done.get(name)
      if (known === checksum) continue
      if (known) throw new Error(`Migration ${name} was changed after it was applied to ${file}.`)
      db.transaction(() => {
        db.exec(sql)
        const now = new Date().toISOString().replace('Z', '+00:00')
        db.prepare(
          'INSERT INTO _prisma_migrations (id, checksum, migration_name, started_at, finished_at, applied_steps_count) VALUES (?, ?, ?, ?, ?, 1)',
        ).run(randomUUID(), checksum, name, now, now)
      }).immediate()
      applied.push(name)
    }
    return applied
  } finally {
    db.close()
  }
}

/** Migrations this version would apply to a book that has been migrated before; nothing for a book still to be made. */
export function migrationsAhead(file: string, folder = FOLDER): readonly string[] {
  if (!existsSync(file)) return []
  const db = new Database(file, { readonly: true })
  try {
    const ledger = db.prepare(`SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = '_prisma_migrations'`).get()
    if (!ledger) return []
    const done = new Set(
      db
        .prepare('SELECT migration_name FROM _prisma_migrations WHERE finished_at IS NOT NULL')
        .pluck()
        .all() as string[],
    )
    return done.size === 0
      ? []
      : knownMigrations(folder)
          .map((one) => one.name)
          .filter((name) => !done.has(name))
  } finally {
    db.close()
  }
}
