'use client'

import type { ReactNode } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, SelectField, Send } from '@/app/desk/_form/field'

interface Props {
  readonly action: FormAction
  readonly hosts: readonly { readonly value: string; readonly label: string }[]
  readonly children: ReactNode
}

export function GuestForm({ action, hosts, children }: Props) {
  return (
    <ActForm action={action} label="Add a guest" clears>
      {children}
      <div className="fields">
        <Field name="firstName" label="First name" required maxLength={80} />
        <Field name="familyName" label="Family name" required maxLength={80} />
        <SelectField
          name="gender"
          label="Plays from the tees for"
          options={[
            { value: 'men', label: 'men' },
            { value: 'women', label: 'women' },
          ]}
        />
        <SelectField name="hostId" label="Guest of" options={hosts} hint="The host answers for the figure." />
        <Field
          name="claimedTenths"
          label="Handicap claimed"
          inputMode="decimal"
          hint="18.4, or +2.1 for a plus figure."
          required
        />
      </div>
      <p className="acts">
        <Send>Add the guest</Send>
      </p>
    </ActForm>
  )
}
