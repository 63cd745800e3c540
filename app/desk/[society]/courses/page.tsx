import { Empty } from '@/app/_parts/empty'
import Link from '@/app/_parts/link'
import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { deskHome } from '@/lib/society/desk-day'
import { courseList } from '@/lib/society/keep-course'

interface Props {
  readonly params: Promise<{ society: string }>
  readonly searchParams: Promise<{ kept?: string; others?: string; deleted?: string }>
}

export default async function Courses({ params, searchParams }: Props) {
  const { society } = await params
  const { kept, others, deleted } = await searchParams
  const at = `/desk/${society}/courses`
  const actor = await officerOr(society, at)
  const home = await deskHome(actor)
  if (!home.ok) return <DeskRefusal answer={home} back="/desk" />
  const list = await courseList(actor)
  if (!list.ok) return <DeskRefusal answer={list} back={`/desk/${society}`} />
  return (
    <DeskFrame
      societySlug={society}
      societyName={home.value.societyName}
      tabs={societyTabs(society)}
      current="courses"
      folio={home.value.seasons[0]?.name ?? ''}
    >
      <div className="desk-title">
        <div>
          <h1>Courses</h1>
          <p className="lead">Their cards are copied into each day: a change here alters no day already called.</p>
        </div>
        <p className="acts">
          <Link className="btn first" href={`${at}/new`}>
            Enter a course
          </Link>
          <Link className="btn" href={`${at}/import`}>
            Import a card
          </Link>
        </p>
      </div>
      {kept ? (
        <p className="said" role="status">
          {kept} is in the book.{others ? ' What another desk changed on its card meanwhile is kept too.' : ''}
        </p>
      ) : null}
      {deleted ? (
        <p className="said" role="status">
          {deleted} was deleted.
        </p>
      ) : null}
      {list.value.length === 0 ? (
        <Empty first="No course yet.">
          You need the card: par, stroke index, course rating and slope of each set of tees.
        </Empty>
      ) : (
        <div className="scroll" role="group" aria-label="Courses">
          <table className="desk-table courses">
            <caption className="unseen">Courses with their tees</caption>
            <thead>
              <tr>
                <th scope="col">Tees</th>
                <th scope="col" className="num">
                  Par
                </th>
                <th scope="col" className="num">
                  Rating
                </th>
                <th scope="col" className="num">
                  Slope
                </th>
                <th scope="col" className="num">
                  Yards
                </th>
              </tr>
            </thead>
            {list.value.map((course) => (
              <tbody key={course.courseId}>
                <tr className="course-name">
                  <th scope="rowgroup" colSpan={5}>
                    <Link href={`${at}/${course.courseId}`}>{course.name}</Link>{' '}
                    <span className="second small">
                      {[course.place, `${course.holes} holes`].filter(Boolean).join(', ')}
                    </span>
                  </th>
                </tr>
                {course.tees.map((tee) => (
                  <tr key={tee.teeId}>
                    <th scope="row" className="tee-name">
                      {tee.name}, {tee.gender}
                    </th>
                    <td className="num fig">{tee.par}</td>
                    <td className="num fig">{tee.courseRating}</td>
                    <td className="num fig">{tee.slopeRating}</td>
                    <td className="num fig">{tee.yards ?? '–'}</td>
                  </tr>
                ))}
              </tbody>
            ))}
          </table>
        </div>
      )}
    </DeskFrame>
  )
}
