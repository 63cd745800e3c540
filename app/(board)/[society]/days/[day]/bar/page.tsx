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
  const c = counting(asked.c)
  const places = c !== undefined && c <= board.competitions.length ? [c] : board.competitions.map((_, at) => at + 1)
  const screens = places.flatMap((place) => screenBoard(board, place, houseZone()) ?? [])
  if (screens.length === 0)
    return (
      <main className="bar" id="main">
        <h1>{board.dayName}</h1>
        <p className="bar-in">{board.sentence}</p>
        <PlayNotice play={board.play} zone={houseZone()} />
      </main>
    )
  return <BarScreen initial={screens} places={places} still={counting(asked.page) ?? null} />
}
