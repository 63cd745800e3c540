'use client'

import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, Send } from '@/app/desk/_form/field'

interface Props {
  readonly action: FormAction
  readonly stopped: 'stop-at-once' | 'stop-after-hole' | null
}

/** One reason, one press: a warning is no place for questions. */
export function StopForm({ action, stopped }: Props) {
  return (
    <ActForm action={action} className="stop-form" label="Suspension of play" clears>
      <Field
        name="reason"
        label={stopped ? 'Why play goes on, or stops harder' : 'Reason, shown on every card'}
        required
        minLength={3}
        maxLength={120}
        list="reasons-to-stop"
        autoComplete="off"
      />
      <datalist id="reasons-to-stop">
        {(stopped
          ? ['the course has given the signal', 'the storm has passed', 'the fog has lifted']
          : ['lightning', 'fog: the landing area cannot be seen', 'greens under water', 'an accident on the course']
        ).map((reason) => (
          <option key={reason} value={reason} />
        ))}
      </datalist>
      <p className="acts">
        {stopped ? (
          <Send kind="first" name="kind" value="resume">
            Play on
          </Send>
        ) : null}
        {stopped === 'stop-at-once' ? null : (
          <Send kind="grave" name="kind" value="stop-at-once">
            Stop at once
          </Send>
        )}
        {stopped === null ? (
          <Send name="kind" value="stop-after-hole">
            Stop when the hole is finished
          </Send>
        ) : null}
      </p>
    </ActForm>
  )
}
