'use client'

import { useActionState } from 'react'
import type { CodeState } from '../open-by-code'

interface Props {
  readonly open: (before: CodeState, form: FormData) => Promise<CodeState>
}

export function CodeForm({ open }: Props) {
  const [state, act, busy] = useActionState(open, { code: '', sentence: null })
  return (
    <form className="c-code" action={act}>
      <div className={state.sentence ? 'field wrong' : 'field'}>
        <label htmlFor="code">Code</label>
        <input
          id="code"
          name="code"
          defaultValue={state.code}
          key={state.code}
          maxLength={60}
          autoComplete="off"
          autoCapitalize="none"
          spellCheck={false}
          required
          aria-invalid={state.sentence ? true : undefined}
          aria-describedby={state.sentence ? 'code-why' : undefined}
        />
        {state.sentence && (
          <p className="why" id="code-why" role="alert">
            {state.sentence}
          </p>
        )}
      </div>
      <button type="submit" className="btn first wide" aria-disabled={busy}>
        {busy ? 'Opening' : 'Open the card'}
      </button>
    </form>
  )
}
