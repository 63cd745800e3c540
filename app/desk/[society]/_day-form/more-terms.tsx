'use client'

import { Field } from '@/app/desk/_form/field'
import type { CompetitionDraft } from './drafts'

interface Props {
  readonly at: string
  readonly draft: CompetitionDraft
  readonly oneBall: boolean
}

/** Terms few competitions need; open at once when the competition has any. */
export function MoreTerms({ at, draft, oneBall }: Props) {
  const hint = `Highest ${oneBall ? 'course' : 'playing'} handicap that counts. Empty: no limit.`
  return (
    <details className="rule-all" open={draft.limit.men !== undefined || draft.limit.women !== undefined}>
      <summary>More terms</summary>
      <div className="fields">
        <Field
          name={`${at}.terms.handicapLimit.men`}
          label="Handicap limit, men"
          type="number"
          min={0}
          max={99}
          initial={draft.limit.men}
          hint={hint}
        />
        <Field
          name={`${at}.terms.handicapLimit.women`}
          label="Handicap limit, women"
          type="number"
          min={0}
          max={99}
          initial={draft.limit.women}
          hint={hint}
        />
      </div>
    </details>
  )
}
