import type { Metadata } from 'next'
import { notFound } from 'next/navigation'
import { cache } from 'react'
import { houseZone } from '@/lib/society/house-zone'
import { resultSheet } from '@/lib/society/read-board'
import { counting, found } from '../../../../../_board/answer'
import { NothingHere } from '../../../../../_board/nothing-here'
import { ResultScreen } from '../../../../../_board/result-screen'
import '../../../../../_styles/result.css'

interface Props {
  params: Promise<{ society: string; day: string; number: string }>
}

const read = cache(resultSheet)

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { society, day, number } = await params
  const answer = await read(society, day, counting(number))
  if (!answer.ok) return { title: 'Result' }
  const { board, number: sheetNumber } = answer.value.sheet
  return { title: `Result, sheet ${sheetNumber}: ${board.dayName} · ${board.societyName}` }
}

export default async function OlderResultPage({ params }: Props) {
  const { society, day, number } = await params
  const sheetNumber = counting(number)
  if (sheetNumber === undefined) notFound()
  const { value: published, refusal } = found(await read(society, day, sheetNumber))
  if (refusal) return <NothingHere society={society} refusal={refusal} />
  return <ResultScreen published={published} zone={houseZone()} />
}
