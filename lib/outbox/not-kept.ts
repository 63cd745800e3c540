// Scores that the phone would not write down: its storage is full, or refuses. They stay in the open page, count on the
// screen like the others, and are tried again, in their order, until the phone takes them. They are not sent before
// that: a number is only given together with the score it belongs to, or two scores could get the same one.

import { ok, type Refused, type Result } from '@/lib/result'
import { type KeptFact, type ToKeep, unanswered } from './kept-fact'
import type { OutboxStore, StorageRefusal } from './store'

interface Held {
  readonly what: ToKeep
  readonly writtenAt: string
}

export interface NotKept {
  /** Keeps after everything that waits here, or holds it in the page. */
  readonly keep: (what: ToKeep, writtenAt: string) => Promise<Result<KeptFact | null>>
  /** True when something was written down. */
  readonly tryAgain: () => Promise<boolean>
  /** As facts, so that the cards show them: numbers beyond every real one. */
  readonly facts: () => readonly KeptFact[]
  /** Takes the last one back: it was never anywhere else. */
  readonly dropLast: () => void
  readonly why: () => Refused<StorageRefusal> | null
}

const BEYOND = 1_000_000_000

export function notKept(store: OutboxStore, link: string): NotKept {
  let held: Held[] = []
  let why: Refused<StorageRefusal> | null = null

  // The look at the server and the next touch may both come upon room: one of them writes, or the first held would be
  // written twice and the second struck off unwritten.
  let trying: Promise<boolean> | null = null
  function tryAgain(): Promise<boolean> {
    trying ??= writeHeld().finally(() => {
      trying = null
    })
    return trying
  }

  async function writeHeld(): Promise<boolean> {
    let some = false
    for (let first = held[0]; first; first = held[0]) {
      const kept = await store.keep(link, first.what, first.writtenAt)
      if (!kept.ok) {
        why = kept
        return some
      }
      held = held.slice(1)
      some = true
    }
    why = null
    return some
  }

  return {
    tryAgain,
    async keep(what, writtenAt) {
      if (held.length > 0) await tryAgain()
      const kept = held.length > 0 ? why : await store.keep(link, what, writtenAt)
      if (kept?.ok) return kept
      why = kept
      held = [...held, { what, writtenAt }]
      return ok(null)
    },
    facts: () => held.map(({ what, writtenAt }, at) => unanswered(link, BEYOND + at, what, writtenAt)),
    dropLast() {
      held = held.slice(0, -1)
      if (held.length === 0) why = null
    },
    why: () => why,
  }
}
