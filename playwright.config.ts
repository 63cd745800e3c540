import { readdirSync, readFileSync } from 'node:fs'
import { defineConfig } from '@playwright/test'

const port = Number(process.env.BROWSER_PORT ?? 3190)

const SAFETY = ['safety/acts-over-http.spec.ts', 'safety/content-policy.spec.ts', 'safety/malformed.spec.ts']
const LAST = 'browser/acts-walked.spec.ts'
// Five minutes on one book: begun first, or one processor waits for it at the end.
const LONG = 'browser/whole-day.spec.ts'
// What is held to seconds has the machine to itself.
const TIMED = 'browser/signal.spec.ts'
const own = readdirSync('tests/browser')
  .filter(
    (file) => file.endsWith('.spec.ts') && readFileSync(`tests/browser/${file}`, 'utf8').includes("from './own-book'"),
  )
  .map((file) => `browser/${file}`)
const TRACES = ['on', 'retain-on-failure', 'on-first-retry'] as const
const byName = process.argv.some((one) => /\.spec/.test(one))
// Whoever names a file wants that file alone.
const stories = byName ? [] : ['long', 'own book', 'shared book']

// The built application on a book of its own, seeded afresh: every run begins with the same society on the same day.
export default defineConfig({
  testDir: 'tests',
  projects: [
    { name: 'long', testMatch: LONG },
    // Two at a time: those that share one server follow each other, and beside them go the stories on servers of their
    // own; when the first are through, two of the others at once.
    {
      name: 'shared book',
      // After the stories: the policy of every screen, every act over HTTP, and some of the malformed requests (all 50,000
      // in `npm run prove`).
      testMatch: ['browser/**/*.spec.ts', ...SAFETY],
      testIgnore: [...own, LAST],
      workers: 1,
    },
    { name: 'own book', testMatch: own, testIgnore: [TIMED, LONG] },
    { name: 'timed', testMatch: TIMED, dependencies: stories, workers: 1 },
    { name: 'acts', testMatch: LAST, dependencies: byName ? [] : ['timed'], workers: 1 },
  ],
  timeout: 90_000,
  expect: { timeout: 20_000 },
  workers: 2,
  fullyParallel: false,
  // On a crowded machine a story may meet a moment it does not wait for: it is walked once more from its beginning, on a
  // book of its own, and the run names it as flaky. What fails twice fails.
  retries: byName ? 0 : 1,
  reporter: [
    ['list'],
    ['json', { outputFile: process.env.PLAYWRIGHT_JSON_OUTPUT_NAME ?? 'data/reports/browser.json' }],
  ],
  outputDir: 'test-results',
  use: {
    baseURL: `http://127.0.0.1:${port}`,
    browserName: 'chromium',
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    // Recording every step costs a fifth of the run: for whoever looks for a fault, TRACE=retain-on-failure.
    trace: TRACES.find((one) => one === process.env.TRACE) ?? 'off',
    launchOptions: {
      executablePath: process.env.CHROME_PATH ?? '/usr/bin/chromium',
      args: [
        ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--disable-dev-shm-usage',
      ],
    },
  },
  webServer: {
    command: 'node scripts/browser-server.mjs',
    url: `http://127.0.0.1:${port}/house-style`,
    reuseExistingServer: false,
    timeout: 240_000,
    gracefulShutdown: { signal: 'SIGTERM', timeout: 8_000 },
    env: { PORT: String(port) },
  },
})
