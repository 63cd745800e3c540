// One migrated, empty book for the whole run; every test works on its own copy of the file (see tests/setup/copy.ts).
import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { migrate } from '../../lib/store/migrate'

export const TEMPLATE = join(process.cwd(), 'data', 'tests', 'template.db')

export default function setup() {
  rmSync(join(process.cwd(), 'data', 'tests'), { recursive: true, force: true })
  mkdirSync(join(process.cwd(), 'data', 'tests'), { recursive: true })
  migrate(TEMPLATE)
}
