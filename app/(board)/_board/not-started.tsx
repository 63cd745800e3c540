// Players who have not started, folded: a line a group, in order of time. A row of dashes each would be half the board.

import { clockInWords } from '@/lib/boards/dates-in-words'
import { counted } from '@/lib/boards/in-words'
import { byLastWord } from '@/lib/boards/order-of-names'
import { cardAt } from './addresses'
import type { ScreenBoard, ScreenRow } from './screen-board'
import { shortName } from './words'

/** Nothing written yet, and no earlier round that would give the row a score. */
export function isNotStarted({ progress, noPlace, rounds, holesPlayed }: ScreenRow): boolean {
  if (rounds || holesPlayed > 0) return false
  return progress === undefined ? noPlace === 'not-started' : progress.state === 'not-started'
}

export interface StartLine {
  readonly key: string
  /** "10.40 am", or nothing for whoever is in no group. */
  readonly time: string
  readonly rows: readonly ScreenRow[]
}

/** Everybody named once, under the group of the first of a row. */
export function startLines(board: Pick<ScreenBoard, 'rows' | 'groups'>): readonly StartLine[] {
  const waiting = board.rows.filter(isNotStarted)
  const groupOf = (row: ScreenRow) =>
    board.groups.find((group) => row.entryIds.some((id) => group.entryIds.includes(id)))
  const lines = [...board.groups]
    .sort((a, b) => a.startTime.localeCompare(b.startTime) || a.number - b.number)
    .map((group) => ({
      key: String(group.number),
      time: clockInWords(group.startTime),
      rows: waiting.filter((row) => groupOf(row) === group),
    }))
  const loose = waiting.filter((row) => !groupOf(row)).sort((a, b) => byLastWord(a.name, b.name))
  return [...lines, { key: 'none', time: '', rows: loose }].filter(({ rows }) => rows.length > 0)
}

export function NotStarted({ board }: { board: ScreenBoard }) {
  const lines = startLines(board)
  if (lines.length === 0) return null
  const { societySlug, daySlug } = board.head
  const rows = lines.flatMap((line) => line.rows)
  const pairs = rows.every(({ entryIds }) => entryIds.length === 2)
  const alone = rows.every(({ entryIds }) => entryIds.length === 1)
  return (
    <section className="not-started" aria-labelledby="not-started-h">
      <h2 id="not-started-h">Not started, {counted(rows.length, pairs ? 'pair' : alone ? 'player' : 'side')}</h2>
      <ul>
        {lines.map(({ key, time, rows: there }) => (
          <li key={key}>
            <span className="fig start-time">{time}</span>
            <span className="start-names">
              {there.map((row, at) => (
                <span key={row.entrant}>
                  {at > 0 && ', '}
                  <a href={cardAt(societySlug, daySlug, row.entryIds[0] ?? row.entrant)} aria-label={row.name}>
                    {shortName(row.name)}
                  </a>
                </span>
              ))}
            </span>
          </li>
        ))}
      </ul>
    </section>
  )
}
