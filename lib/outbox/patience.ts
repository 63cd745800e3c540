// How long the sender waits after a failure, and what cuts the wait short. A valley is seldom told by the phone: it goes
// on calling itself connected, and no event comes when the signal is back. So whatever the server answers, to whatever
// question, is a sign of life, and sends what waits at once.
//
//   no way through ──▶ waits, longer each time ──sign of life──▶ tries at once, and begins again with short waits
//                                 └── that try fails too, though everything else gets through: signs of life count for
//                                     less and less, until something else is met with silence as well, or a try succeeds
//   the server's own no ──▶ waits as long as the server asked; a sign of life says nothing that was not known

import { waitSeconds } from './backoff'

export interface Failure {
  readonly at: number
  /** In [0, 1): spreads phones that lost the signal together. */
  readonly chance: number
  /** The server itself answered, and took nothing. */
  readonly heard?: boolean
  /** Seconds that the server asked for. */
  readonly asked?: number
}

export interface Patience {
  /** Milliseconds until the next try. */
  readonly failed: (failure: Failure) => number
  readonly succeeded: () => void
  /** Milliseconds after which a sign of life has it tried again; null when it changes nothing. */
  readonly signOfLife: (at: number) => number | null
  /** Something else was met with silence as well: the next sign of life is a signal that has come back. */
  readonly silence: () => void
  /** The last try found no way through. */
  readonly cutOff: () => boolean
}

export function createPatience(): Patience {
  let failures = 0
  let inVain = 0
  let heard = false
  let failedAt = 0
  let bySign = false

  return {
    failed({ at, chance, asked = 0, ...failure }) {
      failures++
      heard = failure.heard ?? false
      failedAt = at
      if (bySign) inVain++
      bySign = false
      return waitSeconds(failures, chance, asked) * 1000
    },
    succeeded() {
      failures = 0
      inVain = 0
      bySign = false
      heard = false
    },
    signOfLife(at) {
      if (failures === 0 || heard) return null
      bySign = true
      if (inVain === 0) {
        failures = 1
        return 0
      }
      return Math.max(0, failedAt + waitSeconds(inVain, 0.5) * 1000 - at)
    },
    silence() {
      inVain = 0
    },
    cutOff: () => failures > 0 && !heard,
  }
}
