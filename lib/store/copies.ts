// Copies of the whole book, made while it is in use. They hold every society of the installation, sign-in included, so
// they never leave the server through a screen: what a desk may take away is its own society's export.
import 'server-only'
import { createHash, randomUUID } from 'node:crypto'
import {
  chmodSync,
  closeSync,
  createReadStream,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { dirname, join } from 'node:path'
import Database from 'better-sqlite3'
import {
  type Copy,
  type CopyKind,
  type CopyManifest,
  copiesToDrop,
  copyManifest,
  newestCopy,
  type Rotation,
} from '@/lib/facts/copies'
import { bookFile } from './client'
import { oneProcess } from './held'
import { settingsOfInstallation } from './settings'

export function copiesFolder(file = bookFile()): string {
  return settingsOfInstallation().DAYBOOK_COPIES ?? join(dirname(file), 'copies')
}

/** What is wrong with a database file, in words; null when nothing is. */
export function faultOf(file: string): string | null {
  let db: Database.Database | undefined
  try {
    db = new Database(file, { readonly: true, fileMustExist: true })
    const answer = db.pragma('integrity_check', { simple: true })
    if (answer !== 'ok') return `The check of ${file} says: ${String(answer)}.`
    const loose = db.pragma('foreign_key_check') as { table: string }[]
    if (loose.length > 0) return `${loose.length} rows of ${file} point nowhere (${loose[0]?.table}).`
    return null
  } catch (cause) {
    return `${file} cannot be read as a book: ${cause instanceof Error ? cause.message : String(cause)}.`
  } finally {
    db?.close()
  }
}

export async function digestOf(file: string): Promise<string> {
  const hash = createHash('sha256')
  for await (const piece of createReadStream(file)) hash.update(piece as Buffer)
  return hash.digest('hex')
}

export function migrationsIn(db: Database.Database): readonly { name: string; checksum: string }[] {
  const there = db.prepare(`SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = '_prisma_migrations'`).get()
  if (!there) return []
  return db
    .prepare(
      'SELECT migration_name AS name, checksum FROM _prisma_migrations WHERE finished_at IS NOT NULL AND rolled_back_at IS NULL ORDER BY migration_name',
    )
    .all() as { name: string; checksum: string }[]
}

function rowsIn(db: Database.Database): Record<string, number> {
  const tables = db
    .prepare(`SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name`)
    .pluck()
    .all() as string[]
  return Object.fromEntries(
    tables.map((name) => [name, db.prepare(`SELECT count(*) FROM "${name}"`).pluck().get() as number]),
  )
}

/** One consistent, checked copy with its manifest. The book may be written to meanwhile. */
export async function makeCopy(
  kind: CopyKind,
  now: Date,
  file = bookFile(),
  folder = copiesFolder(file),
): Promise<Copy> {
  mkdirSync(folder, { recursive: true, mode: 0o700 })
  const half = join(folder, `.half-${randomUUID()}`)
  const source = new Database(file, { readonly: true, fileMustExist: true })
  try {
    // A big step: a copy is begun again whenever somebody writes between two steps.
    await source.backup(half, { progress: () => 50_000 })
  } finally {
    source.close()
  }
  try {
    chmodSync(half, 0o600)
    const db = new Database(half)
    // One file, without the journal that belongs to the book it came from.
    db.pragma('journal_mode = DELETE')
    const migrations = migrationsIn(db).map((one) => one.name)
    const rows = rowsIn(db)
    db.close()
    const fault = faultOf(half)
    if (fault) throw new Error(fault)
    flush(half)
    const manifest: CopyManifest = {
      daybookCopy: 1,
      kind,
      madeAt: now.toISOString(),
      migrations,
      rows,
      bytes: statSync(half).size,
      sha256: await digestOf(half),
    }
    const fileName = freeName(folder, `${now.toISOString().replace(/[-:]|\.\d+/g, '')}-${kind}`)
    // Whole before it has its name: a disk that is full or a power cut leaves no half manifest.
    const halfManifest = `${half}.json`
    writeFileSync(halfManifest, `${JSON.stringify(manifest, null, 2)}\n`, { mode: 0o600 })
    flush(halfManifest)
    renameSync(half, join(folder, fileName))
    renameSync(halfManifest, join(folder, `${fileName}.json`))
    flush(folder)
    return { fileName, kind, madeAt: manifest.madeAt, bytes: manifest.bytes, sha256: manifest.sha256 }
  } catch (cause) {
    for (const left of ['', '-journal', '-wal', '-shm', '.json']) rmSync(half + left, { force: true })
    throw cause
  }
}

function freeName(folder: string, stem: string): string {
  for (let n = 1; ; n++) {
    const name = n === 1 ? `${stem}.db` : `${stem}-${n}.db`
    if (!existsSync(join(folder, name))) return name
  }
}

/** On the disk, not only in the machine's memory. */
export function flush(path: string): void {
  const handle = openSync(path, 'r')
  try {
    fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}

export function manifestOf(copyFile: string): CopyManifest | null {
  const path = `${copyFile}.json`
  if (!existsSync(path)) return null
  return copyManifest.parse(JSON.parse(readFileSync(path, 'utf8')))
}

interface CopiesInFolder {
  /** The complete ones, newest first. */
  readonly copies: readonly Copy[]
  /** Names of manifests, or of the folder itself, that cannot be read: they are named and left where they are. */
  readonly unreadable: readonly string[]
}

export function copiesIn(folder = copiesFolder()): CopiesInFolder {
  if (!existsSync(/*turbopackIgnore: true*/ folder)) return { copies: [], unreadable: [] }
  const names = namesIn(folder)
  if (names === null) return { copies: [], unreadable: [folder] }
  const copies: Copy[] = []
  const unreadable: string[] = []
  for (const fileName of names) {
    const manifest = `${fileName}.json`
    if (!fileName.endsWith('.db') || !existsSync(join(folder, manifest))) continue
    const read = readManifest(join(folder, manifest))
    if (read === null) unreadable.push(manifest)
    else {
      const { kind, madeAt, bytes, sha256 } = read
      copies.push({ fileName, kind, madeAt, bytes, sha256 })
    }
  }
  return { copies: copies.sort((a, b) => b.madeAt.localeCompare(a.madeAt)), unreadable }
}

export const copyList = (folder = copiesFolder()): readonly Copy[] => copiesIn(folder).copies

/** Null where this process may not look into the folder. */
function namesIn(folder: string): readonly string[] | null {
  try {
    return readdirSync(/*turbopackIgnore: true*/ folder).sort()
  } catch (cause) {
    if (cause instanceof Error && 'code' in cause) return null
    throw cause
  }
}

/** Null for one that is empty, cut off, of another shape, or not ours to read. */
function readManifest(path: string): CopyManifest | null {
  try {
    return copyManifest.safeParse(JSON.parse(readFileSync(path, 'utf8'))).data ?? null
  } catch (cause) {
    if (cause instanceof SyntaxError || (cause instanceof Error && 'code' in cause)) return null
    throw cause
  }
}

/** Also clears away what a process that was killed while it copied left behind: it holds the whole book. */
export function rotateCopies(rotation: Rotation, now: Date, folder = copiesFolder()): readonly string[] {
  const dropped = copiesToDrop(copyList(folder), rotation, now)
  for (const { fileName } of dropped) {
    // The manifest first: what is left half-way is a file nobody takes for a copy.
    rmSync(join(folder, `${fileName}.json`), { force: true })
    rmSync(join(folder, fileName), { force: true })
  }
  for (const name of existsSync(folder) ? readdirSync(folder) : [])
    if (name.startsWith('.half-') && now.getTime() - statSync(join(folder, name)).mtimeMs > 86_400_000)
      rmSync(join(folder, name), { force: true })
  return dropped.map((copy) => copy.fileName)
}

/** Makes the scheduled copy when it is due and no other process is at it. */
export async function copyWhenDue(
  everyHours: number,
  rotation: Rotation,
  now: Date,
): Promise<Copy | 'not-due' | 'other'> {
  const folder = copiesFolder()
  mkdirSync(folder, { recursive: true, mode: 0o700 })
  const answer = await oneProcess(join(folder, 'schedule'), async () => {
    const newest = newestCopy(copyList(folder), now)
    if (newest && now.getTime() - Date.parse(newest.madeAt) < everyHours * 3_600_000) return 'not-due' as const
    const copy = await makeCopy('scheduled', now)
    rotateCopies(rotation, now, folder)
    return copy
  })
  return answer === 'other' ? 'other' : answer.done
}
