// The message to the watchers of a day: its new version and what changed on the board since the last one told. Counted,
// compared and written once, however many watch.

import type { DayId } from '@/lib/facts/ids'
import 'server-only'
import { type Changes, changesBetweenBoards, type Json } from '@/lib/boards/board-changes'
import { countedBoard } from './read-board'

export interface BoardStep {
  readonly version: string
  /** A whole server-sent event, ready to go out. */
  readonly message: Uint8Array
}

interface Told extends BoardStep {
  readonly board: Json
}

// More than this much of the board is not worth a difference: whoever wants it asks for the board.
const MOST_OF_BOARD = 0.5
const DAYS_KEPT = 50

interface Kept {
  readonly asked: string
  readonly told: Promise<Told | null>
}

const kept = globalThis as { daybookSteps?: Map<string, Kept> }

/** Null when the board cannot be counted now: the version alone is still worth telling. */
export function boardStep(
  which: { readonly dayId: DayId; readonly society: string; readonly day: string },
  version: string,
): Promise<BoardStep | null> {
  kept.daybookSteps ??= new Map()
  const days = kept.daybookSteps
  const before = days.get(which.dayId)
  if (before?.asked === version) return before.told
  const told = (before?.told ?? Promise.resolve(null)).then((last) => next(which, last)).catch(() => null)
  // The day asked for last is the last to go.
  days.delete(which.dayId)
  days.set(which.dayId, { asked: version, told })
  const [oldest] = days.keys()
  if (days.size > DAYS_KEPT && oldest !== undefined) days.delete(oldest)
  return told
}

async function next(which: { society: string; day: string }, last: Told | null): Promise<Told | null> {
  const counted = await countedBoard(which.society, which.day)
  if (!counted.ok) return null
  const { version, text } = counted.value
  if (last?.version === version) return last
  const board = JSON.parse(text) as Json
  return {
    version,
    board,
    message: message(version, text.length, last, last && changesBetweenBoards(last.board, board)),
  }
}

function message(version: string, size: number, last: Told | null, changes: Changes | null | undefined): Uint8Array {
  const whole = JSON.stringify(last && changes ? { version, from: last.version, changes } : { version })
  const data = whole.length > size * MOST_OF_BOARD ? JSON.stringify({ version }) : whole
  return new TextEncoder().encode(`id: ${version}\nevent: version\ndata: ${data}\n\n`)
}
