// The built application on a book of its own, for benches and browser tests that need a server to themselves.
import { type ChildProcess, spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { get } from 'node:http'
import { createServer } from 'node:net'

export async function freePort(): Promise<number> {
  const probe = createServer().listen(0, '127.0.0.1')
  await once(probe, 'listening')
  const { port } = probe.address() as { port: number }
  probe.close()
  await once(probe, 'close')
  return port
}

const answers = (address: string) =>
  new Promise<boolean>((resolve) => {
    get(address, (response) => {
      response.resume()
      resolve(true)
    }).on('error', () => resolve(false))
  })

export interface BenchServer {
  readonly base: string
  readonly port: number
  readonly pid: number
  /** SIGTERM; the exit code, or null when it had to be killed. */
  readonly stop: () => Promise<number | null>
  /** SIGKILL, as when the machine loses its power. */
  readonly kill: () => Promise<void>
}

/** Builds what has changed since the last build, and starts it; on the port it had before, if it is named. */
export async function benchServer(file: string, at?: number, more: Record<string, string> = {}): Promise<BenchServer> {
  const built = spawnSync(process.execPath, ['scripts/build.mjs'], { stdio: ['ignore', 'ignore', 'inherit'] })
  if (built.status !== 0) throw new Error('The screens could not be built.')
  const port = at ?? (await freePort())
  const base = `http://127.0.0.1:${port}`
  const server: ChildProcess = spawn(
    process.execPath,
    ['node_modules/next/dist/bin/next', 'start', '-p', String(port), '-H', '127.0.0.1'],
    {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: {
        ...process.env,
        NODE_ENV: 'production',
        NEXT_TELEMETRY_DISABLED: '1',
        DATABASE_URL: `file:${file}`,
        DAYBOOK_ORIGIN: base,
        DAYBOOK_SECRET: 'only for the bench, and as long as it has to be',
        ...more,
      },
    },
  )
  const stop = async () => {
    if (server.exitCode !== null || server.signalCode !== null) return server.exitCode
    const gone = once(server, 'exit')
    server.kill('SIGTERM')
    const late = setTimeout(() => server.kill('SIGKILL'), 8_000)
    await gone
    clearTimeout(late)
    return server.exitCode
  }
  const kill = async () => {
    const gone = once(server, 'exit')
    server.kill('SIGKILL')
    await gone
  }
  for (let tries = 0; tries < 600; tries++) {
    if (await answers(`${base}/manifest.webmanifest`)) return { base, port, pid: server.pid!, stop, kill }
    if (server.exitCode !== null) break
    await new Promise((resolve) => setTimeout(resolve, 200))
  }
  await stop()
  throw new Error('The built server did not answer.')
}
