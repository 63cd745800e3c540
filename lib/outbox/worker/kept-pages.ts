// The card's pages on the phone, each with everything it is made of. A page is replaced only when all the files of its
// new version are here, so that an update in the middle of a round never leaves half of two versions.

import { OUR_PAGE, PAGES } from '../signals'

const FILES = 'daybook-card-files'

const FILE = /\/_next\/static\/[^"'\\\s)<>]+/g
const IN_SHEET = /url\(\s*["']?([^"')]+)["']?\s*\)/g

/** Built files named anywhere in a page: scripts, sheets, preloaded fonts, and what its data will ask for. */
export function filesOfPage(html: string, origin: string): readonly string[] {
  const found = new Set<string>()
  for (const [name] of html.matchAll(FILE)) found.add(new URL(name.replace(/&amp;/g, '&'), origin).href)
  return [...found]
}

/** Fonts and pictures a sheet names, from where the sheet lies. */
export function filesOfSheet(css: string, sheet: string): readonly string[] {
  const found = new Set<string>()
  for (const [, name] of css.matchAll(IN_SHEET)) {
    if (name && !name.startsWith('data:')) found.add(new URL(name, sheet).href)
  }
  return [...found].filter((each) => new URL(each).origin === new URL(sheet).origin)
}

const isOurs = (response: Response) =>
  response.ok && !response.redirected && (response.headers.get('content-type') ?? '').includes('text/html')

/** Fonts whose range a name may never need are left out: they are fetched, and then kept, when one does. */
const isFont = (url: string) => /\.woff2?(?:\?|$)/.test(url)

async function keepFile(files: Cache, url: string): Promise<readonly string[]> {
  const held = await files.match(url)
  const response = held ?? (await fetch(url))
  if (!response.ok) throw new Error(`daybook: ${url} answered ${response.status}`)
  if (!held) await files.put(url, response.clone())
  return /\.css(?:\?|$)/.test(url) ? filesOfSheet(await response.text(), url) : []
}

let oneByOne: Promise<unknown> = Promise.resolve()

/** One at a time: what is tidied after one page are files of another that is not put down yet. */
export function keepPage(page: string, alsoSeen: readonly string[]): Promise<void> {
  const turn = oneByOne.then(() => fetchAndKeep(page, alsoSeen))
  oneByOne = turn.catch(() => undefined)
  return turn
}

/** Fetches a page and what it is made of; the page itself is put down last. */
async function fetchAndKeep(page: string, alsoSeen: readonly string[]): Promise<void> {
  const response = await fetch(page, { credentials: 'same-origin' })
  if (!isOurs(response)) return
  const copy = response.clone()
  const html = await response.text()
  if (!html.includes(OUR_PAGE)) return
  const files = await caches.open(FILES)
  const seen = new Set(alsoSeen)
  const named = new Set([...filesOfPage(html, page), ...alsoSeen])
  const inSheets = await Promise.all([...named].map((url) => keepFile(files, url)))
  const fonts = inSheets.flat().filter((url) => !isFont(url) || seen.has(url))
  await Promise.all(fonts.map((url) => keepFile(files, url)))
  await (await caches.open(PAGES)).put(page, copy)
  await tidy(files, [...named, ...fonts])
}

const MONTH_MS = 31 * 24 * 3600 * 1000

/** Drops pages of days long past, and files no kept page is made of. */
async function tidy(files: Cache, justKept: readonly string[]): Promise<void> {
  const pages = await caches.open(PAGES)
  const wanted = new Set(justKept)
  for (const request of await pages.keys()) {
    const response = await pages.match(request)
    if (!response) continue
    const age = Date.now() - Date.parse(response.headers.get('date') ?? new Date().toUTCString())
    if (age > MONTH_MS) await pages.delete(request)
    else for (const url of filesOfPage(await response.text(), request.url)) wanted.add(url)
  }
  for (const request of await files.keys()) {
    if (!wanted.has(request.url) && !isFont(request.url)) await files.delete(request)
  }
}

export const keptPage = async (url: string) => (await caches.open(PAGES)).match(url, { ignoreSearch: true })

/** Built files carry their content in their name: what is here is right. Anything else is fetched, and kept. */
export async function keptFile(request: Request): Promise<Response> {
  const files = await caches.open(FILES)
  const held = await files.match(request)
  if (held) return held
  const response = await fetch(request)
  if (response.ok) await files.put(request, response.clone())
  return response
}
