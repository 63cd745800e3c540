'use client'

import { ActForm } from '@/app/desk/_form/act-form'
import { SelectField, Send } from '@/app/desk/_form/field'
import type { PersonId } from '@/lib/facts/ids'
import { endLink, erase, renewLink } from './privacy-actions'

export function PageKeyForms(props: {
  readonly society: string
  readonly personId: PersonId
  readonly ended: boolean
}) {
  const { society, personId, ended } = props
  return (
    <>
      <ActForm action={renewLink.bind(null, society, personId)} label="Make a new link">
        <p className="acts">
          <Send>Make a new link</Send>
        </p>
      </ActForm>
      {ended ? null : (
        <ActForm action={endLink.bind(null, society, personId)} label="End the link">
          <p className="acts">
            <Send>End the link</Send>
          </p>
        </ActForm>
      )}
    </>
  )
}

export function EraseForm(props: { readonly society: string; readonly personId: PersonId; readonly name: string }) {
  const { society, personId, name } = props
  return (
    <details className="rule-all">
      <summary>Take the details out of the book</summary>
      <ActForm action={erase.bind(null, society, personId)} label={`Take ${name}’s details out`}>
        <p>
          Telephone, e-mail and the words {name} is sorted by go; the private page ends; public sheets stop showing the
          name. Scores, figures and the name at the desk stay, so that a past day can be explained.
        </p>
        <SelectField
          name="shownAs"
          label="Shown from now on"
          initial="initials"
          options={[
            { value: 'initials', label: 'by initials' },
            { value: 'former-member', label: 'as “Former member”' },
          ]}
        />
        <p className="acts">
          <Send kind="grave">Take the details out</Send>
        </p>
      </ActForm>
    </details>
  )
}
