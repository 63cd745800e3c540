// The service, and every command typed by hand, read the same settings: from the environment, and what is not set there
// from daybook.env beside package.json, or from the file that DAYBOOK_SETTINGS names.
import { existsSync } from 'node:fs'
import { loadEnvFile } from 'node:process'

export function loadSettingsFile() {
  const named = process.env.DAYBOOK_SETTINGS
  const file = named || 'daybook.env'
  if (existsSync(file)) loadEnvFile(file)
  else if (named) {
    console.error(`DAYBOOK_SETTINGS names ${named}, and there is no such file.`)
    process.exit(1)
  }
}
