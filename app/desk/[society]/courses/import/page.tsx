import { ImportPage } from '../../_import/import-page'
import { readCourseIn } from './actions'
import { CourseImport } from './course-import'

export default async function ImportCourse({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params
  return (
    <ImportPage
      society={society}
      room="courses"
      title="Import a course card"
      lead="From a spreadsheet, laid out as the card is printed. Nothing is saved until you press Import."
    >
      <CourseImport action={readCourseIn.bind(null, society)} />
    </ImportPage>
  )
}
