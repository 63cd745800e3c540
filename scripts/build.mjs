// Builds the screens, unless nothing they are made from has changed.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { digestOf, isFresh, keep } from './stamp.mjs'

const folder = process.env.DAYBOOK_BUILD ?? '.next'
const STAMP = join(folder, 'daybook-made-from')
/** Everything a build is made of; a test compares it with what the build says it read. */
export const MADE_FROM = [
  'app',
  'lib',
  'public',
  'proxy.ts',
  'instrumentation.ts',
  'prisma/schema.prisma',
  'next.config.js',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'scripts/generate.mjs',
]

// A build that was ended half-way has its stamp from before, and no number of its own.
if (!isFresh(STAMP, digestOf(MADE_FROM)) || !existsSync(join(folder, 'BUILD_ID'))) {
  const run = spawnSync(process.execPath, ['node_modules/next/dist/bin/next', 'build'], {
    stdio: 'inherit',
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1' },
  })
  if (run.status !== 0) process.exit(1)
  // Next may rewrite tsconfig.json while it builds: the digest is taken again, so that the next start finds it settled.
  keep(STAMP, digestOf(MADE_FROM))
}
