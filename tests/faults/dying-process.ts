// Runs dying-act.ts once and says how it ended.
import { spawn } from 'node:child_process'
import { once } from 'node:events'

export interface Death {
  /** Before which step it kills itself; 0: it does not. */
  readonly step?: number
  /** Milliseconds after it began at which it is killed from outside. */
  readonly after?: number
}

export interface Ending {
  readonly died: boolean
  readonly steps: number
  /** From its beginning to its end. */
  readonly took: number
}

export async function actThatDies(
  bundle: string,
  book: string,
  [act, ...on]: readonly string[],
  { step = 0, after }: Death = {},
): Promise<Ending> {
  const child = spawn(process.execPath, [bundle, act!, String(step), ...on], {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, DATABASE_URL: `file:${book}`, DAYBOOK_LOG: 'silent' },
  })
  let said = ''
  let wrong = ''
  let began = 0
  child.stderr.on('data', (text) => {
    wrong += text
  })
  child.stdout.on('data', (text) => {
    said += text
    if (began || !said.includes('begins')) return
    began = performance.now()
    if (after !== undefined) setTimeout(() => child.kill('SIGKILL'), after)
  })
  const [code, signal] = (await once(child, 'close')) as [number | null, string | null]
  const took = performance.now() - began
  if (signal === 'SIGKILL') return { died: true, steps: 0, took }
  if (code !== 0) throw new Error(`${act} ended with ${code}: ${wrong || said}`)
  return { died: false, steps: Number(/done (\d+)/.exec(said)?.[1]), took }
}
