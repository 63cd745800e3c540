import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { deskHome } from '@/lib/society/desk-day'
import { firstSteps } from '@/lib/society/first-steps'
import { keepMember } from '../actions'
import { PersonForm } from '../person-form'

interface Props {
  readonly params: Promise<{ society: string }>
  readonly searchParams: Promise<{ me?: string }>
}

export default async function NewMember({ params, searchParams }: Props) {
  const { society } = await params
  const { me } = await searchParams
  const actor = await officerOr(society, `/desk/${society}/members/new`)
  const home = await deskHome(actor)
  if (!home.ok) return <DeskRefusal answer={home} back="/desk" />
  const first = me === 'yes' ? await firstSteps(actor) : null
  const suggested = first?.ok ? first.value?.addMe : null
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
      <PersonForm
        action={keepMember.bind(null, society)}
        at={`/desk/${society}/members`}
        {...(suggested ? { suggested } : {})}
      />
    </DeskFrame>
  )
}
