import type { Metadata } from 'next'
import { Folio } from '@/app/_parts/folio'
import { RunningHead } from '@/app/_parts/running-head'
import { fixtures } from '@/lib/society/read-board'
import { societyAt } from '../../_board/addresses'
import { found } from '../../_board/answer'
import { HowWeCount } from '../../_board/how-we-count'
import { NothingHere } from '../../_board/nothing-here'
import '../../_styles/count.css'

interface Props {
  params: Promise<{ society: string }>
}

export const metadata: Metadata = {
  title: 'How we count',
  description: 'Every rule this book counts by: clause, edition, and where a house choice departs from it.',
}

export default async function HowWeCountPage({ params }: Props) {
  const { society } = await params
  const { value: card, refusal } = found(await fixtures(society))
  if (refusal) return <NothingHere society={society} refusal={refusal} />
  return (
    <div className="page">
      <RunningHead society={card.societyName} href={societyAt(card.societySlug)} place="How we count" />
      <main id="main">
        <HowWeCount season={card.days.flatMap((day) => day.formats)} />
      </main>
      <Folio name={card.societyName} place="The rules" />
    </div>
  )
}
