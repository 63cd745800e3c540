import type { Metadata } from 'next'
import { Notice } from '@/app/_parts/notice'
import { dayBoard } from '@/lib/society/read-board'
import { matchOf } from '@/lib/society/read-card'
import { type Asked, found, one } from '../../../../_board/answer'
import { ChooseTwo } from '../../../../_board/choose-two'
import { MatchPage } from '../../../../_board/match-page'
import { NothingHere } from '../../../../_board/nothing-here'
import { PageFrame } from '../../../../_board/page-frame'
import { playersOf } from '../../../../_board/players-of'
import { headOf } from '../../../../_board/screen-board'
import '../../../../_styles/day.css'
import '../../../../_styles/match.css'

interface Props {
  params: Promise<{ society: string; day: string }>
  searchParams: Asked
}

export async function generateMetadata({ params, searchParams }: Props): Promise<Metadata> {
  const { society, day } = await params
  const { a, b } = await searchParams
  const [first, second] = [one(a), one(b)]
  if (!first || !second) return { title: 'Two cards as a match' }
  const sheet = await matchOf(society, day, first, second)
  if (!sheet.ok) return { title: 'Two cards as a match' }
  const { a: left, b: right, match } = sheet.value
  return {
    title: `${left.name} against ${right.name}: ${match.result} · ${sheet.value.societyName}`,
    description: sheet.value.sentence,
  }
}

export default async function TwoCardsPage({ params, searchParams }: Props) {
  const { society, day } = await params
  const asked = await searchParams
  const [a, b] = [one(asked.a), one(asked.b)]
  const answer = a && b ? await matchOf(society, day, a, b) : null
  if (answer?.ok)
    return (
      <PageFrame head={answer.value}>
        <MatchPage sheet={answer.value} />
      </PageFrame>
    )
  const { value: board, refusal } = found(await dayBoard(society, day))
  if (refusal) return <NothingHere society={society} refusal={refusal} />
  const players = playersOf(board)
  return (
    <PageFrame head={headOf(board)}>
      <div className="title">
        <p className="sc second">{board.dayName}</p>
        <h1>Two cards as a match</h1>
        <p className="lead">
          Any two cards of the day, hole by hole, with the strokes where they fall: who was up, and how it would have
          ended.
        </p>
      </div>
      {answer && !answer.ok && (
        <Notice kind="differs" word="No match" announced>
          <p>{answer.sentence}</p>
        </Notice>
      )}
      <ChooseTwo sheet={{ societySlug: board.societySlug, daySlug: board.daySlug, players, a, b }} />
    </PageFrame>
  )
}
