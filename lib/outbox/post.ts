// The way to the server. What is not an answer in our own form is 'unknown' and is tried again: a score must never be
// called received, refused or lost because of something a network between here and there made up.

import { type CardPack, SCORE_VERSION } from '@/lib/facts/card-pack'
import type { DeviceId, EntryId } from '@/lib/facts/ids'
import { isCardPack, isDeliveryAnswer, saidNo } from './check'
import type { Post, Posted } from './sender'

const PATIENCE_MS = 20_000
// Set when the page and the worker are built.
const APP = process.env.DAYBOOK_APP_BUILD

export const address = (link: string) => `/api/group/${encodeURIComponent(link)}`

interface Got {
  readonly response: Response
  readonly body: unknown
}

async function ask(url: string, init: RequestInit, cut?: AbortSignal): Promise<Got | null> {
  try {
    const response = await fetch(url, {
      ...init,
      cache: 'no-store',
      credentials: 'same-origin',
      redirect: 'error',
      signal: endOf(cut),
    })
    return { response, body: response.status === 304 ? null : await response.json() }
  } catch {
    // No signal, too slow, cut short, or not our server's words: all the same to the outbox, it tries again.
    return null
  }
}

/** The end of our patience, or of the asker's. Written out: older phones cannot join two signals. */
function endOf(cut: AbortSignal | undefined): AbortSignal {
  const patience = AbortSignal.timeout(PATIENCE_MS)
  if (!cut) return patience
  const either = new AbortController()
  for (const signal of [patience, cut]) signal.addEventListener('abort', () => either.abort(), { once: true })
  if (cut.aborted) either.abort()
  return either.signal
}

const asked = (response: Response) => {
  const seconds = Number(response.headers.get('retry-after'))
  return Number.isFinite(seconds) && seconds > 0 ? Math.min(seconds, 600) : undefined
}

/** The link is over: unknown, revoked or past its day. */
function ended(response: Response, body: unknown): Extract<Posted, { kind: 'ended' }> | null {
  if (response.status !== 404 && response.status !== 410) return null
  const no = saidNo(body)
  return no ? { kind: 'ended', code: no.code, sentence: no.sentence } : null
}

export const postDelivery: Post = async (link, delivery, cut) => {
  const init = {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(APP ? { ...delivery, app: APP } : delivery),
  }
  const got = await ask(`${address(link)}/facts`, init, cut)
  if (!got) return { kind: 'unknown' }
  const { response, body } = got
  if (response.ok && isDeliveryAnswer(body)) return { kind: 'answered', answer: body }
  const no = saidNo(body)
  if (no?.code === 'gap' && no.expected) return { kind: 'gap', expected: no.expected }
  const waitSeconds = asked(response)
  const heard = no !== null || waitSeconds !== undefined
  return ended(response, body) ?? { kind: 'unknown', heard, waitSeconds, sentence: no?.sentence }
}

export type Fetched =
  | { readonly kind: 'pack'; readonly pack: CardPack; readonly tag?: string | null }
  /** The cards read as they did; the day's scores are now at this version. */
  | { readonly kind: 'same'; readonly scoreVersion: number }
  | { readonly kind: 'ended'; readonly code: string; readonly sentence: string }
  /** No answer, or none that says how the cards stand. `heard`: it was the server itself that answered. */
  | { readonly kind: 'unknown'; readonly heard?: boolean }

/** What the phone says of itself while it looks, for the desk's view of the course. */
export interface Looking {
  readonly deviceId: DeviceId
  readonly unsent: number
  /** Whose phone it is, and the how manyeth answer to that question this is. */
  readonly holder?: { readonly entryId: EntryId; readonly number: number }
}

/** `tag`: of the cards this phone has. */
export async function fetchPack(
  link: string,
  looking?: Looking,
  tag?: string | null,
  cut?: AbortSignal,
): Promise<Fetched> {
  const holder = looking?.holder
  const headers: Record<string, string> = {
    ...(looking ? { 'x-daybook-device': looking.deviceId, 'x-daybook-unsent': String(looking.unsent) } : {}),
    ...(holder ? { 'x-daybook-holder': holder.entryId, 'x-daybook-holds': String(holder.number) } : {}),
    ...(looking && APP ? { 'x-daybook-app': APP } : {}),
    ...(tag ? { 'if-none-match': tag } : {}),
  }
  const got = await ask(address(link), { method: 'GET', headers }, cut)
  if (!got) return { kind: 'unknown' }
  const { response, body } = got
  // Without a version of ours it may be anybody's 304.
  if (tag && response.status === 304 && response.headers.has(SCORE_VERSION))
    return { kind: 'same', scoreVersion: Number(response.headers.get(SCORE_VERSION)) }
  if (response.ok && isCardPack(body))
    return { kind: 'pack', pack: body, tag: response.headers.get('etag')?.replace(/^W\//, '') ?? null }
  return ended(response, body) ?? { kind: 'unknown', heard: saidNo(body) !== null }
}
