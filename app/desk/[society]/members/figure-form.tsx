'use client'

import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, SelectField, Send } from '@/app/desk/_form/field'
import type { MemberRow } from '@/lib/boards/desk-views'

interface Props {
  readonly action: FormAction
  readonly person: MemberRow
  readonly today: string
}

export function FigureForm({ action, person, today }: Props) {
  return (
    <ActForm action={action} label="Change the figure" clears saves>
      <input type="hidden" name="personId" value={person.personId} />
      <div className="fields">
        <Field
          name="indexTenths"
          label="New figure"
          inputMode="decimal"
          hint="18.4, or +2.1 for a plus figure."
          required
        />
        <SelectField
          name="source"
          label="It is"
          initial={person.handicapSource}
          options={[
            { value: 'home-club', label: 'an index from a home club' },
            { value: 'society', label: 'a society handicap' },
            { value: 'claimed', label: 'claimed, on word' },
          ]}
        />
        <Field name="from" label="From" type="date" initial={today} required />
        <Field name="reason" label="Reason" hint="The member sees it." required minLength={3} maxLength={200} />
      </div>
      <p className="acts">
        <Send kind="first">Change the figure</Send>
      </p>
    </ActForm>
  )
}
