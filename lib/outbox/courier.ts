// Keeps the sender going: at once after a touch or a sign of life, again after a failure with growing patience, never
// two at a time.

import { alone } from './one-sender'
import { createPatience } from './patience'
import type { Phone } from './phone'
import { type Post, sendWaiting } from './sender'

export interface Courier {
  readonly kick: () => void
  /** The link is over and scores are still here: asks again, at most once a minute. */
  readonly knock: () => void
  /** The server answered something: there is a way through. With the milliseconds that it took, where they are known. */
  readonly reached: (took?: number) => void
  /** A question was met with silence. */
  readonly unreached: () => void
  /** The last try found no way through, or one is under way and has heard nothing for some time. */
  readonly cutOff: () => boolean
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
// Another tab is sending: to look again costs one question to the browser.
const BUSY_MS = 1_000
// A delivery that has heard nothing for so long may be on a connection that died: something small is sent beside it.
const SLOW_MS = 1_500
// If that is answered, and the delivery took so many times as long already, the delivery is begun again. Each time it
// needs more, so that a long delivery on a thin line gets through in the end.
const OVERTAKEN = 4
const MORE_PATIENT = 3

interface UnderWay {
  readonly since: number
  readonly cut: AbortController
  /** Since it began, something else was met with silence. */
  silence: boolean
}

export function createCourier(link: string, phone: Phone, happenings: Happenings): Courier {
  const patience = createPatience()
  let running = false
  let again = false
  let over = false
  let knocking = false
  let knockedAt = Number.NEGATIVE_INFINITY
  let says: string | null = null
  let underWay: UnderWay | null = null
  let signed = false
  let cuts = 0
  let dueAt = Number.POSITIVE_INFINITY
  let cancelTimer = () => {}

  const now = () => phone.now().getTime()

  const post: Post = async (to, delivery) => {
    const mine: UnderWay = { since: now(), cut: new AbortController(), silence: false }
    underWay = mine
    try {
      return await phone.post(to, delivery, mine.cut.signal)
    } finally {
      if (underWay === mine) underWay = null
    }
  }

  async function run(): Promise<void> {
    running = true
    try {
      do {
        again = false
        signed = false
        wait(null)
        await once().catch(stumble)
      } while (again && !over)
    } finally {
      running = false
    }
    // It came while the try was under way, and may be younger than what the try met with.
    if (signed) reached()
  }

  /** The phone's own storage gave way: what was answered is asked again, and gets the same answer. */
  function stumble(fault: unknown): void {
    console.warn('daybook: sending stopped at this phone’s storage', fault)
    wait(patience.failed({ at: now(), chance: phone.chance(), heard: true }))
    happenings.stopped()
  }

  async function once(): Promise<void> {
    let some = false
    const asksAgain = knocking
    knocking = false
    const sent = await alone(phone.store, link, phone.locks, phone.me, now, () =>
      sendWaiting(
        phone.store,
        post,
        link,
        phone.now,
        () => {
          some = true
          cuts = 0
          patience.succeeded()
          happenings.settledSome()
        },
        asksAgain,
      ),
    )
    if (sent === 'busy') return wait(BUSY_MS)
    says = sent.kind === 'try-later' ? (sent.sentence ?? null) : null
    if (sent.kind === 'try-later') {
      wait(patience.failed({ at: now(), chance: phone.chance(), heard: sent.heard, asked: sent.waitSeconds }))
      happenings.stopped()
      return
    }
    patience.succeeded()
    if (sent.kind === 'ended') happenings.stopped()
    else if (some) happenings.delivered()
  }

  function wait(ms: number | null): void {
    cancelTimer()
    cancelTimer = () => {}
    dueAt = Number.POSITIVE_INFINITY
    if (over || ms === null) return
    dueAt = now() + ms
    cancelTimer = phone.later(kick, ms)
  }

  function kick(): void {
    if (over) return
    if (running) again = true
    else void run()
  }

  function knock(): void {
    const at = now()
    if (at - knockedAt < KNOCK_MS) return
    knockedAt = at
    knocking = true
    kick()
  }

  /** Its connection went with the signal, and it would wait out its time on it. */
  function isDead(delivery: UnderWay, took: number | undefined): boolean {
    if (delivery.silence) return true
    if (took === undefined) return false
    return now() - delivery.since >= SLOW_MS + OVERTAKEN * MORE_PATIENT ** cuts * took
  }

  function reached(took?: number): void {
    if (over) return
    if (running) {
      signed = true
      if (!underWay || !isDead(underWay, took)) return
      if (!underWay.silence) cuts++
      underWay.cut.abort()
      return
    }
    const ms = patience.signOfLife(now())
    if (ms === null) return
    if (ms === 0) kick()
    else if (now() + ms < dueAt) wait(ms)
  }

  return {
    kick,
    knock,
    reached,
    unreached() {
      patience.silence()
      if (underWay) underWay.silence = true
    },
    cutOff: () => patience.cutOff() || (underWay !== null && now() - underWay.since >= SLOW_MS),
    stop() {
      over = true
      wait(null)
    },
    serverSays: () => says,
  }
}
