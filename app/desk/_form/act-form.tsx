'use client'

import { createContext, type ReactNode, startTransition, use, useActionState, useEffect, useRef } from 'react'
import { Notice } from '@/app/_parts/notice'
import { type ActState, type FormAction, FRESH } from './act-state'

const FormNow = createContext<ActState & { readonly pending: boolean }>({ ...FRESH, pending: false })

export const useFormNow = () => use(FormNow)

interface Props {
  readonly action: FormAction
  readonly children: ReactNode
  readonly className?: string
  readonly label?: string
  /** Empties the fields after a success, for forms that are used again and again. */
  readonly clears?: boolean
  /** Where faults are named in place, the list in the notice would say them twice. */
  readonly faultsInPlace?: boolean
  readonly onAnswer?: (state: ActState) => void
}

export function ActForm({ action, children, className, label, clears, faultsInPlace, onAnswer }: Props) {
  const [state, send, pending] = useActionState(action, FRESH)
  const notice = useRef<HTMLDivElement>(null)
  const heard = useRef(0)

  useEffect(() => {
    if (state.attempt === heard.current) return
    heard.current = state.attempt
    if (state.refused) notice.current?.focus()
    onAnswer?.(state)
  }, [state, onAnswer])

  return (
    <FormNow value={{ ...state, pending }}>
      <form
        action={send}
        className={className}
        aria-label={label}
        aria-busy={pending}
        // Sending by hand keeps React from emptying the fields when the answer is a refusal.
        onSubmit={(event) => {
          event.preventDefault()
          if (pending) return
          const { submitter } = event.nativeEvent as SubmitEvent
          const form = new FormData(event.currentTarget, submitter)
          startTransition(() => send(form))
        }}
      >
        <div ref={notice} tabIndex={-1} role="alert" className="answer">
          {state.refused ? <RefusalNotice state={state} listFaults={!faultsInPlace} /> : null}
        </div>
        <div key={clears && !state.refused ? state.attempt : 'kept'} className="answered">
          {children}
        </div>
        <p role="status" className="said">
          {state.said}
        </p>
      </form>
    </FormNow>
  )
}

function RefusalNotice({ state, listFaults }: { readonly state: ActState; readonly listFaults: boolean }) {
  if (!state.refused) return null
  const { code, sentence, faults } = state.refused
  const movedOn = code === 'day-moved-on'
  // A single fault is mostly the sentence itself; where it says more, it is said too.
  const saysMore = faults.length > 1 || (faults[0] !== undefined && faults[0].sentence !== sentence)
  return (
    <Notice kind="differs" word={movedOn ? 'The day moved on' : 'Not done'}>
      <p>
        <b>{sentence}</b>
      </p>
      {state.changed.length > 0 ? (
        <ul>
          {state.changed.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      ) : null}
      {listFaults && saysMore ? (
        <ul>
          {faults.map((fault) => (
            <li key={`${fault.place} ${fault.sentence}`}>{fault.sentence}</li>
          ))}
        </ul>
      ) : null}
      <p className="small">
        {movedOn
          ? 'What you typed is still here. Look at what changed, then press again.'
          : (state.kept ?? 'Nothing was changed, and what you typed is still here.')}
      </p>
    </Notice>
  )
}
