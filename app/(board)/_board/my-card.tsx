// One player's own view: how it stands in a sentence, the whole card, and the neighbours on the board.

import { byLastWord } from '@/lib/boards/order-of-names'
import type { EntryId } from '@/lib/facts/ids'
import { boardAt } from './addresses'
import { HolesOfRow } from './holes-of-row'
import { mySentence } from './my-words'
import type { ScreenBoard, ScreenRow } from './screen-board'
import { StandingsTable } from './standings-table'
import { placeFigure, scoreFigure, unitHeading } from './words'

interface Props {
  readonly board: ScreenBoard
  readonly c: number
  readonly row: ScreenRow | null
  readonly open: ReadonlySet<string>
  readonly changed: ReadonlyMap<string, string>
  readonly toggle: (entrant: string) => void
  readonly choose: (entryId: EntryId | null) => void
}

function Choose({ board, c, choose }: Pick<Props, 'board' | 'c' | 'choose'>) {
  const { societySlug, daySlug } = board.head
  const names = board.rows.filter((row) => !row.away).sort((a, b) => byLastWord(a.name, b.name))
  return (
    <section className="my-choose" aria-labelledby="choose-h">
      <h2 id="choose-h">Whose card is yours?</h2>
      <p>It is remembered on this device only, for this day.</p>
      <ul className="name-list">
        {names.map((row) => (
          <li key={row.entrant}>
            <a
              href={boardAt(societySlug, daySlug, { c, v: 'mine', e: row.entryIds[0] })}
              onClick={() => choose(row.entryIds[0] ?? (row.entrant as EntryId))}
            >
              {row.name}
            </a>
          </li>
        ))}
      </ul>
    </section>
  )
}

export function MyCard({ board, c, row, open, changed, toggle, choose }: Props) {
  const { societySlug, daySlug } = board.head
  if (!row) return <Choose board={board} c={c} choose={choose} />
  const at = board.rows.indexOf(row)
  const { chances } = board.competition
  const mine = chances?.entrants[row.entrant]
  const chance = mine ? `${mine.stands} ${mine.needed}`.trim() : chances?.note
  const near = new Set(board.rows.slice(Math.max(0, at - 2), at + 3).map((other) => other.entrant))
  return (
    <>
      <section className="mine" aria-labelledby="mine-h">
        <div className="mine-head">
          <div>
            <h2 id="mine-h">{row.name}</h2>
            <p className="lead">{mySentence(board, row)}</p>
            {chance && <p className="my-chance">{chance}</p>}
          </div>
          <dl className="heroes">
            <div>
              <dd className="fig trim">
                {row.holesPlayed === 0 ? '–' : scoreFigure(row.score, board.competition.unit)}
              </dd>
              <dt>{unitHeading(board.competition).toLowerCase()}</dt>
            </div>
            <div>
              <dd className="fig trim lesser">{placeFigure(row) || '–'}</dd>
              <dt>place</dt>
            </div>
            <div>
              <dd className="fig trim lesser">{row.holesPlayed}</dd>
              <dt>holes</dt>
            </div>
          </dl>
        </div>
        <HolesOfRow board={board} row={row} c={c} />
      </section>
      <h3 className="near-head">Those around you</h3>
      <StandingsTable board={board} c={c} view="mine" open={open} changed={changed} toggle={toggle} only={near} />
      <p className="small">
        <a href={boardAt(societySlug, daySlug, { c, v: 'mine' })} onClick={() => choose(null)}>
          Not your card? Choose another
        </a>
      </p>
    </>
  )
}
