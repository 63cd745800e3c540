// Installs the project's packages when they are missing or older than the lock file, so that one command is enough on a
// fresh copy. A native package may have to be compiled: where Node's own headers lie beside Node, they are used, and
// nothing has to be fetched for it.
import { spawnSync } from 'node:child_process'
import { existsSync, statSync } from 'node:fs'
import { dirname, join } from 'node:path'

export function ensureInstalled() {
  const done = 'node_modules/.package-lock.json'
  if (existsSync(done) && statSync(done).mtimeMs >= statSync('package-lock.json').mtimeMs) return
  const prefix = dirname(dirname(process.execPath))
  const env = { ...process.env }
  if (!env.npm_config_nodedir && existsSync(join(prefix, 'include', 'node', 'node.h'))) env.npm_config_nodedir = prefix
  const npm = process.env.npm_execpath
  console.log('Installing the packages; this takes a minute or two the first time.')
  const run = npm
    ? spawnSync(process.execPath, [npm, 'ci', '--no-audit', '--no-fund'], { stdio: 'inherit', env })
    : spawnSync('npm', ['ci', '--no-audit', '--no-fund'], { stdio: 'inherit', env })
  if (run.status !== 0) {
    console.error('The packages could not be installed (see above).')
    process.exit(run.status ?? 1)
  }
}
