// Builds the screens, unless nothing they are made from has changed.
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { digestOf, isFresh, keep } from './stamp.mjs'

const folder = process.env.DAYBOOK_BUILD ?? '.next'
const STAMP = join(folder, 'daybook-made-from')
const digest = digestOf([
  'app',
  'lib',
  'public',
  'prisma/schema.prisma',
  'next.config.js',
  'package-lock.json',
  'tsconfig.json',
  'scripts/generate.mjs',
])

if (!isFresh(STAMP, digest)) {
  const run = spawnSync(process.execPath, ['node_modules/next/dist/bin/next', 'build'], {
    stdio: 'inherit',
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1' },
  })
  if (run.status !== 0) process.exit(run.status ?? 1)
  // Next may rewrite tsconfig.json while it builds: the digest is taken again, so that the next start finds it settled.
  keep(
    STAMP,
    digestOf([
      'app',
      'lib',
      'public',
      'prisma/schema.prisma',
      'next.config.js',
      'package-lock.json',
      'tsconfig.json',
      'scripts/generate.mjs',
    ]),
  )
}
