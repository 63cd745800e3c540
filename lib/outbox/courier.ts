// Keeps the sender going: at once after a touch, again after a failure with growing patience, never two at a time.

import { waitSeconds } from './backoff'
import { alone } from './one-sender'
import type { Phone } from './phone'
import { sendWaiting } from './sender'

export interface Courier {
  readonly kick: () => void
  /** The link is over and scores are still here: asks again, at most once a minute. */
  readonly knock: () => void
  readonly stop: () => void
  /** What the server said when it would neither take nor refuse: shown beside the count. */
  readonly serverSays: () => string | null
}

interface Happenings {
  readonly settledSome: () => void
  /** Everything is received, and something was. */
  readonly delivered: () => void
  /** Gave up for now, or for good. */
  readonly stopped: () => void
}

const KNOCK_MS = 60_000
// Another tab is sending; look again when it should be through.
const BUSY_MS = 5_000

export function createCourier(link: string, phone: Phone, happenings: Happenings): Courier {
  let running = false
  let again = false
  let over = false
  let knocking = false
  let knockedAt = Number.NEGATIVE_INFINITY
  let failures = 0
  let says: string | null = null
  let cancelTimer = () => {}

  async function run(): Promise<void> {
    running = true
    cancelTimer()
    try {
      do {
        again = false
        await once().catch(stumble)
      } while (again && !over)
    } finally {
      running = false
    }
  }

  /** The phone's own storage gave way: what was answered is asked again, and gets the same answer. */
  function stumble(fault: unknown): void {
    console.warn('daybook: sending stopped at this phone’s storage', fault)
    failures++
    wait(waitSeconds(failures, phone.chance()) * 1000)
    happenings.stopped()
  }

  async function once(): Promise<void> {
    let some = false
    const asksAgain = knocking
    knocking = false
    const sent = await alone(
      phone.store,
      link,
      phone.locks,
      phone.me,
      () => phone.now().getTime(),
      () =>
        sendWaiting(
          phone.store,
          phone.post,
          link,
          phone.now,
          () => {
            some = true
            happenings.settledSome()
          },
          asksAgain,
        ),
    )
    if (sent === 'busy') return wait(BUSY_MS)
    says = sent.kind === 'try-later' ? (sent.sentence ?? null) : null
    if (sent.kind === 'try-later') {
      failures = some ? 1 : failures + 1
      wait(waitSeconds(failures, phone.chance(), sent.waitSeconds) * 1000)
      happenings.stopped()
      return
    }
    failures = 0
    if (sent.kind === 'ended') happenings.stopped()
    else if (some) happenings.delivered()
  }

  function wait(ms: number): void {
    cancelTimer()
    if (!over) cancelTimer = phone.later(kick, ms)
  }

  function kick(): void {
    if (over) return
    if (running) again = true
    else void run()
  }

  function knock(): void {
    const at = phone.now().getTime()
    if (at - knockedAt < KNOCK_MS) return
    knockedAt = at
    knocking = true
    kick()
  }

  return {
    kick,
    knock,
    stop() {
      over = true
      cancelTimer()
    },
    serverSays: () => says,
  }
}
