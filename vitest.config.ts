import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

/** Minutes long, so they begin first: a processor that waits for the last of them is a processor wasted. */
const LONG = ['tests/faults/', 'tests/rules/reference/']

class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification) => LONG.findIndex((folder) => moduleId.includes(folder)) >>> 0
    return (await super.sort(files)).sort((a, b) => rank(a) - rank(b))
  }
}

export default defineConfig({
  resolve: {
    alias: {
      '@': import.meta.dirname,
      // Outside Next the guard that keeps server code out of the browser has nothing to guard.
      'server-only': `${import.meta.dirname}/tests/stand-ins/server-only.ts`,
    },
  },
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/browser/**', 'node_modules/**'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    globalSetup: ['tests/setup/book.ts'],
    // Left alone it keeps one processor free for the terminal: half of a machine with two.
    maxWorkers: availableParallelism(),
    sequence: { sequencer: LongFirst },
  },
})
