'use client'

import Link from '@/app/_parts/link'
import { Notice } from '@/app/_parts/notice'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, SelectField, Send } from '@/app/desk/_form/field'
import type { PersonId } from '@/lib/facts/ids'

interface Props {
  /** Already knows the society. */
  readonly action: FormAction
  readonly missing: readonly { readonly personId: PersonId; readonly name: string }[]
  readonly today: string
  readonly members: string
  readonly day: string
}

/** Everybody without a handicap, each with the field to write it in: the freeze waits for exactly these. */
export function MissingHandicaps({ action, missing, today, members, day }: Props) {
  if (missing.length === 0) return null
  return (
    <Notice kind="waits" word={missing.length === 1 ? 'One handicap is missing' : 'Handicaps are missing'}>
      <p>The handicaps can be frozen once everybody who is entered has one. Write them here, or withdraw the player.</p>
      <ul className="missing-list">
        {missing.map(({ personId, name }) => (
          <li key={personId}>
            <ActForm action={action} label={`Handicap of ${name}`}>
              <input type="hidden" name="personId" value={personId} />
              <input type="hidden" name="from" value={today} />
              <input type="hidden" name="reason" value="First handicap" />
              <p>
                <Link href={`${members}/${personId}?day=${day}`}>{name}</Link>
              </p>
              <div className="fields">
                <Field
                  name="indexTenths"
                  label="Handicap"
                  inputMode="decimal"
                  hint="18.4, or +2.1 for a plus handicap."
                  required
                />
                <SelectField
                  name="source"
                  label="It is"
                  initial="society"
                  options={[
                    { value: 'home-club', label: 'an index from a home club' },
                    { value: 'society', label: 'a society handicap' },
                    { value: 'claimed', label: 'as told, not checked' },
                  ]}
                />
              </div>
              <p className="acts">
                <Send>Save</Send>
              </p>
            </ActForm>
          </li>
        ))}
      </ul>
    </Notice>
  )
}
