// The long proofs at their full size: 20,000 days a format, 5,000 days read in every place that shows them, 100,000 spoilt
// day files, 200 deaths of the server and 40 of each restore, migration and import, 50,000 malformed requests, and the
// 2,000 rounds on a bad network. `npm test` runs all of it shorter, because everything together has to end while somebody
// waits for it.
import { spawnSync } from 'node:child_process'
import { ensureInstalled } from './install.mjs'

ensureInstalled()
const full = {
  RULES_DAYS: '20000',
  FAULT_RUNS: '2000',
  KILLS: '200',
  ACT_KILLS: '40',
  ARCHIVES: '5000',
  TYPED_TEXTS: '200000',
  FUZZ_MUTATIONS: '100000',
  AGREEMENT_RECORDS: '5000',
  AGREEMENT_DAYS: '20',
}
const run = spawnSync(
  process.execPath,
  [
    'node_modules/vitest/vitest.mjs',
    'run',
    'tests/rules/reference',
    'tests/rules/fuzz-day-file.test.ts',
    'tests/faults',
    'tests/agreement',
    'tests/facts/typed-text.test.ts',
    'tests/safety/archives.test.ts',
  ],
  { stdio: 'inherit', env: { ...full, ...process.env } },
)
// Against the built application, where the browser tests have their server.
const built = spawnSync(process.execPath, ['scripts/build.mjs'], { stdio: 'inherit' })
const harm =
  built.status === 0
    ? spawnSync(process.execPath, ['node_modules/@playwright/test/cli.js', 'test', 'tests/safety/malformed.spec.ts'], {
        stdio: 'inherit',
        env: { DAYBOOK_MALFORMED: '50000', ...process.env },
      })
    : built
process.exit(run.status || harm.status || 0)
