// Makes the database client from prisma/schema.prisma. The generator asks for an engine it never runs: any executable
// satisfies it, so nothing has to be fetched.
import { spawnSync } from 'node:child_process'
import { giveIdTypes } from './id-types.mjs'
import { digestOf, isFresh, keep } from './stamp.mjs'

const STAMP = 'lib/store/generated/.made-from'
const digest = digestOf(['prisma/schema.prisma', 'prisma.config.ts', 'package-lock.json', 'scripts/id-types.mjs'])

if (!isFresh(STAMP, digest)) {
  const run = spawnSync(process.execPath, ['node_modules/prisma/build/index.js', 'generate'], {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: {
      ...process.env,
      PRISMA_SCHEMA_ENGINE_BINARY: process.env.PRISMA_SCHEMA_ENGINE_BINARY ?? process.execPath,
      CHECKPOINT_DISABLE: '1',
      PRISMA_HIDE_UPDATE_MESSAGE: '1',
    },
  })
  if (run.status !== 0) {
    process.stderr.write(run.stdout)
    process.stderr.write(run.stderr)
    process.exit(run.status ?? 1)
  }
  giveIdTypes('lib/store/generated/models')
  keep(STAMP, digest)
}
