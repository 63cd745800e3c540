// Suspension of play as the desk tells it. The newest word stands: stopped at once, stopped hole by hole, or in play.

export const PLAY_STOP_KINDS = ['stop-at-once', 'stop-after-hole', 'resume'] as const
export type PlayStopKind = (typeof PLAY_STOP_KINDS)[number]

export interface PlayStopRecord {
  /** Order within the day, from 1. */
  readonly number: number
  readonly kind: PlayStopKind
  readonly reason: string
  readonly byName: string
  readonly toldAt: Date
}

/** The newest word, as it crosses to phones and boards. */
export interface PlayNow {
  readonly number: number
  readonly kind: PlayStopKind
  readonly reason: string
  /** ISO, the server's clock. */
  readonly toldAt: string
}

/** Null while nothing was ever said on this day. */
export function playNow(stops: readonly PlayStopRecord[] | undefined): PlayNow | null {
  const last = stops?.at(-1)
  if (!last) return null
  return { number: last.number, kind: last.kind, reason: last.reason, toldAt: last.toldAt.toISOString() }
}

/** The newer of two words: an answer that was on its way before the siren must not start play again on the screen. */
export function newerPlay(a: PlayNow | null | undefined, b: PlayNow | null | undefined): PlayNow | null {
  if (!a || !b) return a ?? b ?? null
  return b.number > a.number ? b : a
}

export const isStopped = (play: PlayNow | null | undefined): play is PlayNow => !!play && play.kind !== 'resume'

/** Milliseconds between two moments during which play was stopped. */
export function stoppedBetween(stops: readonly PlayStopRecord[], from: number, to: number): number {
  let stoppedAt: number | null = null
  let sum = 0
  const add = (until: number) => {
    if (stoppedAt !== null) sum += Math.max(0, Math.min(until, to) - Math.max(stoppedAt, from))
  }
  for (const stop of stops) {
    const at = stop.toldAt.getTime()
    if (stop.kind === 'resume') {
      add(at)
      stoppedAt = null
    } else stoppedAt ??= at
  }
  add(to)
  return sum
}
