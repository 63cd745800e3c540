import type { Metadata } from 'next'
import { Notice } from '@/app/_parts/notice'
import { refused } from '@/lib/result'
import { dayBoard } from '@/lib/society/read-board'
import { cardsOfDay, competitionMatch, matchOf } from '@/lib/society/read-card'
import { type Asked, counting, found, one } from '../../../../_board/answer'
import { ChooseTwo } from '../../../../_board/choose-two'
import { MatchPage } from '../../../../_board/match-page'
import { NothingHere } from '../../../../_board/nothing-here'
import { PageFrame } from '../../../../_board/page-frame'
import { headOf } from '../../../../_board/screen-board'
import '../../../../_styles/match.css'

interface Props {
  params: Promise<{ society: string; day: string }>
  searchParams: Asked
}

export async function generateMetadata({ params, searchParams }: Props): Promise<Metadata> {
  const { society, day } = await params
  const sheet = await asked(society, day, await searchParams)
  if (!sheet?.ok) return { title: 'Cards as a match' }
  const { a: left, b: right, match } = sheet.value
  return {
    title: `${left.name} against ${right.name}: ${match.result} · ${sheet.value.societyName}`,
    description: sheet.value.sentence,
  }
}

type Query = Awaited<Asked>

/** A match of a competition by its id; else nothing until two cards are named; four when both have a partner, and a refusal when only one has. */
async function asked(society: string, day: string, query: Query) {
  const hole = counting(query.hole) ?? null
  const match = one(query.m)
  if (match) return competitionMatch(society, day, { competition: counting(query.c) ?? 1, match, hole })
  const [a, b, a2, b2] = [one(query.a), one(query.b), one(query.a2), one(query.b2)]
  if (!a || !b) return null
  if (a === b) return refused('card-twice', 'Choose two different players.')
  if (!a2 && !b2) return matchOf(society, day, a, b, undefined, hole)
  if (!a2 || !b2)
    return refused('partner-missing', 'A four-ball has two partners on each side: choose the fourth card.')
  if (new Set([a, b, a2, b2]).size < 4)
    return refused('card-twice', 'Four different cards make a four-ball: one is chosen twice.')
  return matchOf(society, day, a, b, { a: a2, b: b2 }, hole)
}

export default async function TwoCardsPage({ params, searchParams }: Props) {
  const { society, day } = await params
  const query = await searchParams
  const answer = await asked(society, day, query)
  if (answer?.ok)
    return (
      <PageFrame head={answer.value}>
        <MatchPage sheet={answer.value} />
      </PageFrame>
    )
  const { value: board, refusal } = found(await dayBoard(society, day))
  if (refusal) return <NothingHere society={society} refusal={refusal} />
  const cards = await cardsOfDay(society, day)
  const players = cards.ok ? cards.value : []
  return (
    <PageFrame head={headOf(board)}>
      <div className="title">
        <p className="sc second">{board.dayName}</p>
        <h1>Cards as a match</h1>
        <p className="lead">
          Any two cards of the day, hole by hole, with the strokes where they fall: who was up, and how it would have
          ended. With partners, any four as a four-ball.
        </p>
      </div>
      {answer && !answer.ok && (
        <Notice kind="differs" word="No match" announced>
          <p>{answer.sentence}</p>
        </Notice>
      )}
      <ChooseTwo
        sheet={{
          societySlug: board.societySlug,
          daySlug: board.daySlug,
          players,
          a: one(query.a),
          b: one(query.b),
          a2: one(query.a2) || undefined,
          b2: one(query.b2) || undefined,
        }}
      />
    </PageFrame>
  )
}
