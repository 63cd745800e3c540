import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import { DayFrame, dayRoom } from '@/app/desk/_frame/day-room'
import { DeskRefusal } from '@/app/desk/_frame/desk-frame'
import { momentOf } from '@/app/desk/_frame/moments'
import { courseChoices } from '@/app/desk/[society]/_day-form/course-choices'
import { DayForm } from '@/app/desk/[society]/_day-form/day-form'
import { FrozenDayForm } from '@/app/desk/[society]/_day-form/frozen-day-form'
import { wordsOf } from '@/app/desk/[society]/_day-form/words'
import { formatIn } from '@/lib/boards/format-of-competition'
import type { HandicapTable } from '@/lib/boards/views'
import type { DayRecord } from '@/lib/facts/day-record'
import { inWords } from '@/lib/rules/formats/catalogue'
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
  const form = {
    action: changeTheDay.bind(null, { society, day }),
    label: `Change ${record.name}`,
    day: asCalled(record, places, courses.value),
    send: 'Change the day',
    children: (
      <>
        <FilledWith day={asCalled(record, places, courses.value)} />
        <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
      </>
    ),
  }
  return (
    <DayFrame room={room} current="day">
      <div className="title">
        <p className="sc second">Day {record.number}</p>
        <h1>Change {record.name}</h1>
      </div>
      {record.frozenAt ? (
        <FrozenDayForm {...form} frozen={momentOf(record.frozenAt)} stays={staysOf(record, desk.tees)} />
      ) : (
        <DayForm
          {...form}
          courses={courseChoices(courses.value)}
          expected={counts.entered}
          words={members.ok ? wordsOf(members.value) : []}
          field={handicaps.ok ? fieldOf(handicaps.value) : {}}
          saves
        />
      )}
    </DayFrame>
  )
}

/** Course and tees, and each competition with its terms: what no field of the form can change any more. */
const staysOf = (record: DayRecord, tees: string): readonly string[] => [
  `The course, ${record.round.courseName}, and the tees. ${tees}`,
  ...record.competitions.map((one) => {
    const { allowance, allowanceFrom } = one.terms
    const format = formatIn(one)
    const off = format?.strokes.kind === 'none' ? '' : `, ${inWords(allowance)} (${FROM[allowanceFrom]})`
    return `${one.name}: ${format?.name ?? one.format}${off}, with its other terms.`
  }),
  'How many prizes a player may take.',
]

const FROM = { published: 'the published allowance', 'house-choice': 'the society’s own' } as const

/** Who is entered, by their playing handicaps in each competition. */
const fieldOf = ({ competitions, rows }: HandicapTable) =>
  Object.fromEntries(
    competitions.map(({ id, name }) => [
      name,
      rows.flatMap((row) => row.playing.filter((one) => one.competitionId === id).map((one) => one.playingHandicap)),
    ]),
  )
