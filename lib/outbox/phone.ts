// What the outbox needs of the phone around it: storage, network, locks, clock, and word from the other tabs.

import type { PlayNow } from '@/lib/facts/play-stop'
import type { LockManagerLike } from './one-sender'
import type { Fetched, Looking } from './post'
import type { Post } from './sender'
import type { OutboxStore } from './store'

export interface Phone {
  readonly store: OutboxStore
  readonly post: Post
  readonly fetchPack: (link: string, looking?: Looking) => Promise<Fetched>
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
  /** Hears a suspension of play at once, where the phone can keep a line open. */
  readonly hearPlay?: (link: string, run: (play: PlayNow) => void) => () => void
  /** Asks the browser to send in the background, where it can. */
  readonly askBackground: () => void
}
