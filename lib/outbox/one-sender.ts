// One sender at a time across tabs and the background worker. The browser's own locks where it has them: they fall
// free by themselves when a tab dies. Elsewhere a lease in the phone's database that runs out.
// The server would put up with two senders (numbers are checked there); this keeps the order and saves the battery.

import type { OutboxStore } from './store'

// Longer than the longest request, so that a lease never runs out under a sender that is still at work.
const LEASE_MS = 45_000

export interface LockManagerLike {
  request<T>(
    name: string,
    options: { ifAvailable: true },
    run: (lock: unknown | null) => Promise<T>,
  ): Promise<Awaited<T>>
}

/** Runs `send` alone; 'busy' when another tab is at it already. */
export async function alone<T>(
  store: OutboxStore,
  link: string,
  locks: LockManagerLike | undefined,
  me: string,
  now: () => number,
  send: () => Promise<T>,
): Promise<T | 'busy'> {
  if (locks) {
    return locks.request<T | 'busy'>(`daybook-card:${link}`, { ifAvailable: true }, (lock) =>
      lock ? send() : Promise.resolve('busy' as const),
    )
  }
  if (!(await store.takeLease(link, me, now(), now() + LEASE_MS))) return 'busy'
  try {
    return await send()
  } finally {
    await store.dropLease(link, me)
  }
}
