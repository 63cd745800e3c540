// What changed between two boards, in words: "up from 14th", "35, was 33". Marked for five minutes, then forgotten.

import { ordinal } from '@/lib/boards/in-words'
import type { ScreenBoard, ScreenRow } from './screen-board'
import { scoreWords, shortName } from './words'

export const MARKED_FOR_MS = 5 * 60_000

export interface Change {
  readonly entrant: string
  /** Stands after the name: "up from 14th". */
  readonly words: string
  /** Read out: "Kilravel, 31 points, up from 14th to 11th". */
  readonly spoken: string
  readonly at: number
}

function place(row: ScreenRow): string {
  if (row.place === null) return ''
  return row.tied ? `level ${ordinal(row.place)}` : ordinal(row.place)
}

function moved(before: ScreenRow | undefined, after: ScreenRow): string | null {
  if (!before || (before.holesPlayed === 0 && after.holesPlayed > 0))
    return after.holesPlayed > 0 ? 'first hole in' : null
  if (before.noPlace !== after.noPlace && after.noPlace) return null
  if (before.place !== null && after.place !== null) {
    if (after.place < before.place) return `up from ${ordinal(before.place)}`
    if (after.place === before.place && before.tied && !after.tied) return `was level ${ordinal(before.place)}`
  }
  return null
}

/** Only rows whose own card moved: being overtaken is somebody else's news. */
export function changesBetween(before: ScreenBoard, after: ScreenBoard, now: number): Change[] {
  if (before.competition.id !== after.competition.id || before.head.daySlug !== after.head.daySlug) return []
  const old = new Map(before.rows.map((row) => [row.entrant, row]))
  const changes: Change[] = []
  for (const row of after.rows) {
    const was = old.get(row.entrant)
    const same =
      was &&
      was.score === row.score &&
      was.holesPlayed === row.holesPlayed &&
      was.noPlace === row.noPlace &&
      was.handedIn === row.handedIn &&
      was.gross === row.gross
    if (same) continue
    const how = moved(was, row)
    const words = how ?? (row.handedIn && !was?.handedIn ? 'card in' : was ? 'just now' : 'new')
    const net = after.competition.format !== 'gross'
    const figure = scoreWords(row.score, after.competition.unit, net)
    const to = row.place !== null && how?.startsWith('up') ? ` to ${place(row)}` : ''
    changes.push({ entrant: row.entrant, words, spoken: `${shortName(row.name)}, ${figure}, ${words}${to}`, at: now })
  }
  return changes
}

/** Newer words replace older ones for the same entrant; but a rise stays said until it is five minutes old. */
export function keepChanges(kept: readonly Change[], fresh: readonly Change[], now: number): Change[] {
  const by = new Map<string, Change>()
  for (const change of kept) if (now - change.at < MARKED_FOR_MS) by.set(change.entrant, change)
  for (const change of fresh) {
    const older = by.get(change.entrant)
    const weaker = change.words === 'just now' && older?.words.startsWith('up')
    by.set(change.entrant, weaker && older ? { ...change, words: older.words } : change)
  }
  return [...by.values()]
}

/** One polite sentence a burst, at most three names. */
export function spokenSummary(changes: readonly Change[]): string {
  if (changes.length === 0) return ''
  const said = changes.slice(0, 3).map((change) => change.spoken)
  const rest = changes.length - said.length
  const more = rest > 0 ? `; and ${rest} more` : ''
  return `${said.join('; ')}${more}.`
}
