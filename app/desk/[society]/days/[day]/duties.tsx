import Link from '@/app/_parts/link'
import { ActForm } from '@/app/desk/_form/act-form'
import { Send } from '@/app/desk/_form/field'
import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import { clockInWords, shortDateInWords } from '@/lib/boards/dates-in-words'
import type { DeskDay, Due } from '@/lib/boards/desk-views'
import { byName, fullName } from '@/lib/facts/person-name'
import { shownDraw } from '@/lib/facts/shown-draw'
import { freezeTheDay, publishTheStart } from './actions'
import { FreezeButtons } from './freeze-buttons'
import { whyNotFreeze } from './handicaps/why-not-freeze'

interface Props {
  readonly day: DeskDay
  readonly society: string
  readonly at: string
}

/** The clock of the day: what is done, what is due now with its one button, what comes after. */
export function Duties({ day, society, at }: Props) {
  return (
    <ol className="ledger duties">
      {day.due.map((due) =>
        due.state === 'next' ? (
          <li key={due.what} className="duty due">
            <p className="in-margin when fig">
              {shortDateInWords(due.on)}
              {due.at ? (
                <>
                  {' '}
                  <br />
                  {clockInWords(due.at)}
                </>
              ) : null}
            </p>
            <div>
              <p className="sc">{due.late ? 'Overdue' : due.on === day.today ? 'Due today' : 'Due next'}</p>
              <h3>{due.title}</h3>
              <p>{due.note}</p>
              <DueAct due={due} day={day} society={society} at={at} />
            </div>
          </li>
        ) : (
          <li key={due.what} className={due.state === 'done' ? 'duty done' : 'duty next'}>
            <p className="in-margin when fig">
              {due.at && due.on === day.record.date ? clockInWords(due.at) : shortDateInWords(due.on)}
            </p>
            <p>
              <span className="what">{due.title}</span>
              <span className="second">{due.note}</span>
            </p>
            {due.state === 'done' ? <span className="small second">done</span> : null}
          </li>
        ),
      )}
    </ol>
  )
}

function DueAct({ due, day, society, at }: Props & { readonly due: Due }) {
  const { record, counts } = day
  const where = { society, day: record.slug }
  const missing = record.entries
    .filter((entry) => entry.status === 'entered' && entry.indexTenths === null)
    .sort(byName)
    .map((entry) => ({ name: fullName(entry) }))
  const seen = <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
  switch (due.what) {
    case 'freeze':
      return (
        <ActForm action={freezeTheDay.bind(null, where)} label="Freeze handicaps">
          {seen}
          <input type="hidden" name="many" value={counts.entered} />
          {counts.noFigure > 0 ? (
            <p>
              <Link href={`${at}/handicaps`}>
                {counts.noFigure === 1
                  ? 'Write the missing handicap'
                  : `Write the ${counts.noFigure} missing handicaps`}
              </Link>
            </p>
          ) : null}
          <FreezeButtons many={counts.entered} why={whyNotFreeze(counts.entered, missing)}>
            <Link className="btn plain" href={`${at}/handicaps`}>
              Look at the {counts.entered} first
            </Link>
          </FreezeButtons>
        </ActForm>
      )
    case 'publish-start':
      return (
        <ActForm action={publishTheStart.bind(null, where)} label="Publish the start sheet">
          {seen}
          <input type="hidden" name="draw" value={shownDraw(record.groups)} />
          <p className="acts">
            <Send kind="first">Publish the start sheet</Send>
            <Link className="btn plain" href={`${at}/draw`}>
              Look at the draw first
            </Link>
          </p>
        </ActForm>
      )
    case 'call':
    case 'close-entries':
      return <To href={`${at}/entries`}>To the entries</To>
    case 'draw':
      return <To href={`${at}/draw`}>Make the draw</To>
    case 'first-tee':
    case 'returns':
      return <To href={`${at}/returns`}>Take cards in</To>
    case 'close':
      return <To href={`${at}/result`}>Close the day</To>
    case 'publish':
      return <To href={`${at}/result`}>Publish the result</To>
    case 'handicap-changes':
      return <To href={`/desk/${society}/members`}>To the members</To>
  }
}

function To({ href, children }: { readonly href: string; readonly children: string }) {
  return (
    <p className="acts">
      <Link className="btn first" href={href}>
        {children}
      </Link>
    </p>
  )
}
