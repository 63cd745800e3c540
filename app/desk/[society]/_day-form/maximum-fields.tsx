'use client'

import { useState } from 'react'
import { Field, SelectField } from '@/app/desk/_form/field'
import type { CompetitionTerms } from '@/lib/facts/terms'

interface Props {
  readonly at: string
  readonly initial: CompetitionTerms['maximum']
}

/** Which maximum a hole may count, Rules of Golf 21.2; a fixed one with its number. */
export function MaximumFields({ at, initial }: Props) {
  const [kind, setKind] = useState<string>(initial?.kind ?? 'net-double-bogey')
  return (
    <>
      <SelectField
        name={`${at}.terms.maximum`}
        label="Most strokes on a hole"
        value={kind}
        onChange={setKind}
        options={[
          { value: 'net-double-bogey', label: 'Net double bogey' },
          { value: 'double-par', label: 'Double par' },
          { value: 'fixed', label: 'A fixed number' },
        ]}
      />
      {kind === 'fixed' ? (
        <Field
          name={`${at}.terms.maximum.strokes`}
          label="That number"
          type="number"
          min={3}
          max={20}
          initial={initial?.kind === 'fixed' ? initial.strokes : 10}
          required
        />
      ) : null}
    </>
  )
}
