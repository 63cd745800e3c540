import { Empty } from '@/app/_parts/empty'
import Link from '@/app/_parts/link'
import { Notice } from '@/app/_parts/notice'
import { ActForm } from '@/app/desk/_form/act-form'
import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import { DayFrame, dayRoom } from '@/app/desk/_frame/day-room'
import { DeskRefusal } from '@/app/desk/_frame/desk-frame'
import { LeftOutNotice } from '@/app/desk/_frame/left-out'
import { momentOf } from '@/app/desk/_frame/moments'
import { fieldSizeNotes } from '@/lib/boards/field-size'
import { leftOut } from '@/lib/boards/left-out'
import { sideHandicapsOf } from '@/lib/boards/side-handicaps'
import { handicapTable } from '@/lib/society/freeze-handicaps'
import { changeFigure } from '../../../members/actions'
import { freezeTheDay } from '../actions'
import { FreezeButtons } from '../freeze-buttons'
import { FreezeAgain } from './freeze-again'
import { HandicapTable } from './handicap-table'
import { MissingHandicaps } from './missing-handicaps'
import { SideTable } from './side-table'
import { whyNotFreeze } from './why-not-freeze'
import { Working } from './working'
import { workingOf } from './working-of'

interface Props {
  readonly params: Promise<{ society: string; day: string }>
  readonly searchParams: Promise<{ open?: string; in?: string }>
}

export default async function Handicaps({ params, searchParams }: Props) {
  const room = await dayRoom(params, 'handicaps')
  if ('refusal' in room) return room.refusal
  const asked = await searchParams
  const { society, day, at, actor, desk } = room
  const { record } = desk
  const answer = await handicapTable(actor, record.id)
  if (!answer.ok) return <DeskRefusal answer={answer} back={at} />
  const table = answer.value
  const tenths = new Map(record.entries.map((entry) => [entry.id, entry.indexTenths ?? 0]))
  const rows = table.rows.map((row) => ({ ...row, indexTenths: tenths.get(row.entryId) ?? 0 }))
  const sizeNotes = fieldSizeNotes(record)
  const left = leftOut(record)
  const opened = table.rows.find((row) => row.entryId === asked.open)
  const competition = table.competitions.find((one) => one.id === asked.in) ?? table.competitions[0]
  return (
    <DayFrame room={room} current="handicaps">
      <div className="desk-title">
        <div>
          <p className="sc second">
            Day {record.number} · {record.name}
          </p>
          <h1>Handicaps</h1>
          <p className="lead">
            {record.frozenAt
              ? `Frozen ${momentOf(record.frozenAt)}. A later change of anybody’s handicap alters nothing here by itself.`
              : 'As they stand now. Freezing fixes them for this day.'}
          </p>
        </div>
      </div>
      <MissingHandicaps
        action={changeFigure.bind(null, society)}
        missing={table.missing}
        today={desk.today}
        members={`/desk/${society}/members`}
        day={day}
      />
      {sizeNotes.length > 0 ? (
        <Notice
          kind="waits"
          word="The size of the field"
          acts={
            <Link className="btn" href={`${at}/change`}>
              Change the allowance
            </Link>
          }
        >
          {sizeNotes.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </Notice>
      ) : null}
      {table.frozen ? null : <LeftOutNotice sentences={left} at={at} />}
      {opened && competition ? (
        <Working
          title={`${opened.name}, ${competition.name}`}
          steps={workingOf(record, opened.entryId, competition.id)}
          close={`${at}/handicaps`}
        />
      ) : null}
      {table.rows.length === 0 ? (
        <Empty first="Nobody is entered yet.">The table begins with the first entry.</Empty>
      ) : (
        <HandicapTable table={table} rows={rows} open={{ entryId: opened?.entryId, competitionId: competition?.id }} />
      )}
      {table.rows.length === 0
        ? null
        : sideHandicapsOf(record).map((one) => (
            <SideTable
              key={one.competitionId}
              competition={one}
              frozen={record.frozenAt ? momentOf(record.frozenAt) : null}
            />
          ))}
      {table.frozen ? null : (
        <ActForm action={freezeTheDay.bind(null, { society, day })} label="Freeze handicaps" className="freeze">
          <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
          <input type="hidden" name="many" value={table.rows.length} />
          <FreezeButtons many={table.rows.length} why={whyNotFreeze(table.rows.length, table.missing)} />
        </ActForm>
      )}
      <FreezeAgain record={record} where={{ society, day }} at={at} />
    </DayFrame>
  )
}
