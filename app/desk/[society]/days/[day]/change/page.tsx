import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import { DayFrame, dayRoom } from '@/app/desk/_frame/day-room'
import { DeskRefusal } from '@/app/desk/_frame/desk-frame'
import { momentOf } from '@/app/desk/_frame/moments'
import { courseChoices } from '@/app/desk/[society]/_day-form/course-choices'
import { DayForm } from '@/app/desk/[society]/_day-form/day-form'
import { wordsOf } from '@/app/desk/[society]/_day-form/words'
import type { CourseRow } from '@/lib/boards/desk-views'
import type { CallDay } from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import type { Gender } from '@/lib/rules/day'
import { courseList } from '@/lib/society/keep-course'
import { memberList } from '@/lib/society/keep-person'
import { changeTheDay } from './actions'

export default async function ChangeDay({ params }: { params: Promise<{ society: string; day: string }> }) {
  const room = await dayRoom(params, 'change')
  if ('refusal' in room) return room.refusal
  const { society, day, at, actor, desk } = room
  const courses = await courseList(actor)
  if (!courses.ok) return <DeskRefusal answer={courses} back={at} />
  const members = await memberList(actor)
  const { record, counts, places } = desk
  return (
    <DayFrame room={room} current="day">
      <div className="title">
        <p className="sc second">Day {record.number}</p>
        <h1>Change {record.name}</h1>
      </div>
      <DayForm
        action={changeTheDay.bind(null, { society, day })}
        label={`Change ${record.name}`}
        day={asCalled(record, places, courses.value)}
        courses={courseChoices(courses.value)}
        expected={counts.entered}
        words={members.ok ? wordsOf(members.value) : []}
        send="Change the day"
        fixed={
          record.frozenAt
            ? `Handicaps were frozen ${momentOf(record.frozenAt)}: course, tees and terms stand as they are. Name, date and times may still move.`
            : null
        }
      >
        <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
      </DayForm>
    </DayFrame>
  )
}

/** The day of the book back in the shape in which it was called. */
function asCalled(record: DayRecord, places: number | null, courses: readonly CourseRow[]): CallDay {
  const course = courses.find((one) => one.courseId === record.round.courseId)
  const tee = (gender: Gender) => {
    const usual = record.tees.find((one) => one.gender === gender && one.isDefault)
    return course?.tees.find((one) => one.gender === gender && one.name === usual?.name)?.teeId ?? null
  }
  return {
    seasonId: record.season.id,
    name: record.name,
    date: record.date,
    courseId: record.round.courseId,
    holes: record.round.holes === 9 ? 9 : 18,
    startKind: record.round.startKind,
    firstTee: record.round.firstTee,
    intervalMinutes: record.round.intervalMinutes,
    entriesCloseOn: record.entriesCloseOn,
    places,
    teeMen: tee('men'),
    teeWomen: tee('women'),
    competitions: record.competitions.map(({ name, format, terms, prizes }) => ({
      name,
      format,
      terms,
      prizes: prizes.map((prize) => ({
        name: prize.name,
        place: prize.place,
        eligible: prize.eligible,
        division: prize.division ?? null,
        valuePence: prize.valuePence,
      })),
    })),
  }
}
