'use client'

import { useRef } from 'react'
import Link from '@/app/_parts/link'
import { ActForm, useFormNow } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Choice, Field, SelectField, Send } from '@/app/desk/_form/field'
import type { MemberRow } from '@/lib/boards/desk-views'

interface Props {
  readonly action: FormAction
  readonly person?: MemberRow
  /** Another has the same name. */
  readonly hasNamesake?: boolean
  /** What a new form begins with. */
  readonly suggested?: { readonly firstName: string; readonly familyName: string }
  /** Address of the members' list. */
  readonly at: string
}

export function PersonForm({ action, person, hasNamesake = false, suggested, at }: Props) {
  return (
    <ActForm action={action} label={person ? 'Change the member' : 'Add a member'} className="sheet-form" saves>
      {person ? (
        <>
          <input type="hidden" name="personId" value={person.personId} />
          <input type="hidden" name="was" value={JSON.stringify(seenOf(person))} />
          <Overrule />
        </>
      ) : null}
      {/* A new key when the book says something else: the fields then show it, and never write an old value back. */}
      <div className="fields" key={person ? JSON.stringify(seenOf(person)) : 'new'}>
        <Field
          name="firstName"
          label="First name"
          initial={person?.firstName ?? suggested?.firstName}
          required
          maxLength={80}
        />
        <Field
          name="familyName"
          label="Family name"
          initial={person?.familyName ?? suggested?.familyName}
          required
          maxLength={80}
        />
        {hasNamesake || person?.knownAs ? (
          <Field
            name="knownAs"
            label="Told apart by"
            initial={person?.knownAs}
            hint="Another has the same name. The word stands after it on every list: senior, Tom’s son."
            maxLength={30}
          />
        ) : null}
        <SelectField
          name="gender"
          label="Tees"
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
        <Field name="membershipNumber" label="Membership number" initial={person?.membershipNumber} maxLength={30} />
        <Field name="homeClub" label="Home club" initial={person?.homeClub} maxLength={80} />
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
      <SendOrAsk isNew={!person} hasField={hasNamesake || Boolean(person?.knownAs)} at={at} />
    </ActForm>
  )
}

/** The button; or, where the book has the name already, the question with its two answers. */
function SendOrAsk({
  isNew,
  hasField,
  at,
}: {
  readonly isNew: boolean
  readonly hasField: boolean
  readonly at: string
}) {
  const { refused, typed } = useFormNow()
  const same = useRef<readonly string[]>([])
  if (refused?.code === 'same-name') same.current = refused.faults.map((fault) => fault.place)
  if (refused?.code !== 'same-name' && refused?.code !== 'told-apart')
    return (
      <p className="acts">
        <Send kind={isNew ? 'first' : undefined}>{isNew ? 'Add the member' : 'Save the changes'}</Send>
      </p>
    )
  const name = `${typed.firstName?.[0] ?? ''} ${typed.familyName?.[0] ?? ''}`.trim()
  return (
    <>
      {hasField ? null : (
        <div className="fields">
          <Field
            name="knownAs"
            label="If somebody else: told apart by"
            hint="A word that stands after the name on every list: senior, Tom’s son."
            maxLength={30}
          />
        </div>
      )}
      <p className="acts">
        <Send kind="first" name="isAnother" value="yes">
          Somebody else
        </Send>
        {same.current.map((personId) => (
          <Link key={personId} className="btn" href={`${at}/${personId}`}>
            The same person: open {name}
          </Link>
        ))}
      </p>
    </>
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
  const { knownAs, membershipNumber, homeClub, junior, labels } = person
  return { ...plain, knownAs, membershipNumber, homeClub, junior, labels }
}
