import { defineConfig } from 'vitest/config'

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
  },
})
