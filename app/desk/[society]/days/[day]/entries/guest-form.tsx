'use client'

import { type ReactNode, useState } from 'react'
import { ActForm, useFormNow } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, SelectField, Send } from '@/app/desk/_form/field'
import type { PersonId } from '@/lib/facts/ids'

interface Choice {
  readonly value: string
  readonly label: string
}

export interface GuestChoice extends Choice {
  /** The handicap given last, as it is written in the field. */
  readonly figure: string
  /** The host of last time, when entered on this day. */
  readonly hostId: PersonId | ''
}

export interface Hosts {
  readonly entered: readonly Choice[]
  readonly others: readonly Choice[]
}

/** Nobody is chosen for the secretary: a wrong host is worse than none. */
const choiceOf = ({ entered, others }: Hosts) => ({
  options: [{ value: '', label: 'Choose the host' }, ...entered],
  groups: others.length > 0 ? [{ label: 'Not entered on this day yet', options: others }] : [],
})

interface GuestProps {
  readonly action: FormAction
  readonly hosts: Hosts
  readonly children: ReactNode
}

/** A guest of an earlier day: chosen, with the handicap and the host of last time filled in. */
export function KnownGuestForm({
  action,
  hosts,
  guests,
  children,
}: GuestProps & { readonly guests: readonly GuestChoice[] }) {
  return (
    <ActForm action={action} label="Enter a guest you know" clears>
      {children}
      {/* The form stays when the last of them is entered: its word that it is done must not go with it. */}
      {guests.length === 0 ? (
        <p className="hint">No guest of an earlier day is left to enter.</p>
      ) : (
        <>
          <KnownGuestFields hosts={hosts} guests={guests} />
          <p className="acts">
            <Send>Enter this guest</Send>
          </p>
        </>
      )}
    </ActForm>
  )
}

function KnownGuestFields({ hosts, guests }: { hosts: Hosts; guests: readonly GuestChoice[] }) {
  const [{ guest, host, figure }, set] = useState({ guest: '', host: '', figure: '' })
  return (
    <div className="fields">
      <SelectField
        name="personId"
        label="Guest"
        value={guest}
        onChange={(value) => {
          const chosen = guests.find((one) => one.value === value)
          set({ guest: value, host: chosen?.hostId ?? '', figure: chosen?.figure ?? '' })
        }}
        options={[{ value: '', label: 'Choose the guest' }, ...guests]}
      />
      <SelectField
        name="hostId"
        label="Guest of"
        value={host}
        onChange={(value) => set({ guest, host: value, figure })}
        {...choiceOf(hosts)}
        hint="A member who plays. The host vouches for the handicap."
      />
      <Field
        name="claimedTenths"
        label="Handicap on this day"
        inputMode="decimal"
        value={figure}
        onChange={(event) => set({ guest, host, figure: event.target.value })}
        hint="As the host gives it: 18.4, or +2.1 for a plus handicap."
      />
    </div>
  )
}

export function GuestForm({ action, hosts, children }: GuestProps) {
  return (
    <ActForm action={action} label="Add a guest" clears>
      {children}
      <div className="fields">
        <Field name="firstName" label="First name" required maxLength={80} />
        <Field name="familyName" label="Family name" required maxLength={80} />
        <SelectField
          name="gender"
          label="Tees"
          options={[
            { value: 'men', label: 'men' },
            { value: 'women', label: 'women' },
          ]}
        />
        <SelectField
          name="hostId"
          label="Guest of"
          {...choiceOf(hosts)}
          hint="A member who plays. The host vouches for the handicap."
        />
        <Field
          name="claimedTenths"
          label="Handicap on this day"
          inputMode="decimal"
          hint="As the host gives it: 18.4, or +2.1 for a plus handicap."
          required
        />
      </div>
      <AddOrAsk />
    </ActForm>
  )
}

/** The button; or, where the book knows the name, the question with its two answers. */
function AddOrAsk() {
  const { refused } = useFormNow()
  if (refused?.code === 'entered-already')
    return (
      <p className="acts">
        <a href="#day-guests">Change the host under “Guests of this day”</a>
        <Send>Add the guest</Send>
      </p>
    )
  if (refused?.code !== 'same-name' && refused?.code !== 'told-apart')
    return (
      <p className="acts">
        <Send>Add the guest</Send>
      </p>
    )
  return (
    <>
      <div className="fields">
        <Field
          name="knownAs"
          label="If somebody else: told apart by"
          hint="A word that stands after the name on every list: senior, Tom’s son."
          maxLength={30}
        />
      </div>
      <p className="acts">
        {/* First, because Enter in the field above presses the first button. */}
        <Send name="namesake" value="another">
          Somebody else
        </Send>
        <Send name="namesake" value="same">
          The same person
        </Send>
      </p>
    </>
  )
}
