// The `test` of every story on a screen: it also notes which forms were sent from a page, and which of the phone's facts,
// and were accepted. `acts-walked.spec.ts` reads the notes when all stories have ended.

import { appendFileSync, mkdirSync, readFileSync } from 'node:fs'
import { type Browser, type BrowserContext, test as base, type Page, type Response } from '@playwright/test'
import { outcomeOf } from '../safety/http/client'

export * from '@playwright/test'

const FOLDER = 'data/browser'
const NOTES = `${FOLDER}/walked.jsonl`

export interface Walked {
  /** A server action by its id in the build, `fact` with its kind, or `page` with its address. */
  readonly what: 'action' | 'fact' | 'page'
  readonly name: string
  /** The test that did it, as `file › title`. */
  readonly by: string
}

export const walkedSoFar = (): readonly Walked[] =>
  readFileSync(NOTES, 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as Walked)

let by = ''
const pending = new Set<Promise<void>>()
const noted = new Set<string>()

function note(what: Walked['what'], name: string): void {
  const line = `${JSON.stringify({ what, name, by } satisfies Walked)}\n`
  if (noted.has(line)) return
  noted.add(line)
  mkdirSync(FOLDER, { recursive: true })
  appendFileSync(NOTES, line)
}

async function look(response: Response): Promise<void> {
  const request = response.request()
  const { pathname } = new URL(response.url())
  const action = request.headers()['next-action']
  if (action !== undefined) {
    const headers = response.headers()
    const moved = response.status() >= 300 || headers['x-action-redirect'] !== undefined
    // The answer of a page that was left meanwhile cannot be read any more: the story that went on has seen it.
    const text = moved ? '' : await response.text().catch(() => '')
    if (outcomeOf({ status: response.status(), redirect: headers['x-action-redirect'] }, text) === 'done')
      note('action', action)
  } else if (request.method() === 'POST' && /^\/api\/group\/[^/]+\/facts$/.test(pathname) && response.ok()) {
    const sent = request.postDataJSON() as { facts?: readonly { kind: string }[] } | null
    for (const fact of sent?.facts ?? []) note('fact', fact.kind)
  } else if (request.resourceType() === 'document' && response.ok()) note('page', pathname)
}

/**
 * Once a form is saved the page takes the entry it added for Back out again; an address typed in that very moment is
 * broken off by it, and typed again. A page with unsaved work breaks the second one off too.
 */
function goPatiently(page: Page): void {
  const go = page.goto.bind(page)
  page.goto = (address, settings) =>
    go(address, settings).catch((cause: unknown) => {
      if (!String(cause).includes('net::ERR_ABORTED')) throw cause
      return go(address, settings)
    })
}

const watched = new WeakSet<BrowserContext>()

function watch(context: BrowserContext): void {
  if (watched.has(context)) return
  watched.add(context)
  context.on('response', (response) => {
    const looked = look(response)
    pending.add(looked)
    void looked.finally(() => pending.delete(looked))
  })
  const begin = (page: Page) => {
    page.on('download', (file) => note('page', new URL(file.url()).pathname))
    goPatiently(page)
  }
  context.on('page', begin)
  for (const page of context.pages()) begin(page)
}

export const test = base.extend<{ noted: undefined }, { browser: Browser }>({
  browser: [
    async ({ browser }, use) => {
      const open = browser.newContext.bind(browser)
      browser.newContext = async (...settings) => {
        const context = await open(...settings)
        watch(context)
        return context
      }
      await use(browser)
    },
    { scope: 'worker' },
  ],
  context: async ({ context }, use) => {
    watch(context)
    await use(context)
  },
  noted: [
    // biome-ignore lint/correctness/noEmptyPattern: the test library reads here which fixtures are wanted.
    async ({}, use, info) => {
      by = info.titlePath.join(' › ')
      await use(undefined)
      await Promise.all(pending)
    },
    { auto: true },
  ],
})
