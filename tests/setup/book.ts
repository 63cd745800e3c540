// One migrated, empty book for the whole run; every test works on its own copy of the file (see tests/setup/copy.ts).
// The folder is the run's own, so that two runs in one checkout do not clear each other's books away.
import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { migrate } from '../../lib/store/migrate'

export const FOLDER = 'DAYBOOK_TEST_FOLDER'

export default function setup() {
  const folder = join(process.cwd(), 'data', 'tests', String(process.pid))
  mkdirSync(folder, { recursive: true })
  process.env[FOLDER] = folder
  migrate(join(folder, 'template.db'))
  return () => rmSync(folder, { recursive: true, force: true })
}
