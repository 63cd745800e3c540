'use client'

import { useEffect } from 'react'
import { saveButtonOf, type UnsavedForm, useUnsavedForms } from './unsaved'

const MARK = 'Not saved: '

/** At the foot of the window while something is not saved: what it is, what others see, and the ways out. */
export function UnsavedBar({ forms }: { readonly forms: readonly UnsavedForm[] }) {
  const any = forms.length > 0
  useEffect(() => {
    if (!any) return
    document.title = `${MARK}${document.title.replace(MARK, '')}`
    return () => {
      document.title = document.title.replace(MARK, '')
    }
  }, [any])
  return (
    <div className="unsaved-place">
      {any ? (
        <section className="unsaved-bar" aria-label="Not saved">
          {forms.map((one) => (
            <UnsavedLine key={one.id} unsaved={one} />
          ))}
        </section>
      ) : null}
    </div>
  )
}

function UnsavedLine({ unsaved }: { readonly unsaved: UnsavedForm }) {
  const { form, saves, label, what, meanwhile, undo, stepBack } = unsaved
  const show = () => {
    const button =
      saveButtonOf(form) ??
      form.querySelector<HTMLElement>('button[data-saves]') ??
      form.querySelector<HTMLElement>('button, input, select, textarea')
    button?.closest('details')?.setAttribute('open', '')
    button?.scrollIntoView({ block: 'center' })
    button?.focus()
  }
  const save = () => {
    const button = saveButtonOf(form)
    if (button?.form) button.form.requestSubmit(button)
    else show()
  }
  return (
    <div className="unsaved-line">
      <p aria-live="polite">
        <b>
          {saves ? 'Not saved' : 'Not done yet'}: {label}.
        </b>{' '}
        {what === '' ? '' : `${what.replace(/\.$/, '')}. `}
        <span className="small">{meanwhile}</span>
      </p>
      <p className="acts">
        {saves ? (
          <button type="button" className="btn saves" onClick={save}>
            Save
          </button>
        ) : (
          <button type="button" className="btn saves" onClick={show}>
            Show it
          </button>
        )}
        {stepBack ? (
          <button type="button" className="btn" onClick={stepBack}>
            Undo
          </button>
        ) : null}
        <button type="button" className="btn" onClick={undo}>
          {saves ? 'Back to what was saved' : 'Clear'}
        </button>
      </p>
    </div>
  )
}

/** Behind the name of the page in the tabs. */
export function UnsavedMark() {
  const forms = useUnsavedForms()
  return forms.length > 0 ? <span className="not-saved">{' · not saved'}</span> : null
}

/** In the sentence a page opens with. */
export function UnsavedSentence() {
  const forms = useUnsavedForms()
  return forms.length > 0 ? <b> Not everything here is saved.</b> : null
}
