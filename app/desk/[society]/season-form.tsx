'use client'

import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, Send } from '@/app/desk/_form/field'

export function SeasonForm({
  action,
  year,
  first,
}: {
  readonly action: FormAction
  readonly year: number
  readonly first: boolean
}) {
  return (
    <ActForm action={action} label="Open a season" className="sheet-form" saves>
      <div className="fields">
        <Field name="name" label="Name" initial={first ? year : year + 1} required maxLength={80} />
        <Field name="startsOn" label="First day" type="date" initial={`${first ? year : year + 1}-01-01`} required />
        <Field name="endsOn" label="Last day" type="date" initial={`${first ? year : year + 1}-12-31`} required />
      </div>
      <p className="acts">
        <Send kind={first ? 'first' : undefined}>Open the season</Send>
      </p>
    </ActForm>
  )
}
