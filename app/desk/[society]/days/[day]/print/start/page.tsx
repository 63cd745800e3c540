import type { Metadata } from 'next'
import { shown } from '@/app/desk/_frame/officer'
import { formatIn } from '@/lib/boards/format-of-competition'
import type { CompetitionRecord } from '@/lib/facts/day-record'
import { startSheet } from '@/lib/society/publish-start'
import { dayBoard } from '@/lib/society/read-board'
import { dayForPrint, type PrintParams } from '../_papers/day-for-print'
import { PaperFrame } from '../_papers/paper-frame'
import { StartPaper } from '../_papers/start-paper'

export const metadata: Metadata = { title: 'Start sheet for the printer' }

const hasOneBall = (one: CompetitionRecord) => formatIn(one)?.ball === 'one'

export default async function StartPaperPage({ params }: PrintParams) {
  const { actor, record, at, society, day, address } = await dayForPrint(params, 'start')
  const sheet = shown(await startSheet(actor, record.id))
  const { course } = shown(await dayBoard(society, day))
  return (
    <PaperFrame back={at} paper="a4" print="Print the start sheet">
      <StartPaper sheet={sheet} course={course} address={address} isOneBall={record.competitions.some(hasOneBall)} />
    </PaperFrame>
  )
}
