import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import type { CourseId } from '@/lib/facts/ids'
import { deskHome } from '@/lib/society/desk-day'
import { courseById } from '@/lib/society/keep-course'
import { deleteTheCourse, keepTheCourse } from '../actions'
import { teesOf } from '../card-draft'
import { CourseForm } from '../course-form'
import { DeleteCourse } from '../delete-course'

export default async function Course({ params }: { params: Promise<{ society: string; course: CourseId }> }) {
  const { society, course: courseId } = await params
  const at = `/desk/${society}/courses`
  const actor = await officerOr(society, `${at}/${courseId}`)
  const home = await deskHome(actor)
  if (!home.ok) return <DeskRefusal answer={home} back="/desk" />
  const found = await courseById(actor, courseId)
  if (!found.ok) return <DeskRefusal answer={found} back={at} />
  const course = found.value
  return (
    <DeskFrame
      societySlug={society}
      societyName={home.value.societyName}
      tabs={societyTabs(society)}
      current="courses"
      folio={home.value.seasons[0]?.name ?? ''}
    >
      <div className="title">
        <p className="sc second">Course</p>
        <h1>{course.name}</h1>
        <p className="lead">Days already called keep the card they were called with.</p>
      </div>
      <CourseForm
        key={course.courseId}
        action={keepTheCourse.bind(null, society)}
        course={{
          known: { courseId: course.courseId, version: course.version },
          name: course.name,
          place: course.place ?? '',
          tees: teesOf(course),
        }}
      />
      <DeleteCourse
        action={deleteTheCourse.bind(null, society)}
        courseId={course.courseId}
        version={course.version}
        name={course.name}
      />
    </DeskFrame>
  )
}
