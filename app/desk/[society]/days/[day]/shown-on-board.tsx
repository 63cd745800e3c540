import { ActForm } from '@/app/desk/_form/act-form'
import { Send } from '@/app/desk/_form/field'
import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import type { DeskDay } from '@/lib/boards/desk-views'
import { allowIt } from './actions'

const SHOWN = [
  {
    what: 'showsChances',
    name: 'What it needs to win',
    on: 'The board and the cards say what everybody still needs.',
    off: 'Nobody is told what is still possible.',
  },
  {
    what: 'showsPosition',
    name: 'Position on the phone’s card',
    on: 'The phone’s card says points and place as they stand.',
    off: 'The phone’s card says nothing of the others.',
  },
] as const

/** What the committee lets be seen while the round is on; off until it is allowed. */
export function ShownOnBoard({ day, society }: { readonly day: DeskDay; readonly society: string }) {
  const { record } = day
  const where = { society, day: record.slug }
  if (record.status === 'closed') return null
  return (
    <section aria-labelledby="shown-h" className="shown-on-board">
      <h2 id="shown-h">Shown while the round is on</h2>
      {SHOWN.map(({ what, name, on, off }) => {
        const shown = record[what] ?? false
        return (
          <ActForm key={what} action={allowIt.bind(null, where)} label={name}>
            <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
            <input type="hidden" name="what" value={what} />
            <input type="hidden" name="show" value={shown ? 'no' : 'yes'} />
            <p>
              <b>{name}:</b> {shown ? 'shown' : 'not shown'}. <span className="second">{shown ? on : off}</span>
            </p>
            <p className="acts">
              <Send kind="plain">
                {shown ? 'Hide' : 'Show'} {name.charAt(0).toLowerCase() + name.slice(1)}
              </Send>
            </p>
          </ActForm>
        )
      })}
    </section>
  )
}
