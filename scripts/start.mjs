// From a fresh copy to a served book: packages, client, migrations, demo society, build, server. Later starts skip what is done.
//   PORT (3000) · HOST (127.0.0.1) · DATABASE_URL (file:./data/daybook.db) · DAYBOOK_EMPTY=1 starts a real society
import { spawn, spawnSync } from 'node:child_process'
import { createServer } from 'node:net'
import { networkInterfaces } from 'node:os'
import { join } from 'node:path'
import { ensureInstalled, requireNode } from './install.mjs'
import { loadSettingsFile } from './settings-file.mjs'

// Wherever it is started from, the folder it works in is the project's own.
process.chdir(join(import.meta.dirname, '..'))
// The book, its copies and the secret are for the user it runs as.
process.umask(0o077)
requireNode()
loadSettingsFile()

const port = process.env.PORT || '3000'
const host = process.env.HOST || '127.0.0.1'
if (!/^\d{1,5}$/.test(port) || Number(port) < 1 || Number(port) > 65_535)
  stop(`PORT must be a whole number from 1 to 65535, not ${port}.`)
await freeOrStop()

ensureInstalled()

const everywhere = host === '0.0.0.0' || host === '::'
const here = `http://${everywhere ? 'localhost' : host.includes(':') ? `[${host}]` : host}:${port}`
const address = process.env.DAYBOOK_ORIGIN || here
// What is printed here names an address; what the server writes on paper is the set one, or the one a request came to.
const env = { ...process.env, PORT: port, HOST: host, NEXT_TELEMETRY_DISABLED: '1', DAYBOOK_SHOWN_AT: address }

function stop(sentence) {
  console.error(sentence)
  process.exit(1)
}

/** A port that somebody else listens on is said before minutes are spent on the rest. */
async function freeOrStop() {
  const fault = await new Promise((resolve) => {
    const probe = createServer()
    probe.once('error', resolve)
    probe.listen(Number(port), host, () => probe.close(() => resolve(null)))
  })
  if (fault?.code === 'EADDRINUSE')
    stop(`Something else listens on port ${port} of ${host}. Stop it, or set another PORT.`)
  if (fault?.code === 'EACCES') stop(`This user may not listen on port ${port}. Set another PORT, such as 3000.`)
  if (fault) stop(`HOST must be an address of this machine, not ${host} (${fault.code}).`)
}

function step(name, args) {
  const run = spawnSync(process.execPath, args, { stdio: 'inherit', env })
  if (run.status === 0) return
  console.error(`\nDaybook could not start: ${name} failed (see above).`)
  process.exit(1)
}

const script = (file) => ['--conditions=react-server', '--import', 'tsx', file]
step('making the database client', ['scripts/generate.mjs'])
step('bringing the book up to date', script('scripts/migrate.ts'))
step('the first society', script('scripts/seed.ts'))
step('building the screens', ['scripts/build.mjs'])

console.log(`\nDaybook is at ${address}`)
if (everywhere && !process.env.DAYBOOK_ORIGIN) {
  const others = Object.values(networkInterfaces())
    .flat()
    .filter((one) => one && !one.internal && one.family === 'IPv4')
    .map((one) => `http://${one.address}:${port}`)
  if (others.length > 0) console.log(`For phones on the same network: ${others.join(' or ')}`)
}
console.log('Stop it with Ctrl-C.\n')
const server = spawn(process.execPath, ['node_modules/next/dist/bin/next', 'start', '-p', port, '-H', host], {
  stdio: 'inherit',
  env: { ...env, NODE_ENV: 'production' },
})
function end() {
  server.kill('SIGTERM')
  setTimeout(() => server.kill('SIGKILL'), 10_000).unref()
}
// systemd signals this process; the server must hear it too, and gets ten seconds to finish what is in flight.
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, end)
// npm is told to stop and does not pass it on: whoever began this process is gone then.
const parent = process.ppid
setInterval(() => {
  if (process.ppid !== parent) end()
}, 500).unref()
server.on('exit', (code, signal) => process.exit(code ?? (signal ? 0 : 1)))
