import { ActForm } from '@/app/desk/_form/act-form'
import { SelectField, Send } from '@/app/desk/_form/field'
import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import type { DeskDay } from '@/lib/boards/desk-views'
import { byName, fullName } from '@/lib/facts/person-name'
import { changeTheHost } from './actions'
import type { Hosts } from './guest-form'

interface Props {
  readonly desk: DeskDay
  readonly where: { readonly society: string; readonly day: string }
  readonly hosts: Hosts
}

/** Every guest who plays, with the host: changed here, without withdrawing anybody. */
export function GuestsOfDay({ desk: { record }, where, hosts }: Props) {
  const guests = record.entries.filter((one) => one.kind === 'guest' && one.status !== 'withdrawn').sort(byName)
  if (guests.length === 0 || record.status === 'closed') return null
  return (
    <section aria-labelledby="day-guests" className="guest">
      <h2 id="day-guests">Guests of this day</h2>
      {guests.map((guest) => {
        const isKnown = hosts.entered.some((one) => one.value === guest.hostId)
        const withdrawn = hosts.others.find((one) => one.value === guest.hostId)
        const now = withdrawn ? `${withdrawn.label}, does not play` : 'Nobody'
        return (
          <ActForm
            key={guest.id}
            action={changeTheHost.bind(null, where)}
            label={`Host of ${fullName(guest)}`}
            className="host-of"
            saves
          >
            <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
            <input type="hidden" name="entryId" value={guest.id} />
            <div className="fields">
              <SelectField
                name="hostId"
                label={`${fullName(guest)} is the guest of`}
                initial={guest.hostId ?? ''}
                options={[...(isKnown ? [] : [{ value: guest.hostId ?? '', label: now }]), ...hosts.entered]}
              />
            </div>
            <p className="acts">
              <Send>Change the host</Send>
            </p>
          </ActForm>
        )
      })}
    </section>
  )
}
