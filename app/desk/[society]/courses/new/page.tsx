import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { deskHome } from '@/lib/society/desk-day'
import { keepTheCourse } from '../actions'
import { CourseForm } from '../course-form'

export default async function NewCourse({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params
  const actor = await officerOr(society, `/desk/${society}/courses/new`)
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
        <h1>Enter a course</h1>
        <p className="lead">
          From its printed card. Women’s par and stroke indexes often differ: give them their own tees.
        </p>
      </div>
      <CourseForm
        action={keepTheCourse.bind(null, society)}
        course={{ known: null, name: '', place: '', tees: null }}
      />
    </DeskFrame>
  )
}
