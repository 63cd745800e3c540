import type { Metadata } from 'next'
import { houseZone } from '@/lib/society/house-zone'
import { dayBoard } from '@/lib/society/read-board'
import { type Asked, counting, found } from '../../../../_board/answer'
import { BarScreen } from '../../../../_board/bar-screen'
import { NothingHere } from '../../../../_board/nothing-here'
import { PlayNotice } from '../../../../_board/play-notice'
import { screenBoard } from '../../../../_board/screen-board'
import '../../../../_styles/bar.css'

interface Props {
  params: Promise<{ society: string; day: string }>
  searchParams: Asked
}

export const metadata: Metadata = { title: 'The board in the bar' }

export default async function BarPage({ params, searchParams }: Props) {
  const { society, day } = await params
  const asked = await searchParams
  const { value: board, refusal } = found(await dayBoard(society, day))
  if (refusal) return <NothingHere society={society} refusal={refusal} />
  const c = counting(asked.c) ?? 1
  const screen = screenBoard(board, c, houseZone())
  if (!screen)
    return (
      <main className="bar" id="main">
        <h1>{board.dayName}</h1>
        <PlayNotice play={board.play} zone={houseZone()} />
        <p className="bar-in">{board.sentence}</p>
      </main>
    )
  return <BarScreen initial={screen} c={c <= board.competitions.length ? c : 1} still={counting(asked.page) ?? null} />
}
