import { ActForm } from '@/app/desk/_form/act-form'
import type { DayAddress } from '@/app/desk/_form/answer-for-day'
import { Field, Send } from '@/app/desk/_form/field'
import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import { whatHangsOn } from '@/lib/boards/called-off'
import type { DayRecord } from '@/lib/facts/day-record'
import { callOffTheDay, deleteTheDay, putTheDayOn } from './lifecycle-actions'

interface Props {
  readonly record: DayRecord
  readonly where: DayAddress
}

const Seen = ({ record }: { readonly record: DayRecord }) => (
  <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
)

/** Calling the day off or putting it back on; deleting it while nothing hangs on it. */
export function CallOff({ record, where }: Props) {
  if (record.calledOff)
    return (
      <section className="desk-sheet" id="call-off" aria-labelledby="call-off-h">
        <h2 id="call-off-h">Put the day back on</h2>
        <ActForm action={putTheDayOn.bind(null, where)} label="Put the day back on">
          <Seen record={record} />
          <p>
            Entries, handicaps, draw and cards are as they were. To play on another date, put it back on and then change
            the date.
          </p>
          <p className="acts">
            <Send kind="first">Put the day back on</Send>
          </p>
        </ActForm>
        <Delete record={record} where={where} />
      </section>
    )
  if (record.status === 'closed' || record.publications.length > 0) return null
  return (
    <details className="rule-all" id="call-off">
      <summary>Call the day off or delete it</summary>
      <ActForm action={callOffTheDay.bind(null, where)} label="Call the day off">
        <Seen record={record} />
        <p>
          The day stays in the fixture list, marked as called off.
          {record.startPublishedAt ? ' The links and codes of the groups end at once.' : ''}
          {record.facts.length > 0 ? ' The scores entered so far are kept but do not count.' : ''} You can put it back
          on later.
        </p>
        <Field
          name="reason"
          label="Reason"
          hint="Everybody reads it: “The course is waterlogged.”"
          required
          minLength={3}
          maxLength={200}
        />
        <p className="acts">
          <Send kind="grave">Call the day off</Send>
        </p>
      </ActForm>
      <Delete record={record} where={where} />
    </details>
  )
}

function Delete({ record, where }: Props) {
  const hanging = whatHangsOn(record, [])
  return (
    <ActForm action={deleteTheDay.bind(null, where)} label="Delete the day">
      <Seen record={record} />
      {hanging.length > 0 ? (
        <p className="small second">It cannot be deleted: {hanging.join(' ')}</p>
      ) : (
        <p>Nobody is entered and nothing is published: the day can be deleted for good.</p>
      )}
      <p className="acts">
        <Send kind="grave" why={hanging.length > 0 && 'it is not empty'}>
          Delete the day
        </Send>
      </p>
    </ActForm>
  )
}
