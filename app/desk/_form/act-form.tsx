'use client'

import { createContext, type ReactNode, startTransition, use, useActionState, useEffect, useRef, useState } from 'react'
import { Notice } from '@/app/_parts/notice'
import type { Fault } from '@/lib/result'
import { type ActState, type FormAction, FRESH } from './act-state'
import { fieldAt } from './form-snapshot'
import { type UnsavedForm, useStartAgain, useUnsavedForm, useUnsavedForms } from './unsaved'
import { useSaveFirst } from './use-save-first'
import { WayToRoom } from './way-to-room'

interface Now extends ActState {
  readonly pending: boolean
  /** What else on the page is not finished, as this form's buttons say what they wait for; null: nothing. */
  readonly waitsFor: string | null
  /** Pressing saves what else is unsaved, and then does what the button says. */
  readonly savesFirst: boolean
}

const FormNow = createContext<Now>({ ...FRESH, pending: false, waitsFor: null, savesFirst: false })

export const useFormNow = () => use(FormNow)

interface Props {
  readonly action: FormAction
  readonly children: ReactNode
  readonly className?: string
  readonly label: string
  readonly id?: string
  /** Empties the fields after a success, for forms that are used again and again. */
  readonly clears?: boolean
  /** Where faults are named in place, the list in the notice would say them twice. */
  readonly faultsInPlace?: boolean
  readonly onAnswer?: (state: ActState) => void
  /** Its button saves what stands here; without it the form prepares something that its button does. */
  readonly saves?: boolean
  /** What is typed is found again after leaving the page. */
  readonly keeps?: boolean
  /** What stands here was typed earlier and found again: not saved, although nobody has touched it since. */
  readonly found?: boolean
  /** What must be forgotten too, before the form goes back to what was saved. */
  readonly onUndo?: () => void
  /** What is not saved, where the labels of the fields would not say it. */
  readonly unsaved?: string
  /** What everybody else sees until it is saved. */
  readonly meanwhile?: string
  readonly stepBack?: (() => void) | null
  /** What the form is for has been done by somebody else: a refusal of before has nothing to speak of any more. */
  readonly moot?: boolean
  /** Nothing can be typed here (any more), so nothing is unsaved. */
  readonly readOnly?: boolean
  /** Where it is clear what comes first: saves what is unsaved on the page, then does its own. */
  readonly savesFirst?: boolean
}

export function ActForm({ action, children, className, label, id, clears, faultsInPlace, onAnswer, ...rule }: Props) {
  const [state, send, pending] = useActionState(action, FRESH)
  const [fields, setFields] = useState<Fields>({})
  const [undone, setUndone] = useState({ attempt: 0, turn: 0 })
  // Only what was done empties the fields: after a refusal they stay as they are, with everything the form knows of them.
  const [cleared, setCleared] = useState(0)
  if (clears && !state.refused && cleared !== state.attempt) setCleared(state.attempt)
  const form = useRef<HTMLFormElement>(null)
  const notice = useRef<HTMLDivElement>(null)
  const heard = useRef(0)
  const startAgain = useStartAgain()

  useEffect(() => {
    if (state.attempt === heard.current) return
    heard.current = state.attempt
    if (state.refused && form.current) setFields(labelsFor(form.current, state.refused.faults))
    if (state.refused) notice.current?.focus()
    onAnswer?.(state)
  }, [state, onAnswer])

  const ownId = useUnsavedForm(form, {
    label,
    saves: rule.saves ?? false,
    keeps: rule.keeps ?? false,
    found: rule.found ?? false,
    readOnly: rule.readOnly ?? false,
    what: rule.unsaved,
    meanwhile: rule.meanwhile,
    pending,
    answers: state.attempt,
    refused: state.refused !== null,
    clears: clears ?? false,
    undo: () => {
      rule.onUndo?.()
      if (startAgain) startAgain()
      else setUndone({ attempt: state.attempt, turn: undone.turn + 1 })
    },
    stepBack: rule.stepBack ?? null,
  })
  const all = useUnsavedForms()
  const others = all.filter((one) => one.id !== ownId)
  const differs = others.length < all.length
  const waits = others.length > 0 && !differs
  const savesFirst = waits && (rule.savesFirst ?? false) && others.every((one) => one.saves)
  const afterSaving = useSaveFirst(form, others)

  // Back to what was saved: an answer that spoke of what was typed has nothing to speak of any more.
  const isOver = (undone.attempt === state.attempt && undone.turn > 0) || (rule.moot && state.refused !== null)
  const shown = isOver ? { ...FRESH, attempt: state.attempt } : state
  return (
    <FormNow value={{ ...shown, pending, waitsFor: waits && !savesFirst ? toFinish(others) : null, savesFirst }}>
      <form
        ref={form}
        id={id}
        data-desk-form=""
        action={send}
        className={className}
        aria-label={label}
        aria-busy={pending}
        // Sending by hand keeps React from emptying the fields when the answer is a refusal.
        onSubmit={(event) => {
          event.preventDefault()
          if (pending || (waits && !savesFirst)) return
          const { submitter } = event.nativeEvent as SubmitEvent
          if (savesFirst) return afterSaving(submitter)
          const sent = new FormData(event.currentTarget, submitter)
          startTransition(() => send(sent))
        }}
      >
        <div ref={notice} tabIndex={-1} role="alert" className="answer">
          {shown.refused ? <RefusalNotice state={shown} fields={fields} listFaults={!faultsInPlace} /> : null}
        </div>
        <div key={`${cleared} ${undone.turn}`} className="answered">
          {children}
        </div>
        <p role="status" className="said">
          {shown.said}
        </p>
      </form>
    </FormNow>
  )
}

/** A form that has no save of its own cannot be saved first: it is done, or cleared. */
function toFinish(others: readonly UnsavedForm[]): string {
  const prepared = others.find((one) => !one.saves)
  return prepared && others.length === 1 ? `finish or clear “${prepared.label}” first` : 'save first'
}

/** By the place of a fault, what its field is called: where the sentence fits any field, or the field itself says nothing. */
type Fields = Readonly<Record<string, string>>

function labelsFor(form: HTMLFormElement, faults: readonly Fault[]): Fields {
  return Object.fromEntries(
    faults.flatMap(({ place, isBare }) => {
      const field = fieldAt(form, place)
      return field && (isBare || !field.saysSo) ? [[place, field.label]] : []
    }),
  )
}

interface RefusalProps {
  readonly state: ActState
  readonly fields: Fields
  readonly listFaults: boolean
}

function RefusalNotice({ state, fields, listFaults }: RefusalProps) {
  if (!state.refused) return null
  const { code, sentence, faults } = state.refused
  const named = (words: string, fault: Fault | undefined) => {
    const label = fault ? fields[fault.place] : undefined
    return label ? `${label}: ${words}` : words
  }
  const movedOn = code === 'day-moved-on'
  // A single fault is mostly the sentence itself; where it says more, it is said too.
  const saysMore = faults.length > 1 || (faults[0] !== undefined && faults[0].sentence !== sentence)
  return (
    <Notice kind="differs" word={movedOn ? 'The day moved on' : 'Not done'}>
      <p>
        <b>{sentence.startsWith(faults[0]?.sentence ?? '\n') ? named(sentence, faults[0]) : sentence}</b>
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
            <li key={`${fault.place} ${fault.sentence}`}>{named(fault.sentence, fault)}</li>
          ))}
        </ul>
      ) : null}
      <WayToRoom code={code} />
      <p className="small">
        {movedOn
          ? 'What you typed is still here. Look at what changed, then press again.'
          : (state.kept ?? 'Nothing was changed, and what you typed is still here.')}
      </p>
    </Notice>
  )
}
