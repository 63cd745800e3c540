// Sends what waits, oldest first, until nothing waits or something stands in the way. Knows no browser: storage, the
// way to the server and the clock are given.
//
//   waiting ──send──▶ answered ──settle──▶ more waiting? ─▶ send …      all settled ─▶ 'empty'
//                │        └── the server has less than it once had ─▶ those facts wait again
//                ├── unknown (no signal, cut answer, wrong page, 5xx) ─▶ 'try-later': nothing is concluded
//                └── ended (link over, said in our own form) ─▶ 'ended': nothing more is sent, all of it stays.
//                    A knock asks once more, with everything, so that the desk can see it and may take it in.

import type { Delivery, DeliveryAnswer } from '@/lib/facts/score-fact'
import type { OutboxStore } from './store'

export type Posted =
  | { readonly kind: 'answered'; readonly answer: DeliveryAnswer }
  | { readonly kind: 'ended'; readonly code: string; readonly sentence: string }
  /** The server expects an earlier number: it has less of this phone than it once had. */
  | { readonly kind: 'gap'; readonly expected: number }
  /** No answer, or one that settles nothing. `heard`: it was the server itself, with its own sentence if it gave one. */
  | { readonly kind: 'unknown'; readonly heard?: boolean; readonly waitSeconds?: number; readonly sentence?: string }

/** `cut` breaks it off: whoever waits for the answer knows better than its connection. */
export type Post = (link: string, delivery: Delivery, cut?: AbortSignal) => Promise<Posted>

export type Sent =
  | { readonly kind: 'empty' }
  | { readonly kind: 'ended' }
  | { readonly kind: 'try-later'; readonly heard?: boolean; readonly waitSeconds?: number; readonly sentence?: string }

const AT_ONCE = 50
const AT_THE_DOOR = 200

export async function sendWaiting(
  store: OutboxStore,
  post: Post,
  link: string,
  now: () => Date,
  settledSome: () => void = () => {},
  knocking = false,
): Promise<Sent> {
  for (;;) {
    const queue = await store.queue(link)
    if (queue.ended && !knocking) return { kind: 'ended' }
    const unsent = await store.waiting(link, 10_000)
    const waiting = unsent.slice(0, knocking ? AT_THE_DOOR : AT_ONCE)
    const oldest = waiting[0]
    if (!oldest) return { kind: 'empty' }

    const group = (await store.pack(link))?.pack.group.id
    const posted = await post(link, {
      deviceId: queue.deviceId,
      facts: waiting.map((kept) => kept.fact),
      unsent: unsent.length,
      ...(group ? { group } : {}),
    })
    // From here on it is bookkeeping: a fault in it is a bug to be seen, and must not be taken for a lost connection.
    if (posted.kind === 'unknown') return { ...posted, kind: 'try-later' }
    if (posted.kind === 'ended') {
      await store.setEnded(link, { code: posted.code, sentence: posted.sentence, at: now().toISOString() })
      return { kind: 'ended' }
    }

    const sent = waiting.map((kept) => kept.seq)
    const answer =
      posted.kind === 'answered' ? posted.answer : { lastSeq: posted.expected - 1, answers: [], scoreVersion: 0 }
    if (answer.lastSeq < oldest.seq - 1) await store.waitAgain(link, answer.lastSeq)
    await store.settle(link, sent, answer, now().toISOString())
    settledSome()

    const next = (await store.waiting(link, 1))[0]
    // An answer that moves nothing would be asked for ever: step back and try later.
    if (next && next.seq === oldest.seq) return { kind: 'try-later', heard: true }
  }
}
