// The line to the server: events while they come, plain questions when they do not, and an honest word when neither
// does. Holds no board itself; it only fetches a newer one and hands it over.

import type { DayBoard } from '@/lib/boards/views'

export type LineState = 'live' | 'asking' | 'down'

interface Source {
  addEventListener(type: string, heard: (event: { data?: string }) => void): void
  close(): void
  readonly readyState: number
}

export interface LineParts {
  readonly fetch: (url: string, init: RequestInit) => Promise<Response>
  /** Null where the browser has no event streams. */
  readonly open: ((url: string) => Source) | null
  readonly after: (ms: number, run: () => void) => () => void
  /** From 0 up to 1: a bar full of phones must not come back in the same second. */
  readonly chance: () => number
}

export interface LineWishes {
  readonly society: string
  readonly day: string
  readonly version: string
  readonly heard: (board: DayBoard) => void
  readonly state: (state: LineState) => void
}

/** Between two questions while the stream is not there. */
export const ASK_EVERY_MS = 20_000
/** A stream that says nothing for this long is asked after: proxies cut quiet lines without telling. */
export const QUIET_MS = 60_000
const CLOSED = 2

export function openLine(wishes: LineWishes, parts: LineParts): { close: () => void; askNow: () => void } {
  const at = `${encodeURIComponent(wishes.society)}/${encodeURIComponent(wishes.day)}`
  let version = wishes.version
  let asking = false
  let askAgain = false
  let closed = false
  let streaming = false
  let wasStreaming = false
  let source: Source | null = null
  let cancelAsk: () => void = () => undefined

  function next(ms: number) {
    cancelAsk()
    if (!closed) cancelAsk = parts.after(ms, ask)
  }

  async function answer(): Promise<boolean> {
    try {
      const response = await parts.fetch(`/api/board/${at}`, {
        headers: { 'if-none-match': `"${version}"` },
        cache: 'no-cache',
      })
      if (response.status === 304) return true
      if (!response.ok) return false
      const board = (await response.json()) as DayBoard
      if (!closed && board.version !== version) {
        version = board.version
        wishes.heard(board)
      }
      return true
    } catch {
      // No network is the normal state of a golf course; it is shown, and asked again.
      return false
    }
  }

  async function ask() {
    if (closed) return
    if (asking) {
      askAgain = true
      return
    }
    asking = true
    const reached = await answer()
    asking = false
    if (closed) return
    wishes.state(reached ? (streaming ? 'live' : 'asking') : 'down')
    if (reached && !source) connect()
    if (askAgain) {
      askAgain = false
      void ask()
      return
    }
    next(streaming && reached ? QUIET_MS : ASK_EVERY_MS + parts.chance() * 2_000)
  }

  function connect() {
    if (!parts.open || closed) return
    const opened = parts.open(`/api/live/${at}`)
    source = opened
    opened.addEventListener('open', () => {
      const again = wasStreaming
      streaming = true
      wasStreaming = true
      wishes.state('live')
      if (again) void ask()
      else next(QUIET_MS)
    })
    opened.addEventListener('version', (event) => {
      // The first message of every stream names the version we usually have: a bar full of phones must not all ask.
      if (!(event.data ?? '').includes(`"${version}"`)) void ask()
    })
    opened.addEventListener('error', () => {
      const broke = streaming
      streaming = false
      // The browser reconnects by itself unless it gave up; then the next answered question opens a new stream.
      if (opened.readyState === CLOSED && source === opened) {
        opened.close()
        source = null
      }
      if (broke) next(500 + parts.chance() * 2_500)
    })
  }

  connect()
  next(parts.open ? 5_000 : 0)
  return {
    askNow: () => void ask(),
    close: () => {
      closed = true
      cancelAsk()
      source?.close()
    },
  }
}
