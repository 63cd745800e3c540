// When to ask the server how the cards stand. Every twenty seconds while somebody looks at the card; every two while
// scores wait here and nothing gets through, since a phone does not tell when its signal is back. The question is small,
// the scores follow it at once. A question without an answer does not hold up the next: it may hang on a connection that
// died with the signal, and the next makes a new one.

import type { Phone } from './phone'

export const LOOK_EVERY_MS = 20_000
const LOOK_SOON_MS = 2_000
// On their way at the same time; one more, and the oldest is given up.
const MOST_UNDER_WAY = 4

interface Asked {
  /** Something waits on this phone. */
  readonly waits: () => boolean
  /** Something waits, and there is no way through. */
  readonly cutOff: () => boolean
  readonly look: (cut: AbortSignal) => Promise<void>
}

export interface Looking {
  readonly start: () => void
  /** Something was written down, or a try failed. */
  readonly soon: () => void
  readonly stop: () => void
}

export function lookAgain(phone: Pick<Phone, 'later' | 'looking' | 'now'>, asked: Asked): Looking {
  let over = true
  let underWay: readonly AbortController[] = []
  let lastAt = Number.NEGATIVE_INFINITY
  let soon = false
  let cancel = () => {}

  const now = () => phone.now().getTime()

  function look(): void {
    lastAt = now()
    const mine = new AbortController()
    if (underWay.length >= MOST_UNDER_WAY) underWay[0]?.abort()
    underWay = [...underWay, mine]
    asked
      .look(mine.signal)
      // The phone's own storage gave way: the next turn asks again.
      .catch((fault: unknown) => console.warn('daybook: a look at the server broke off', fault))
      .finally(() => {
        underWay = underWay.filter((one) => one !== mine)
      })
  }

  function turn(): void {
    const due = now() - lastAt >= LOOK_EVERY_MS - LOOK_SOON_MS / 2 || asked.cutOff()
    if (due && phone.looking()) look()
    next()
  }

  function next(): void {
    cancel()
    soon = asked.waits()
    if (!over) cancel = phone.later(turn, soon ? LOOK_SOON_MS : LOOK_EVERY_MS)
  }

  return {
    start() {
      over = false
      if (phone.looking()) look()
      next()
    },
    soon() {
      if (!over && !soon && asked.waits()) next()
    },
    stop() {
      over = true
      cancel()
    },
  }
}
