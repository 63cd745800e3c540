import { ImportPage } from '../../_import/import-page'
import { readCourseIn } from './actions'

export default async function ImportCourse({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params
  return (
    <ImportPage
      society={society}
      room="courses"
      title="Read in a course card"
      lead="You see what will happen before anything happens."
      action={readCourseIn.bind(null, society)}
      what="the course card"
      rowOf="course"
      head="One line a hole: hole, par, stroke index and yards, with the tees, course rating and slope."
    />
  )
}
