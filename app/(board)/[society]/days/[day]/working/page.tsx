import type { Metadata } from 'next'
import { dayWorking } from '@/lib/society/read-card'
import { type Asked, counting, found, one } from '../../../../_board/answer'
import { DayWorkingPage } from '../../../../_board/day-working-page'
import { NothingHere } from '../../../../_board/nothing-here'
import { PageFrame } from '../../../../_board/page-frame'
import '../../../../_styles/card.css'

interface Props {
  params: Promise<{ society: string; day: string }>
  searchParams: Asked
}

/** `?team=…` a team's points, with `c` those of one competition; `?c=1&d=…` a division. */
async function asked({ params, searchParams }: Props) {
  const { society, day } = await params
  const query = await searchParams
  const c = counting(query.c) ?? null
  const team = one(query.team)
  return dayWorking(
    society,
    day,
    team ? { team, competition: c } : { division: one(query.d) ?? '', competition: c ?? 1 },
  )
}

export async function generateMetadata(props: Props): Promise<Metadata> {
  const working = await asked(props)
  if (!working.ok) return { title: 'A working' }
  const { title, of, societyName } = working.value
  return { title: `${title}, ${of}: working · ${societyName}` }
}

export default async function DayWorkingScreen(props: Props) {
  const { society } = await props.params
  const { value: working, refusal } = found(await asked(props))
  if (refusal) return <NothingHere society={society} refusal={refusal} />
  return (
    <PageFrame head={working}>
      <DayWorkingPage working={working} />
    </PageFrame>
  )
}
