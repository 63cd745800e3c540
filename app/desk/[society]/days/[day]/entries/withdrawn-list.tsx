import { ActForm } from '@/app/desk/_form/act-form'
import { Send } from '@/app/desk/_form/field'
import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import type { DeskDay } from '@/lib/boards/desk-views'
import { byName, fullName } from '@/lib/facts/person-name'
import { enterAgain } from './actions'

interface Props {
  readonly desk: DeskDay
  readonly where: { readonly society: string; readonly day: string }
}

/** Whoever withdrew, each with the way back and what it comes to. */
export function WithdrawnList({ desk: { record, counts, places }, where }: Props) {
  const withdrawn = record.entries.filter((entry) => entry.status === 'withdrawn').sort(byName)
  if (withdrawn.length === 0 || record.status === 'closed') return null
  const isFull = places !== null && counts.entered >= places
  return (
    <section aria-labelledby="withdrawn-h" className="guest">
      <h2 id="withdrawn-h">Withdrawn</h2>
      <p className="hint">
        {isFull
          ? 'The places are full: whoever is entered again goes to the end of the waiting list.'
          : record.groups.length > 0
            ? 'Whoever is entered again is in no group until put into one under Draw.'
            : 'Whoever is entered again has the place back.'}
      </p>
      <ul className="withdrawn-list">
        {withdrawn.map((entry) => (
          <li key={entry.id}>
            <span>
              {fullName(entry)}
              {entry.kind === 'guest' ? <span className="second small"> guest</span> : null}
            </span>
            <ActForm action={enterAgain.bind(null, where, entry.personId)} label={`Enter ${fullName(entry)} again`}>
              <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
              <Send>Enter again</Send>
            </ActForm>
          </li>
        ))}
      </ul>
    </section>
  )
}
