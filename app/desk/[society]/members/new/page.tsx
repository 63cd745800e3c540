import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { deskHome } from '@/lib/society/desk-day'
import { keepMember } from '../actions'
import { PersonForm } from '../person-form'

export default async function NewMember({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params
  const actor = await officerOr(society, `/desk/${society}/members/new`)
  const home = await deskHome(actor)
  if (!home.ok) return <DeskRefusal answer={home} back="/desk" />
  return (
    <DeskFrame
      societySlug={society}
      societyName={home.value.societyName}
      tabs={societyTabs(society)}
      current="members"
      folio={home.value.seasons[0]?.name ?? ''}
    >
      <div className="title">
        <h1>Add a member</h1>
      </div>
      <PersonForm action={keepMember.bind(null, society)} at={`/desk/${society}/members`} />
    </DeskFrame>
  )
}
