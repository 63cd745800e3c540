// Starts, kills and starts again the server of server.ts, bundled once a test file so that a new life costs no compiling.
import { type ChildProcess, fork } from 'node:child_process'
import { once } from 'node:events'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { build, type Plugin } from 'esbuild'
import { FOLDER } from '../setup/book'
import type { Said } from './server'

/** The engine is written into a script as text of four megabytes: read from a file it need not be parsed at every start. */
const engineBeside = (folder: string): Plugin => ({
  name: 'engine-beside',
  setup(bundler) {
    bundler.onLoad({ filter: /wasm-base64\.mjs$/ }, async ({ path }) => {
      const { wasm } = (await import(path)) as { wasm: string }
      const file = join(folder, 'engine.wasm')
      writeFileSync(file, Buffer.from(wasm, 'base64'))
      return { contents: `import { readFileSync } from 'node:fs'; export const wasm = readFileSync('${file}')` }
    })
  },
})

export const bundledServer = (name: string): Promise<string> => bundled('server.ts', name)

export async function bundled(entry: string, name: string): Promise<string> {
  const outfile = join(process.env[FOLDER]!, `${name}.mjs`)
  await build({
    entryPoints: [join(import.meta.dirname, entry)],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    conditions: ['react-server'],
    external: ['better-sqlite3', 'pino', 'exceljs'],
    banner: { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" },
    plugins: [engineBeside(process.env[FOLDER]!)],
    logLevel: 'error',
  })
  return outfile
}

export class ServerProcess {
  #child: ChildProcess | null = null
  #said: ((said: Said) => void)[] = []
  port = 0
  /** Times that it was really killed, and where each life ended, by SIGKILL or by the plug. */
  kills = 0
  readonly ends: string[] = []
  /** What went wrong inside, if anything did. */
  errors = ''

  constructor(
    readonly bundle: string,
    public file: string,
    readonly env: Record<string, string> = {},
  ) {}

  get base(): string {
    return `http://127.0.0.1:${this.port}`
  }

  async start(): Promise<void> {
    const child = fork(this.bundle, {
      // The engine's wasm is compiled at every start: the quick compiler halves what a life costs, and so does room for
      // the garbage of a start.
      execArgv: ['--liftoff-only', '--max-semi-space-size=64', '--min-semi-space-size=32'],
      env: { ...process.env, ...this.env, DATABASE_URL: `file:${this.file}` },
      stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
    })
    this.#child = child
    child.stdout!.on('data', (text) => this.ends.push(...String(text).trim().split('\n')))
    child.stderr!.on('data', (text) => {
      this.errors += String(text)
    })
    child.on('message', (said: Said) => this.#said.shift()?.(said))
    this.port = (await this.#next()).port!
  }

  #next(): Promise<Said> {
    const child = this.#child!
    return new Promise((resolve, reject) => {
      const ended = () => reject(new Error(`the server ended by itself: ${this.errors}`))
      child.once('exit', ended)
      this.#said.push((said) => {
        child.off('exit', ended)
        resolve(said)
      })
    })
  }

  /** Another book for the running process. */
  async open(file: string): Promise<void> {
    const opened = this.#next()
    this.#child!.send({ file })
    await opened
    this.file = file
  }

  /** Ask before the request that pulls the plug is sent. */
  async plugPulled(): Promise<void> {
    const { file } = await this.#next()
    this.file = file!
  }

  /** The process has killed itself, or is killed now; answers when it is gone. */
  async killed(): Promise<void> {
    const child = this.#child!
    if (child.exitCode === null && child.signalCode === null) {
      const gone = once(child, 'exit')
      child.kill('SIGKILL')
      await gone
    }
    if (child.signalCode !== 'SIGKILL') throw new Error(`the server ended with ${child.exitCode}: ${this.errors}`)
    this.kills++
    this.#said = []
  }

  /** Waits for a process that kills itself. */
  async gone(): Promise<void> {
    const child = this.#child!
    if (child.exitCode === null && child.signalCode === null) await once(child, 'exit')
    await this.killed()
  }

  async stop(): Promise<void> {
    const child = this.#child
    if (!child || child.exitCode !== null || child.signalCode !== null) return
    const gone = once(child, 'exit')
    child.kill('SIGKILL')
    await gone
  }
}
