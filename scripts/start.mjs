// From a fresh copy to a served book: packages, client, migrations, demo society, build, server. Later starts skip what is done.
//   PORT (3000) · HOST (127.0.0.1) · DATABASE_URL (file:./data/daybook.db) · DAYBOOK_EMPTY=1 starts a real society
import { spawn, spawnSync } from 'node:child_process'
import { ensureInstalled } from './install.mjs'

const [major, minor] = process.versions.node.split('.').map(Number)
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Daybook needs Node 20.19 or later; this is ${process.version}.`)
  process.exit(1)
}

ensureInstalled()

const port = process.env.PORT ?? '3000'
const host = process.env.HOST ?? '127.0.0.1'
const address = process.env.DAYBOOK_ORIGIN ?? `http://${host === '0.0.0.0' ? '127.0.0.1' : host}:${port}`
const env = { ...process.env, PORT: port, NEXT_TELEMETRY_DISABLED: '1', DAYBOOK_ORIGIN: address }

function step(name, args) {
  const run = spawnSync(process.execPath, args, { stdio: 'inherit', env })
  if (run.status === 0) return
  console.error(`\nDaybook could not start: ${name} failed (see above).`)
  process.exit(run.status ?? 1)
}

const script = (file) => ['--conditions=react-server', '--import', 'tsx', file]
step('making the database client', ['scripts/generate.mjs'])
step('bringing the book up to date', script('scripts/migrate.ts'))
step('the first society', script('scripts/seed.ts'))
step('building the screens', ['scripts/build.mjs'])

console.log(`\nDaybook is at ${address}\nStop it with Ctrl-C.\n`)
const server = spawn(process.execPath, ['node_modules/next/dist/bin/next', 'start', '-p', port, '-H', host], {
  stdio: 'inherit',
  env: { ...env, NODE_ENV: 'production' },
})
// npm and systemd signal this process; the server must hear it too, and gets ten seconds to finish what is in flight.
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
  process.on(signal, () => {
    server.kill('SIGTERM')
    setTimeout(() => server.kill('SIGKILL'), 10_000).unref()
  })
}
server.on('exit', (code, signal) => process.exit(code ?? (signal ? 0 : 1)))
