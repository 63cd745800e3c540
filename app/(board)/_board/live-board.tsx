'use client'

// The live board of one competition: finished by the server, kept fresh here. Without script it is a page that is
// right when it is loaded, with every view and card behind a link.

import { useCallback, useMemo, useState } from 'react'
import { Choice } from '@/app/_parts/choice'
import { Notice } from '@/app/_parts/notice'
import { Said } from '@/app/_parts/toast'
import { timeInWords } from '@/lib/boards/dates-in-words'
import { divisionAt } from './addresses'
import { BoardExtras } from './board-extras'
import { BoardTop } from './board-top'
import { GroupsView } from './groups-view'
import { useKept } from './kept-on-device'
import { MatchesTable } from './matches-table'
import { MyCard } from './my-card'
import { MyLine } from './my-line'
import { NeedsView } from './needs-view'
import { divisionOf, inDivision, rowOf, type ScreenBoard, type View } from './screen-board'
import { StandingsTable } from './standings-table'
import { useLiveBoard } from './use-live-board'
import { ViewLinks } from './view-links'

export interface LiveBoardProps {
  readonly initial: ScreenBoard
  /** Which competition, from 1. */
  readonly c: number
  readonly view: View
  /** Division asked for. */
  readonly d?: string | undefined
  readonly opened: string | null
  /** Entry asked for in the address; the one kept on the device when null. */
  readonly mine: string | null
}

export function LiveBoard({ initial, c, view, d: asked, opened, mine }: LiveBoardProps) {
  const watch = initial.head.status !== 'closed' || initial.head.published === null
  const { board, line, changes, spoken } = useLiveBoard(initial, c, watch)
  const { societySlug, daySlug } = board.head
  const [open, setOpen] = useState<ReadonlySet<string>>(() => new Set(opened ? [opened] : []))
  const [me, keepMe] = useKept(`daybook:mine:${societySlug}/${daySlug}`, mine)
  const [marks, keepMarks] = useKept('daybook:mark-changes', null)
  const marking = marks !== 'no'

  const toggle = useCallback((entrant: string) => {
    setOpen((now) => {
      const next = new Set(now)
      if (!next.delete(entrant)) next.add(entrant)
      return next
    })
  }, [])
  const changed = useMemo(
    () => new Map(marking ? changes.map((change) => [change.entrant, change.words] as const) : []),
    [changes, marking],
  )
  const myRow = rowOf(board, me)
  const d = divisionOf(board, asked)
  const division = board.competition.divisions?.find(({ id }) => id === d)

  return (
    <>
      <BoardTop board={board} />
      {line === 'down' && (
        <Notice kind="waits" word={`As of ${timeInWords(board.countedAt, board.zone)}; the line is down`}>
          <p>This is the last board received. It goes on by itself when the line is back.</p>
        </Notice>
      )}
      <ViewLinks board={board} c={c} view={view} d={d} />
      {division && (
        <p className="small second division-of">
          {division.sentence} <a href={divisionAt(societySlug, daySlug, c, division.id)}>Who is in it, and why</a>
        </p>
      )}
      {board.matches.length > 0 ? (
        <MatchesTable board={board} />
      ) : view === 'mine' ? (
        <MyCard board={board} c={c} row={myRow} changed={changed} open={open} toggle={toggle} choose={keepMe} />
      ) : view === 'groups' ? (
        <GroupsView board={inDivision(board, d)} changed={changed} />
      ) : view === 'needs' && board.competition.chances ? (
        <NeedsView board={inDivision(board, d)} division={d !== null} />
      ) : (
        <StandingsTable board={inDivision(board, d)} c={c} view={view} open={open} changed={changed} toggle={toggle} />
      )}
      {view === 'leaders' && (
        <BoardExtras
          head={board.head}
          c={c}
          competition={board.competition}
          rows={inDivision(board, d).rows}
          teams={board.teams}
        />
      )}
      <Said words={marking ? spoken : ''} />
      <div className="key-line">
        {changed.size > 0 && (
          <span>
            <i className="gorse-mark" /> changed in the last five minutes
          </span>
        )}
        {board.rows.some((row) => row.tied) && <span>= level</span>}
        {view !== 'needs' && board.rows.some((row) => row.holesPlayed > 0 && !row.away) && (
          <span>Tap any underlined figure to see how it was worked out</span>
        )}
        {board.matches.length === 0 && view !== 'needs' && (
          <span className={view === 'groups' ? undefined : 'narrow'}>
            the figure after a name is the playing handicap
          </span>
        )}
        <span>
          Allowance {board.competition.allowance}. {board.competition.allowanceFrom}
        </span>
        {board.competition.moreTerms?.map((sentence) => (
          <span key={sentence}>{sentence}</span>
        ))}
        {board.matches.length === 0 && <span>{board.competition.tieRule}</span>}
      </div>
      {watch && (
        <div className="mark-choice no-print">
          <Choice type="checkbox" checked={marking} onChange={(event) => keepMarks(event.target.checked ? null : 'no')}>
            Show changes of the last five minutes
          </Choice>
        </div>
      )}
      {myRow && view !== 'mine' && board.matches.length === 0 && <MyLine board={board} row={myRow} c={c} />}
    </>
  )
}
