import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { deskHome } from '@/lib/society/desk-day'
import { ImportForm } from '../../_import/import-form'
import { readMembersIn } from './actions'

export default async function ImportMembers({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params
  const actor = await officerOr(society, `/desk/${society}/members/import`)
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
        <h1>Read in a member list</h1>
        <p className="lead">You see row by row what will happen before anything happens.</p>
      </div>
      <ImportForm
        action={readMembersIn.bind(null, society)}
        what="the members"
        rowOf="member"
        head="A heading row with name and handicap is enough; plus figures, stars and blank lines are understood."
      />
    </DeskFrame>
  )
}
