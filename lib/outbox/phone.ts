// What the outbox needs of the phone around it: storage, network, locks, clock, and word from the other tabs.

import type { LineEars } from './live-line'
import type { LockManagerLike } from './one-sender'
import type { fetchPack } from './post'
import type { Post } from './sender'
import type { OutboxStore } from './store'

export interface Phone {
  readonly store: OutboxStore
  readonly post: Post
  readonly fetchPack: typeof fetchPack
  readonly locks: LockManagerLike | undefined
  readonly me: string
  readonly now: () => Date
  readonly chance: () => number
  readonly later: (run: () => void, ms: number) => () => void
  /** Tells the other tabs and the worker of this phone, and hears from them. */
  readonly tell: (link: string) => void
  readonly hear: (run: (link: string) => void) => () => void
  /** Runs when a signal may be back or the page is looked at again. */
  readonly whenReachable: (run: () => void) => () => void
  readonly looking: () => boolean
  /** Hears of a suspension of play and of other phones' scores at once, where the phone can keep a line open. */
  readonly liveLine?: (link: string, ears: LineEars) => () => void
  /** The server answered: said to the other tabs, and heard from them and from the worker. */
  readonly tellReached: () => void
  readonly whenReached: (run: () => void) => () => void
  /** Asks the browser to send in the background, where it can. */
  readonly askBackground: () => void
}
