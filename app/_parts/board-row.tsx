import type { ReactNode } from 'react'

interface BoardLineProps {
  place: number | null
  tied: boolean
  /** The figure of the row, usually an <Opens>. */
  score: ReactNode
  name: string
  /** What opens the card, where there is one: stands in place of the plain name. */
  opener?: ReactNode
  /** "guest of Storrey", "up from 14th". */
  note?: string | null
  /** Further words after the note. */
  words?: ReactNode
  id?: string
  playingHandicap: number | null
  holesPlayed: number
  /** "18th: 5 for 3" */
  last?: ReactNode
  /** Changed within the last five minutes: a gorse bar in the margin, and the note says what. */
  changed?: boolean
  /** Level with the row below: no line between them. */
  joined?: boolean
}

/** A plus handicap, kept negative, is printed with its plus. */
function handicapFigure(playingHandicap: number | null): string {
  if (playingHandicap === null) return '–'
  return playingHandicap < 0 ? `+${-playingHandicap}` : String(playingHandicap)
}

/** The head of a board; the words of the second column follow the unit. */
export function BoardHead({ unit }: { unit: string }) {
  return (
    <thead role="rowgroup">
      <tr role="row">
        <th role="columnheader" scope="col" className="lead-col">
          Place
        </th>
        <th role="columnheader" scope="col" className="num">
          {unit}
        </th>
        <th role="columnheader" scope="col">
          Name
        </th>
        <th role="columnheader" scope="col" className="mid c-hcp">
          Playing handicap
        </th>
        <th role="columnheader" scope="col" className="mid c-holes">
          Holes played
        </th>
        <th role="columnheader" scope="col" className="c-last">
          Now
        </th>
      </tr>
    </thead>
  )
}

/** A row of a board. Its roles are written out, because on a phone it is laid out as a grid. */
export function BoardLine(line: BoardLineProps) {
  const classes = [line.changed && 'changed', line.joined && 'joined'].filter(Boolean).join(' ')
  return (
    <tr role="row" className={classes || undefined} id={line.id}>
      <td role="cell" className="lead-col fig place">
        {line.place === null ? '–' : `${line.place}${line.tied ? '=' : ''}`}
      </td>
      <td role="cell" className="fig score-fig">
        {line.score}
      </td>
      <th role="rowheader" scope="row" className="name">
        {line.opener ?? <b>{line.name}</b>}
        {line.playingHandicap === null ? null : (
          <span className="fig hc narrow">
            <span className="unseen">plays off </span>
            {handicapFigure(line.playingHandicap)}
          </span>
        )}
        {line.note ? <span className="small">{line.note}</span> : null}
        {line.words}
      </th>
      <td role="cell" className="fig count hcp">
        {handicapFigure(line.playingHandicap)}
      </td>
      <td role="cell" className="fig count">
        {line.holesPlayed}
      </td>
      <td role="cell" className="last">
        <span className="narrow">
          {line.holesPlayed} {line.holesPlayed === 1 ? 'hole' : 'holes'}.{' '}
        </span>
        {line.last}
      </td>
    </tr>
  )
}

/** A sentence of the sheet between rows: how a tie was parted, or that it still is one. */
export function BoardSentence({ children }: { children: ReactNode }) {
  return (
    <tr role="row" className="said">
      <td role="cell" className="lead-col" />
      <td role="cell" colSpan={5} className="aside">
        {children}
      </td>
    </tr>
  )
}

/** A row that has been opened: the card under the name. */
export function BoardOpened({ children, id }: { children: ReactNode; id?: string }) {
  return (
    <tr role="row" className="opened" id={id}>
      <td role="cell" className="lead-col" />
      <td role="cell" colSpan={5}>
        {children}
      </td>
    </tr>
  )
}
