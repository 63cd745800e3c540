// The way to the server. What is not an answer in our own form is 'unknown' and is tried again: a score must never be
// called received, refused or lost because of something a network between here and there made up.

import type { CardPack } from '@/lib/facts/card-pack'
import { isCardPack, isDeliveryAnswer, saidNo } from './check'
import type { Post, Posted } from './sender'

const PATIENCE_MS = 20_000
// Set when the page and the worker are built.
const APP = process.env.DAYBOOK_APP_BUILD

export const address = (link: string) => `/api/group/${encodeURIComponent(link)}`

async function ask(url: string, init: RequestInit): Promise<{ response: Response; body: unknown } | null> {
  try {
    const response = await fetch(url, {
      ...init,
      cache: 'no-store',
      credentials: 'same-origin',
      redirect: 'error',
      signal: AbortSignal.timeout(PATIENCE_MS),
    })
    return { response, body: await response.json() }
  } catch {
    // No signal, too slow, cut short, or not our server's words: all the same to the outbox, it tries again.
    return null
  }
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

export const postDelivery: Post = async (link, delivery) => {
  const got = await ask(`${address(link)}/facts`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(APP ? { ...delivery, app: APP } : delivery),
  })
  if (!got) return { kind: 'unknown' }
  const { response, body } = got
  if (response.ok && isDeliveryAnswer(body)) return { kind: 'answered', answer: body }
  const no = saidNo(body)
  if (no?.code === 'gap' && no.expected) return { kind: 'gap', expected: no.expected }
  return ended(response, body) ?? { kind: 'unknown', waitSeconds: asked(response), sentence: no?.sentence }
}

export type Fetched =
  | { readonly kind: 'pack'; readonly pack: CardPack }
  | { readonly kind: 'ended'; readonly code: string; readonly sentence: string }
  | { readonly kind: 'unknown' }

/** What the phone says of itself while it looks, for the desk's view of the course. */
export interface Looking {
  readonly deviceId: string
  readonly unsent: number
}

export async function fetchPack(link: string, looking?: Looking): Promise<Fetched> {
  const headers: Record<string, string> = looking
    ? {
        'x-daybook-device': looking.deviceId,
        'x-daybook-unsent': String(looking.unsent),
        ...(APP ? { 'x-daybook-app': APP } : {}),
      }
    : {}
  const got = await ask(address(link), { method: 'GET', headers })
  if (!got) return { kind: 'unknown' }
  if (got.response.ok && isCardPack(got.body)) return { kind: 'pack', pack: got.body }
  return ended(got.response, got.body) ?? { kind: 'unknown' }
}
