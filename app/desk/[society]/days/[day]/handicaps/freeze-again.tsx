import Link from '@/app/_parts/link'
import { ActForm } from '@/app/desk/_form/act-form'
import type { DayAddress } from '@/app/desk/_form/answer-for-day'
import { Choice, Field, Send } from '@/app/desk/_form/field'
import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import { figure } from '@/app/desk/_frame/words'
import type { DayRecord, EntryRecord } from '@/lib/facts/day-record'
import { fullName } from '@/lib/facts/person-name'
import { freezeAgain, unfreezeTheDay } from '../lifecycle-actions'

interface Props {
  readonly record: DayRecord
  readonly where: DayAddress
  readonly at: string
}

const REASON = { name: 'reason', label: 'Reason', required: true, minLength: 3, maxLength: 200 } as const

const Seen = ({ record }: { readonly record: DayRecord }) => (
  <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
)

/** What can still be done about frozen handicaps: a few again, all of them open, or a ruling once the sheet is out. */
export function FreezeAgain({ record, where, at }: Props) {
  if (record.status === 'called' || record.status === 'closed' || record.calledOff) return null
  const entered = record.entries.filter((entry) => entry.status === 'entered')
  const isOut = record.startPublishedAt !== null
  const choices = isOut ? entered.filter((entry) => !entry.frozen) : byDifference(entered)
  return (
    <section className="desk-sheet" aria-labelledby="again-h">
      <h2 id="again-h">If a handicap is wrong</h2>
      {isOut ? (
        <p>
          The start sheet is out and the cards carry these handicaps: they stay. A wrong one is put right by a{' '}
          <b>ruling of the committee</b> on the player’s card, under <Link href={`${at}/returns`}>Returns</Link>.
        </p>
      ) : null}
      {choices.length > 0 ? (
        <details className="rule-all" open={choices.some(hasMoved)}>
          <summary>Freeze some players again</summary>
          <ActForm action={freezeAgain.bind(null, where)} label="Freeze some players again" clears>
            <Seen record={record} />
            <p>Their handicap as it is now is frozen. Everybody else keeps what is frozen.</p>
            <fieldset className="ticks">
              <legend>Players</legend>
              {choices.map((entry) => (
                <Choice key={entry.id} type="checkbox" name="entry" value={entry.id} initial={hasMoved(entry)}>
                  {fullName(entry)}, {inWords(entry)}
                </Choice>
              ))}
            </fieldset>
            <Field {...REASON} hint="It stands in the record." />
            <p className="acts">
              <Send>Freeze these players again</Send>
            </p>
          </ActForm>
        </details>
      ) : null}
      {isOut ? null : (
        <details className="rule-all">
          <summary>Unfreeze all handicaps</summary>
          <ActForm action={unfreezeTheDay.bind(null, where)} label="Unfreeze all handicaps">
            <Seen record={record} />
            <p>
              All {entered.length} follow the member list again until you freeze them. Course, tees and competitions can
              then be changed too. Entries and draw stay.
            </p>
            <Field {...REASON} hint="It stands in the record." />
            <p className="acts">
              <Send kind="grave">Unfreeze {entered.length} handicaps</Send>
            </p>
          </ActForm>
        </details>
      )}
    </section>
  )
}

const hasMoved = (entry: EntryRecord) => !entry.frozen || entry.presentTenths !== entry.indexTenths

/** Whoever has another handicap by now stands first. */
const byDifference = (entered: readonly EntryRecord[]) => [
  ...entered.filter(hasMoved),
  ...entered.filter((entry) => !hasMoved(entry)),
]

function inWords(entry: EntryRecord): string {
  if (!entry.frozen) return `${figure(entry.presentTenths ?? null)}, not frozen yet`
  if (!hasMoved(entry)) return figure(entry.indexTenths)
  return `frozen ${figure(entry.indexTenths)}, now ${figure(entry.presentTenths ?? null)}`
}
