import { Empty } from '@/app/_parts/empty'
import Link from '@/app/_parts/link'
import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { proposeDay } from '@/lib/society/call-day'
import { deskHome } from '@/lib/society/desk-day'
import { courseList } from '@/lib/society/keep-course'
import { memberList } from '@/lib/society/keep-person'
import { courseChoices } from '../_day-form/course-choices'
import { DayForm } from '../_day-form/day-form'
import { wordsOf } from '../_day-form/words'
import { callTheDay } from '../actions'

interface Props {
  readonly params: Promise<{ society: string }>
  readonly searchParams: Promise<{ season?: string }>
}

export default async function NewDay({ params, searchParams }: Props) {
  const { society } = await params
  const { season: asked } = await searchParams
  const desk = `/desk/${society}`
  const actor = await officerOr(society, `${desk}/new-day`)
  const home = await deskHome(actor)
  if (!home.ok) return <DeskRefusal answer={home} back={desk} />
  const courses = await courseList(actor)
  if (!courses.ok) return <DeskRefusal answer={courses} back={desk} />
  const season = home.value.seasons.find((one) => one.seasonId === asked) ?? home.value.seasons[0]
  const frame = {
    societySlug: society,
    societyName: home.value.societyName,
    tabs: societyTabs(society),
    current: 'days',
    folio: season?.name ?? '',
  }
  if (!season || courses.value.length === 0) {
    return (
      <DeskFrame {...frame}>
        <div className="title">
          <h1>Call a day</h1>
        </div>
        {season ? (
          <Empty
            first="A course is needed first."
            acts={
              <Link className="btn first" href={`${desk}/courses/new`}>
                Enter a course
              </Link>
            }
          >
            Its tees, ratings and stroke indexes decide who gets strokes where.
          </Empty>
        ) : (
          <Empty
            first="A season is needed first."
            acts={
              <Link className="btn first" href={desk}>
                Open a season
              </Link>
            }
          />
        )}
      </DeskFrame>
    )
  }
  const proposed = await proposeDay(actor, season.seasonId)
  if (!proposed.ok) return <DeskRefusal answer={proposed} back={desk} />
  const members = await memberList(actor)
  // The day the proposal was made from: the latest by its date, of two on one date the one called later.
  const last = home.value.seasons
    .flatMap((one) => one.fixtures)
    .sort((a, b) => a.date.localeCompare(b.date) || a.number - b.number)
    .at(-1)
  return (
    <DeskFrame {...frame}>
      <div className="title">
        <p className="sc second">
          {season.name} · day {season.fixtures.length + 1}
        </p>
        <h1>Call a day</h1>
        <p className="lead">
          {last ? `Filled in from ${last.name}. Change what is different.` : 'Filled in with what is usual.'} Nothing is
          fixed until handicaps are frozen.
        </p>
      </div>
      <DayForm
        action={callTheDay.bind(null, society)}
        label="Call a day"
        day={proposed.value}
        courses={courseChoices(courses.value)}
        expected={last?.entered || home.value.members}
        send="Call the day"
        {...(last ? { takenFrom: last.name } : {})}
        words={members.ok ? wordsOf(members.value) : []}
      />
    </DeskFrame>
  )
}
