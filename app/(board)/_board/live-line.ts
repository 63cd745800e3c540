// The line to the server: events while they come, plain questions when they do not, and an honest word when neither
// does. An event brings what changed since the version before; whoever holds that board has the new one without asking.

import { type Changes, type Json, withChanges } from '@/lib/boards/board-changes'
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
/** A page that has just opened fetches the whole board to apply changes to, but not with everybody else. */
const WHOLE_WITHIN_MS = 15_000

interface Told {
  readonly version?: string
  readonly from?: string
  readonly changes?: Changes
}

export function openLine(wishes: LineWishes, parts: LineParts): { close: () => void; askNow: () => void } {
  const at = `${encodeURIComponent(wishes.society)}/${encodeURIComponent(wishes.day)}`
  let version = wishes.version
  let asking = false
  let askAgain = false
  let closed = false
  let streaming = false
  let wasStreaming = false
  let source: Source | null = null
  let whole: DayBoard | null = null
  let cancelAsk: () => void = () => undefined

  function next(ms: number) {
    cancelAsk()
    if (!closed) cancelAsk = parts.after(ms, ask)
  }

  async function answer(): Promise<boolean> {
    try {
      const response = await parts.fetch(`/api/board/${at}`, {
        headers: whole ? { 'if-none-match': `"${version}"` } : {},
        cache: 'no-cache',
      })
      if (response.status === 304) return true
      if (!response.ok) return false
      const board = (await response.json()) as DayBoard
      if (!closed) take(board)
      return true
    } catch {
      // No network is the normal state of a golf course; it is shown, and asked again.
      return false
    }
  }

  function take(board: DayBoard) {
    whole = board
    if (board.version === version) return
    version = board.version
    wishes.heard(board)
  }

  /** True when what was told needs no question: it is the board we have, or it makes the next one of it. */
  function known(told: Told): boolean {
    if (told.version === version) return true
    if (!told.changes || !whole || told.from !== whole.version || asking) return false
    const next = applied(whole, told.changes)
    if (next === null || next.version !== told.version) return false
    take(next)
    return true
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
      else next(whole ? QUIET_MS : 2_000 + parts.chance() * WHOLE_WITHIN_MS)
    })
    opened.addEventListener('version', (event) => {
      // The first message of every stream names the version we usually have: a bar full of phones must not all ask.
      if (!known(read(event.data))) void ask()
      else if (whole) next(QUIET_MS)
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

/** Anything that cannot be read is a reason to ask. */
function read(data: string | undefined): Told {
  try {
    return JSON.parse(data ?? '{}') as Told
  } catch {
    return {}
  }
}

/** Null when a server newer than this page says what the page cannot apply: then it asks for the whole board. */
function applied(board: DayBoard, changes: Changes): DayBoard | null {
  try {
    return withChanges(board as unknown as Json, changes) as unknown as DayBoard
  } catch {
    return null
  }
}
