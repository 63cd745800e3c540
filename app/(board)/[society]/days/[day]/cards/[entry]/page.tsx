import type { Metadata } from 'next'
import type { EntryId } from '@/lib/facts/ids'
import { cardWorking, playerCard, readCardAs } from '@/lib/society/read-card'
import { type Asked, counting, found, one } from '../../../../../_board/answer'
import { NothingHere } from '../../../../../_board/nothing-here'
import { PageFrame } from '../../../../../_board/page-frame'
import { CardReadAs } from '../../../../../_board/read-card-as'
import { WholeCard } from '../../../../../_board/whole-card'
import { WorkingPage } from '../../../../../_board/working-page'
import '../../../../../_styles/board.css'
import '../../../../../_styles/card.css'

interface Props {
  params: Promise<{ society: string; day: string; entry: EntryId }>
  searchParams: Asked
}

export async function generateMetadata({ params, searchParams }: Props): Promise<Metadata> {
  const { society, day, entry } = await params
  const card = await playerCard(society, day, entry)
  if (!card.ok) return { title: 'A card' }
  const hole = one((await searchParams).hole)
  const what = hole === undefined ? 'card' : hole === 'all' ? 'working of the total' : `working of hole ${hole}`
  return { title: `${card.value.name}, ${what} · ${card.value.societyName}` }
}

export default async function CardPage({ params, searchParams }: Props) {
  const { society, day, entry } = await params
  const asked = await searchParams
  const c = counting(asked.c) ?? 1
  const as = one(asked.as)
  if (as) {
    const { value: read, refusal } = found(
      await readCardAs(society, day, entry, { format: as, hole: counting(asked.hole) }),
    )
    if (refusal) return <NothingHere society={society} refusal={refusal} />
    return (
      <PageFrame head={read}>
        <CardReadAs read={read} />
      </PageFrame>
    )
  }
  if (asked.hole === undefined) {
    const { value: card, refusal } = found(await playerCard(society, day, entry))
    if (refusal) return <NothingHere society={society} refusal={refusal} />
    return (
      <PageFrame head={card}>
        <WholeCard card={card} />
      </PageFrame>
    )
  }
  const { value: working, refusal } = found(
    await cardWorking(society, day, entry, { competition: c, hole: counting(asked.hole) }),
  )
  if (refusal) return <NothingHere society={society} refusal={refusal} />
  return (
    <PageFrame head={working}>
      <WorkingPage working={working} c={c} />
    </PageFrame>
  )
}
