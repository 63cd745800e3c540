// A wrong setting is for whoever runs the installation: one line for each, not our stack. So is a book that is none.
import { existsSync, statSync } from 'node:fs'
import { dirname } from 'node:path'
import { startSettings } from '../lib/society/first-start'
import { bookFault } from '../lib/store/book-fault'
import { bookFile } from '../lib/store/client'
import { loadSettingsFile } from './settings-file.mjs'

/** The settings; ends the command with a sentence where they, or what stands where the book should be, are wrong. */
export function settingsOrStop(): ReturnType<typeof startSettings> {
  loadSettingsFile()
  try {
    const set = startSettings()
    const file = bookFile()
    becomeOwner(file)
    const fault = bookFault(file)
    if (fault === null) return set
    console.error(fault)
  } catch (fault) {
    console.error(fault instanceof Error ? fault.message : fault)
  }
  process.exit(1)
}

/** For a command that works on a book that is there: says which, and stops where there is none. */
export function bookOrStop(): void {
  settingsOrStop()
  const file = bookFile()
  if (existsSync(file)) {
    console.error(`The book: ${file}`)
    return
  }
  console.error(
    `There is no book at ${file}. DATABASE_URL names it, in the environment or in the settings file of the service (daybook.env, or the one DAYBOOK_SETTINGS names).`,
  )
  process.exit(1)
}

/** Files that root makes cannot be read by the service: root works here as the user the book belongs to. */
function becomeOwner(file: string): void {
  if (process.getuid?.() !== 0) return
  const place = [file, dirname(file)].find((path) => existsSync(path))
  if (place === undefined) return
  const { uid, gid } = statSync(place)
  if (uid === 0) return
  process.setgroups?.([gid])
  process.setgid?.(gid)
  process.setuid?.(uid)
  process.umask(0o077)
}
