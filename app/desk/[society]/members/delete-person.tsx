'use client'

import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Send } from '@/app/desk/_form/field'
import type { PersonId } from '@/lib/facts/ids'

interface Props {
  readonly action: FormAction
  readonly personId: PersonId
  readonly name: string
  readonly kind: 'member' | 'guest'
}

/** For a person entered by mistake. Opened first, so that one wrong tap deletes nobody. */
export function DeletePerson({ action, personId, name, kind }: Props) {
  return (
    <details className="rule-all">
      <summary>Delete this {kind}</summary>
      <ActForm action={action} label={`Delete ${name}`}>
        <input type="hidden" name="personId" value={personId} />
        <p>
          For somebody entered by mistake: {name} is deleted with everything entered here, and there is no way back.
          Whoever was entered on a day, brought a guest, was an officer or has had a second handicap cannot be deleted:
          write the last day under “Left on” instead.
        </p>
        <p className="acts">
          <Send kind="grave">Delete {name}</Send>
        </p>
      </ActForm>
    </details>
  )
}
