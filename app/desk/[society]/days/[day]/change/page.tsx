import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import { DayFrame, dayRoom } from '@/app/desk/_frame/day-room'
import { DeskRefusal } from '@/app/desk/_frame/desk-frame'
import { momentOf } from '@/app/desk/_frame/moments'
import { courseChoices } from '@/app/desk/[society]/_day-form/course-choices'
import { DayForm } from '@/app/desk/[society]/_day-form/day-form'
import { wordsOf } from '@/app/desk/[society]/_day-form/words'
import type { HandicapTable } from '@/lib/boards/views'
import { handicapTable } from '@/lib/society/freeze-handicaps'
import { courseList } from '@/lib/society/keep-course'
import { memberList } from '@/lib/society/keep-person'
import { changeTheDay } from './actions'
import { asCalled } from './as-called'
import { FilledWith } from './filled-with'

export default async function ChangeDay({ params }: { params: Promise<{ society: string; day: string }> }) {
  const room = await dayRoom(params, 'change')
  if ('refusal' in room) return room.refusal
  const { society, day, at, actor, desk } = room
  const courses = await courseList(actor)
  if (!courses.ok) return <DeskRefusal answer={courses} back={at} />
  const members = await memberList(actor)
  const { record, counts, places } = desk
  const handicaps = await handicapTable(actor, record.id)
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
        field={handicaps.ok ? fieldOf(handicaps.value) : {}}
        send="Change the day"
        saves
        fixed={
          record.frozenAt
            ? `Handicaps were frozen ${momentOf(record.frozenAt)}: course, tees and terms stand as they are. Name, date and times may still move.`
            : null
        }
      >
        <FilledWith day={asCalled(record, places, courses.value)} />
        <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
      </DayForm>
    </DayFrame>
  )
}

/** Who is entered, by their playing handicaps in each competition. */
const fieldOf = ({ competitions, rows }: HandicapTable) =>
  Object.fromEntries(
    competitions.map(({ id, name }) => [
      name,
      rows.flatMap((row) => row.playing.filter((one) => one.competitionId === id).map((one) => one.playingHandicap)),
    ]),
  )
