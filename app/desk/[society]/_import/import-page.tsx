import type { ReactNode } from 'react'
import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { deskHome } from '@/lib/society/desk-day'

interface Props {
  readonly society: string
  /** The tab it stands under, and its part of the address. */
  readonly room: 'members' | 'courses'
  readonly title: string
  readonly lead: string
  readonly children: ReactNode
}

/** A file is imported: what would happen is seen before anything happens. */
export async function ImportPage({ society, room, title, lead, children }: Props) {
  const actor = await officerOr(society, `/desk/${society}/${room}/import`)
  const home = await deskHome(actor)
  if (!home.ok) return <DeskRefusal answer={home} back="/desk" />
  return (
    <DeskFrame
      societySlug={society}
      societyName={home.value.societyName}
      tabs={societyTabs(society)}
      current={room}
      folio={home.value.seasons[0]?.name ?? ''}
    >
      <div className="title">
        <h1>{title}</h1>
        <p className="lead">{lead}</p>
      </div>
      {children}
    </DeskFrame>
  )
}
