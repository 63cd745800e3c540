// One society's rows, table by table, out of the book and into another. Raw rows and not the client: an export is the
// book as it stands, to the last column, and a reading-in is one transaction that keeps every check of the database.
import type { SocietyId, UserId } from '@/lib/facts/ids'
import 'server-only'
import Database from 'better-sqlite3'
import type { CellKind, Stored } from '@/lib/facts/export-cells'
import { EXPORT_KINDS, type ExportKind } from '@/lib/facts/export-kinds'
import type { Fault } from '@/lib/result'
import { bookFile } from './client'
import { drawnCode, newLinkKey } from './new-links'

export interface Column {
  readonly name: string
  readonly kind: CellKind
  readonly needed: boolean
  /** The kind whose rows this column names. */
  readonly names: string | null
}

export type Row = readonly Stored[]
export type Tables = ReadonlyMap<string, { readonly columns: readonly Column[]; readonly rows: readonly Row[] }>

const CELL_KINDS: Readonly<Record<string, CellKind>> = { INTEGER: 'whole', BOOLEAN: 'yes-no', DATETIME: 'moment' }

interface TableInfo {
  name: string
  type: string
  notnull: number
  pk: number
}

/** The columns that are written, read off the database: one that a later migration adds is written too. */
export function columnsOf(db: Database.Database, kind: ExportKind): readonly Column[] {
  const links = db.pragma(`foreign_key_list("${kind.table}")`) as { table: string; from: string }[]
  const left = new Set([
    ...(kind.renewed ?? []),
    ...(kind.counted ?? []),
    'societyId',
    'updatedAt',
    'emailVerified',
    'image',
  ])
  return (db.pragma(`table_info("${kind.table}")`) as TableInfo[])
    .filter((column) => !left.has(column.name))
    .map((column) => {
      const to = links.find((link) => link.from === column.name && link.table !== 'Society')?.table
      return {
        name: column.name,
        kind: CELL_KINDS[column.type] ?? 'text',
        needed: column.notnull === 1 || column.pk > 0,
        names: EXPORT_KINDS.find((one) => one.table === to)?.name ?? null,
      }
    })
}

function ofSociety(kind: ExportKind): string {
  if (kind.table === 'Society') return '"id" = :society'
  if (kind.table === 'User') return '"id" IN (SELECT "userId" FROM "DutyHeld" WHERE "societyId" = :society)'
  if (!kind.through) return '"societyId" = :society'
  const { table, column } = kind.through
  return `"${column}" IN (SELECT "id" FROM "${table}" WHERE "societyId" = :society)`
}

/** Everything of one society, as it stands at one moment. */
export function readSociety(society: { id: string } | { slug: string }, file = bookFile()): Tables | null {
  const db = new Database(file, { readonly: true, timeout: 5000 })
  try {
    return db.transaction(() => {
      const id =
        'id' in society
          ? society.id
          : (db.prepare('SELECT "id" FROM "Society" WHERE "slug" = ?').pluck().get(society.slug) as string | undefined)
      if (!id || !db.prepare('SELECT 1 FROM "Society" WHERE "id" = ?').get(id)) return null
      return new Map(
        EXPORT_KINDS.map((kind) => {
          const columns = columnsOf(db, kind)
          const chosen = columns.map((column) => `"${column.name}"`).join(', ')
          const order = kind.order.map((column) => `"${column}"`).join(', ')
          const rows = db
            .prepare(`SELECT ${chosen} FROM "${kind.table}" WHERE ${ofSociety(kind)} ORDER BY ${order}`)
            .raw()
            .all({ society: id }) as Row[]
          return [kind.name, { columns, rows }]
        }),
      )
    })()
  } finally {
    db.close()
  }
}

export interface Written {
  readonly societyId: SocietyId
  /** Officers without a way in yet. */
  readonly newOfficers: readonly { readonly userId: UserId; readonly name: string; readonly email: string }[]
}

class NothingIsWritten extends Error {}

/** Writes everything or nothing. Rows stand in the order of the file, so that a fault can name its row. */
export function writeSociety(tables: Tables, file = bookFile()): Written | { readonly faults: readonly Fault[] } {
  const db = new Database(file, { fileMustExist: true, timeout: 5000 })
  db.pragma('foreign_keys = ON')
  const faults: Fault[] = []
  try {
    return db
      .transaction(() => {
        const societyId = String(tables.get('society')?.rows[0]?.[0] ?? '') as SocietyId
        const newOfficers: Written['newOfficers'][number][] = []
        const known = new Map<string, string>()
        for (const kind of EXPORT_KINDS) {
          const table = tables.get(kind.name)
          if (!table) continue
          writeKind(db, kind, table, societyId, known, newOfficers, faults)
          if (faults.length > 0) throw new NothingIsWritten()
        }
        return { societyId, newOfficers }
      })
      .immediate()
  } catch (cause) {
    if (cause instanceof NothingIsWritten) return { faults }
    throw cause
  } finally {
    db.close()
  }
}

function writeKind(
  db: Database.Database,
  kind: ExportKind,
  { columns, rows }: { columns: readonly Column[]; rows: readonly Row[] },
  societyId: SocietyId,
  known: Map<string, string>,
  newOfficers: Written['newOfficers'][number][],
  faults: Fault[],
): void {
  const hasSociety = (db.pragma(`table_info("${kind.table}")`) as TableInfo[]).some((one) => one.name === 'societyId')
  const names = [
    ...columns.map((column) => column.name),
    ...(hasSociety ? ['societyId'] : []),
    ...(kind.renewed ?? []),
    ...(kind.table === 'User' ? ['updatedAt'] : []),
  ]
  const insert = db.prepare(
    `INSERT INTO "${kind.table}" (${names.map((name) => `"${name}"`).join(', ')}) VALUES (${names.map(() => '?').join(', ')})`,
  )
  const at = (name: string) => columns.findIndex((column) => column.name === name)
  const userAt = kind.table === 'DutyHeld' ? at('userId') : -1
  rows.forEach((row, n) => {
    const values: Stored[] = [...row]
    if (kind.table === 'User') {
      const [id, name, email] = [at('id'), at('name'), at('email')].map((place) => String(row[place]))
      const there = db.prepare('SELECT "id" FROM "User" WHERE "email" = ?').pluck().get(email) as string | undefined
      if (there) {
        known.set(id!, there)
        return
      }
      newOfficers.push({ userId: id! as UserId, name: name!, email: email! })
    }
    if (userAt >= 0) values[userAt] = known.get(String(row[userAt])) ?? row[userAt]!
    if (hasSociety) values.push(societyId)
    for (const name of kind.renewed ?? []) values.push(renewed(db, name))
    if (kind.table === 'User') values.push(row[at('createdAt')]!)
    try {
      insert.run(...values)
    } catch (cause) {
      if (faults.length < 50) faults.push(faultOf(db, kind, n, cause))
    }
  })
}

/** What the database says about a row, as a sentence with the column it is about. */
function faultOf(db: Database.Database, kind: ExportKind, n: number, cause: unknown): Fault {
  if (!(cause instanceof Error) || !('code' in cause) || !String(cause.code).startsWith('SQLITE_CONSTRAINT'))
    throw cause
  // The first row of a file holds the names of the columns.
  const place = (column?: string) => `${kind.name}.csv, row ${n + 2}${column ? `, ${column}` : ''}`
  const check = /^CHECK constraint failed: (\w+)$/.exec(cause.message)?.[1]
  if (check) {
    const sql = String(db.prepare('SELECT sql FROM sqlite_master WHERE name = ?').pluck().get(kind.table) ?? '')
    const from = sql.indexOf(`"${check}" CHECK (`)
    const rule = from < 0 ? check : sql.slice(from + check.length + 10, sql.indexOf('\n', from)).replace(/\),?\s*$/, '')
    const column = /"(\w+)"/.exec(rule)?.[1]
    return {
      place: place(column),
      sentence: `This cannot stand in the book: it must hold that ${rule.replaceAll('"', '')}.`,
    }
  }
  const unique = /^UNIQUE constraint failed: (.+)$/.exec(cause.message)?.[1]
  if (unique) {
    const columns = unique.split(', ').map((one) => one.split('.')[1])
    return {
      place: place(columns.join(' and ')),
      sentence: 'That is in this installation’s book already, or twice in the file.',
    }
  }
  if (/FOREIGN KEY/.test(cause.message))
    return { place: place(), sentence: 'This row names another one that is not there.' }
  return { place: place(), sentence: `This cannot stand in the book: ${cause.message}.` }
}

function renewed(db: Database.Database, column: string): string {
  if (column !== 'code') return newLinkKey()
  const taken = db.prepare('SELECT 1 FROM "Group" WHERE "code" = ?')
  for (;;) {
    const code = drawnCode()
    if (!taken.get(code)) return code
  }
}

/** The columns a file of this kind must have, by the present book. */
export function exportColumns(kind: ExportKind, file = bookFile()): readonly Column[] {
  const db = new Database(file, { readonly: true })
  try {
    return columnsOf(db, kind)
  } finally {
    db.close()
  }
}

export function societyThere(slug: string, file = bookFile()): boolean {
  const db = new Database(file, { readonly: true })
  try {
    return db.prepare('SELECT 1 FROM "Society" WHERE "slug" = ?').get(slug) !== undefined
  } finally {
    db.close()
  }
}
