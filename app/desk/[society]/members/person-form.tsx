'use client'

import { ActForm, useFormNow } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Choice, Field, SelectField, Send } from '@/app/desk/_form/field'
import type { MemberRow } from '@/lib/boards/desk-views'

export function PersonForm({ action, person }: { readonly action: FormAction; readonly person?: MemberRow }) {
  return (
    <ActForm action={action} label={person ? 'Change the member' : 'Add a member'} className="sheet-form">
      {person ? (
        <>
          <input type="hidden" name="personId" value={person.personId} />
          <input type="hidden" name="was" value={JSON.stringify(seenOf(person))} />
          <Overrule />
        </>
      ) : null}
      {/* A new key when the book says something else: the fields then show it, and never write an old value back. */}
      <div className="fields" key={person ? JSON.stringify(seenOf(person)) : 'new'}>
        <Field name="firstName" label="First name" initial={person?.firstName} required maxLength={80} />
        <Field name="familyName" label="Family name" initial={person?.familyName} required maxLength={80} />
        <SelectField
          name="gender"
          label="Plays from the tees for"
          initial={person?.gender ?? 'men'}
          hint="Decides par, rating and stroke index."
          options={[
            { value: 'men', label: 'men' },
            { value: 'women', label: 'women' },
          ]}
        />
        <SelectField
          name="kind"
          label="Is a"
          initial={person?.kind ?? 'member'}
          options={[
            { value: 'member', label: 'member' },
            { value: 'guest', label: 'guest' },
          ]}
        />
        <SelectField
          name="handicapSource"
          label="The figure is"
          initial={person?.handicapSource ?? 'home-club'}
          options={[
            { value: 'home-club', label: 'an index from a home club' },
            { value: 'society', label: 'a society handicap' },
            { value: 'claimed', label: 'claimed, on word' },
          ]}
        />
        {person ? (
          <input type="hidden" name="indexTenths" value="" />
        ) : (
          <Field
            name="indexTenths"
            label="Figure"
            inputMode="decimal"
            hint="18.4, or +2.1 for a plus figure. May come later."
          />
        )}
        <Field name="email" label="E-mail" type="email" initial={person?.email} maxLength={120} />
        <Field name="phone" label="Telephone" type="tel" initial={person?.phone} maxLength={40} />
        <Field
          name="memberSince"
          label="Member since"
          inputMode="numeric"
          pattern="\d{4}"
          initial={person?.memberSince}
          maxLength={4}
        />
        <Field
          name="labels"
          label="Marked with the words"
          initial={person?.labels.join(', ')}
          maxLength={200}
          hint="For divisions: senior, first-timer. Fixed for a day when its handicaps are frozen."
        />
        {person ? <Field name="leftOn" label="Left on" type="date" initial={person.leftOn} /> : null}
      </div>
      <Choice
        type="checkbox"
        name="regular"
        initial={person?.regular ?? true}
        hint="“All regulars” enters them at once."
      >
        Plays regularly
      </Choice>
      <Choice
        type="checkbox"
        name="junior"
        initial={person?.junior ?? false}
        hint="Public pages show a junior’s initials, unless the society chose otherwise."
      >
        Is under 18
      </Choice>
      <p className="small second">Hold only what is needed. Telephone and e-mail are seen at the desk only.</p>
      <p className="acts">
        <Send kind={person ? undefined : 'first'}>{person ? 'Keep the changes' : 'Add the member'}</Send>
      </p>
    </ActForm>
  )
}

/** After being told what another desk wrote in the same field, pressing again keeps mine. */
function Overrule() {
  const { refused, typed } = useFormNow()
  if (refused?.code !== 'person-moved-on') return null
  const before = typed.overrule?.[0]?.split(' ') ?? []
  const told = [...before, ...refused.faults.map((fault) => fault.place)].filter(Boolean)
  return <input type="hidden" name="overrule" value={told.join(' ')} />
}

/** What the form was filled with, so that two desks do not write over each other. */
function seenOf(person: MemberRow) {
  const { firstName, familyName, gender, kind, regular, email, phone, handicapSource, memberSince, leftOn } = person
  const plain = { firstName, familyName, gender, kind, regular, email, phone, handicapSource, memberSince, leftOn }
  return { ...plain, junior: person.junior, labels: person.labels }
}
