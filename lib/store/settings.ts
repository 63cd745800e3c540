import 'server-only'
import { randomBytes } from 'node:crypto'
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { dateIn } from '@/lib/facts/calendar'
import { type Settings, settings } from '@/lib/facts/settings'
import { bookFile } from './client'

let parsed: Settings | undefined

/** Parsed once a process. A wrong setting is a fault of the installation: the start stops with its sentence. */
export function settingsOfInstallation(): Settings {
  if (parsed) return parsed
  const read = settings.safeParse(process.env)
  if (!read.success) throw new Error(read.error.issues.map((issue) => issue.message).join('\n'))
  parsed = read.data
  return parsed
}

export function zoneOfInstallation(): string {
  return settingsOfInstallation().DAYBOOK_ZONE ?? Intl.DateTimeFormat().resolvedOptions().timeZone
}

export function today(now: Date = new Date()): string {
  return dateIn(now, zoneOfInstallation())
}

/** The secret behind the session cookies: from the settings, or made once and kept beside the book. */
export function secretOfInstallation(): string {
  const set = settingsOfInstallation().DAYBOOK_SECRET
  if (set) return set
  const file = join(dirname(bookFile()), 'secret')
  const kept = readSecret(file)
  if (kept) return kept
  mkdirSync(dirname(file), { recursive: true })
  try {
    // wx: of two processes that start together only one may write it, the other reads what was written.
    writeFileSync(file, randomBytes(32).toString('base64url'), { mode: 0o600, flag: 'wx' })
  } catch (fault) {
    if ((fault as NodeJS.ErrnoException).code !== 'EEXIST') throw fault
  }
  const written = readSecret(file)
  if (!written) throw new Error(`The secret in ${file} is empty. Remove the file and start again.`)
  return written
}

function readSecret(file: string): string | null {
  try {
    return readFileSync(file, 'utf8').trim() || null
  } catch (fault) {
    if ((fault as NodeJS.ErrnoException).code === 'ENOENT') return null
    throw fault
  }
}
