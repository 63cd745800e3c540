// One act of whoever runs the server, or one import at the desk, in a process of its own that kills itself (SIGKILL)
// before the n-th step that reaches the disk, or is killed from outside while it works. Steps are the calls by which the
// program changes files, and the statements it gives to SQLite; inside one of them only the clock can kill.
//
//   node dying-act.mjs <act> <steps before it dies, or 0> <what the act works on …>
import fs from 'node:fs'
import { syncBuiltinESMExports } from 'node:module'
import Database from 'better-sqlite3'
import type { Actor } from '@/lib/facts/actor'

const [act = '', dies = '0', on = '', more = ''] = process.argv.slice(2)
let left = Number(dies)
let steps = 0
let counts = false

function step(): void {
  if (!counts) return
  steps++
  if (left > 0 && --left === 0) process.kill(process.pid, 'SIGKILL')
}

type Calls = Record<string, (this: unknown, ...values: unknown[]) => unknown>
function counted(of: object, names: readonly string[]): void {
  const calls = of as Calls
  for (const name of names) {
    const plain = calls[name]!
    calls[name] = function (...values) {
      step()
      return plain.apply(this, values)
    }
  }
}

counted(fs, ['renameSync', 'copyFileSync', 'rmSync', 'writeFileSync', 'linkSync', 'fsyncSync', 'mkdirSync'])
syncBuiltinESMExports()
const sample = new Database(':memory:')
counted(Object.getPrototypeOf(sample) as object, ['exec', 'pragma', 'close'])
counted(Object.getPrototypeOf(sample.prepare('SELECT 1')) as object, ['run', 'all', 'get'])

const now = new Date('2031-06-01T12:00:00Z')
const file = () => ({ fileName: 'typed.csv', bytes: new Uint8Array(fs.readFileSync(on)) })

async function done(): Promise<unknown> {
  switch (act) {
    case 'restore': {
      const { restoreCopy } = await import('@/lib/store/restore')
      begins()
      return restoreCopy(on, now)
    }
    case 'migrate': {
      const { migrateSafely } = await import('@/lib/store/migrate-safely')
      begins()
      return migrateSafely(now)
    }
    case 'society': {
      const { importSociety } = await import('@/lib/society/import-society')
      begins()
      return importSociety(new Map(JSON.parse(fs.readFileSync(on, 'utf8')) as [string, string][]), now)
    }
    case 'members': {
      const actor = JSON.parse(more) as Actor
      const { importMembers, previewMembers } = await import('@/lib/society/import-members')
      const seen = await previewMembers(actor, file())
      if (!seen.ok) return seen
      begins()
      return importMembers(actor, { ...file(), digest: seen.value.digest }, now)
    }
    case 'course': {
      const actor = JSON.parse(more) as Actor
      const { importCourse, previewCourse } = await import('@/lib/society/import-course')
      const seen = await previewCourse(actor, file())
      if (!seen.ok) return seen
      begins()
      return importCourse(actor, { ...file(), digest: seen.value.digest }, now)
    }
    default:
      throw new Error(`no such act: ${act}`)
  }
}

/** From here on the steps count, and the test may kill. */
function begins(): void {
  counts = true
  fs.writeSync(1, 'begins\n')
}

const answer = (await done()) as { readonly ok?: boolean; readonly sentence?: string }
if (answer.ok === false) throw new Error(answer.sentence)
fs.writeSync(1, `done ${steps}\n`)
process.exit(0)
