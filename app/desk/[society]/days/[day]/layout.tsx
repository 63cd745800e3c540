import { headers } from 'next/headers'
import type { ReactNode } from 'react'
import { InDay } from '@/app/desk/_frame/day-line'
import { dayPlace } from '@/lib/society/day-place'
import { officerAt } from '@/lib/society/who-is-asking'

interface Props {
  readonly children: ReactNode
  readonly params: Promise<{ society: string; day: string }>
}

/** Every room of a day knows its neighbours; who may not read them is turned away by the room itself. */
export default async function DayLayout({ children, params }: Props) {
  const { society, day } = await params
  const actor = await officerAt(await headers(), society)
  const place = actor ? await dayPlace(actor, day) : null
  return (
    <InDay society={society} place={place?.ok ? place.value : null}>
      {children}
    </InDay>
  )
}
