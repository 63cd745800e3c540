import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { deskHome } from '@/lib/society/desk-day'
import { ImportForm } from '../../_import/import-form'
import { readCourseIn } from './actions'

export default async function ImportCourse({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params
  const actor = await officerOr(society, `/desk/${society}/courses/import`)
  const home = await deskHome(actor)
  if (!home.ok) return <DeskRefusal answer={home} back="/desk" />
  return (
    <DeskFrame
      societySlug={society}
      societyName={home.value.societyName}
      tabs={societyTabs(society)}
      current="courses"
      folio={home.value.seasons[0]?.name ?? ''}
    >
      <div className="title">
        <h1>Read in a course card</h1>
        <p className="lead">You see what will happen before anything happens.</p>
      </div>
      <ImportForm
        action={readCourseIn.bind(null, society)}
        what="the course card"
        rowOf="course"
        head="One line a hole: hole, par, stroke index and yards, with the tees, course rating and slope."
      />
    </DeskFrame>
  )
}
