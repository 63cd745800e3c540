'use client'

import { unstable_rethrow } from 'next/navigation'
import { useActionState, useEffect, useRef, useState } from 'react'
import type { CodeState } from '../open-by-code'

interface Props {
  readonly open: (before: CodeState, form: FormData) => Promise<CodeState>
}

// The page may also be the phone's own copy of an older build, whose form the server does not know any more: the next
// opening has the newer one.
const NOT_THROUGH =
  'That did not get through. A code can only be looked up with a signal: open this page again when there is one.'

export function CodeForm({ open }: Props) {
  const [state, act, busy] = useActionState(
    async (before: CodeState, form: FormData): Promise<CodeState> => {
      try {
        return await open(before, form)
      } catch (fault) {
        // The way to the card itself comes as a fault too, and is not one.
        unstable_rethrow(fault)
        return { code: String(form.get('code') ?? ''), sentence: NOT_THROUGH }
      }
    },
    { code: '', sentence: null },
  )
  const [letters, setLetters] = useState(false)
  const field = useRef<HTMLInputElement>(null)
  const refused = state.sentence !== null
  // The figures were not enough: the word is typed with letters.
  useEffect(() => {
    if (refused) setLetters(true)
  }, [refused])
  useEffect(() => field.current?.focus(), [])
  return (
    <form className="c-code" action={act}>
      <div className={refused ? 'field wrong' : 'field'}>
        <label htmlFor="code">Code</label>
        <input
          ref={field}
          id="code"
          name="code"
          defaultValue={state.code}
          key={state.code}
          maxLength={60}
          inputMode={letters ? 'text' : 'numeric'}
          enterKeyHint="go"
          autoComplete="off"
          autoCapitalize="none"
          spellCheck={false}
          required
          aria-invalid={refused || undefined}
          aria-describedby={refused ? 'code-why' : undefined}
        />
        {refused && (
          <p className="why" id="code-why" role="alert">
            {state.sentence}
          </p>
        )}
      </div>
      <button type="submit" className="btn first wide" aria-disabled={busy}>
        {busy ? 'Opening' : 'Open the card'}
      </button>
      {!letters && (
        <button
          type="button"
          className="btn wide c-letters"
          onClick={() => {
            setLetters(true)
            field.current?.blur()
            // The keyboard changes when the field is entered anew.
            setTimeout(() => field.current?.focus(), 50)
          }}
        >
          Type letters as well
        </button>
      )}
    </form>
  )
}
