import type { Metadata } from 'next'
import { cache } from 'react'
import { dateInWords } from '@/lib/boards/dates-in-words'
import { houseZone } from '@/lib/society/house-zone'
import { dayBoard } from '@/lib/society/read-board'
import { type Asked, counting, found, one } from '../../../_board/answer'
import { BeforeTheDay } from '../../../_board/before-the-day'
import { BoardTop } from '../../../_board/board-top'
import { CalledOff } from '../../../_board/called-off'
import { LiveBoard } from '../../../_board/live-board'
import { NothingHere } from '../../../_board/nothing-here'
import { PageFrame } from '../../../_board/page-frame'
import { PlayNotice } from '../../../_board/play-notice'
import { headOf, screenBoard, viewOf } from '../../../_board/screen-board'
import '../../../_styles/board.css'

interface Props {
  params: Promise<{ society: string; day: string }>
  searchParams: Asked
}

const read = cache(dayBoard)

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { society, day } = await params
  const board = await read(society, day)
  if (!board.ok) return { title: 'The board' }
  const { dayName, societyName, courseName, date } = board.value
  return {
    title: `${dayName} · ${societyName}`,
    description: `${dayName} at ${courseName}, ${dateInWords(date)}: the board.`,
  }
}

export default async function BoardPage({ params, searchParams }: Props) {
  const { society, day } = await params
  const asked = await searchParams
  const { value: board, refusal } = found(await read(society, day))
  if (refusal) return <NothingHere society={society} refusal={refusal} />
  const c = counting(asked.c) ?? 1
  const screen = screenBoard(board, c, houseZone())
  const nothingYet =
    !screen ||
    board.competitions.every(
      ({ rows, matches }) =>
        rows.every((row) => row.holesPlayed === 0) &&
        matches.every((match) => !match.finished && match.holes.every((hole) => hole.up === null)),
    )
  return (
    <PageFrame head={headOf(board)} here="board">
      {board.calledOff !== undefined || (nothingYet && board.status !== 'in-play' && board.status !== 'closed') ? (
        <>
          <CalledOff reason={board.calledOff} />
          {board.calledOff === undefined ? <PlayNotice play={board.play} zone={houseZone()} /> : null}
          <BeforeTheDay board={board} />
        </>
      ) : screen ? (
        <LiveBoard
          key={`${board.daySlug} ${screen.competition.id}`}
          initial={screen}
          c={c <= board.competitions.length ? c : 1}
          view={viewOf(one(asked.v))}
          d={one(asked.d)}
          opened={one(asked.open) ?? null}
          mine={one(asked.e) ?? null}
        />
      ) : (
        <BoardTop
          board={{
            ...board,
            cards: board.cards ?? board.players,
            cardsToSign: board.cardsToSign ?? 0,
            cardsNotReturned: board.cardsNotReturned ?? 0,
            head: headOf(board),
            zone: houseZone(),
          }}
        />
      )}
    </PageFrame>
  )
}
