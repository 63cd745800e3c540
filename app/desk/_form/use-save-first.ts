'use client'

import { type RefObject, useEffect, useRef } from 'react'
import { saveButtonOf, type UnsavedForm } from './unsaved'

const versionIn = (form: HTMLFormElement | null) =>
  form?.querySelector<HTMLInputElement>('input[name=version]')?.value ?? ''

interface Waiting {
  readonly submitter: HTMLElement | null
  readonly version: string
  /** Answers the others had had when they were sent: one more, and still unsaved, is a refusal. */
  readonly answers: ReadonlyMap<string, number>
}

/** Saves the other forms of the page, and sends this one once they are saved and the page carries the new version. */
export function useSaveFirst(
  form: RefObject<HTMLFormElement | null>,
  others: readonly UnsavedForm[],
): (submitter: HTMLElement | null) => void {
  const waiting = useRef<Waiting | null>(null)

  useEffect(() => {
    const now = waiting.current
    if (!now) return
    if (others.some((one) => one.answers > (now.answers.get(one.id) ?? one.answers))) {
      waiting.current = null
      return
    }
    if (others.length > 0 || versionIn(form.current) === now.version) return
    waiting.current = null
    // A button that was named for saving first may have been drawn anew: the form is sent by itself then.
    const { submitter } = now
    form.current?.requestSubmit(submitter?.isConnected ? submitter : null)
  })

  return (submitter) => {
    waiting.current = {
      submitter,
      version: versionIn(form.current),
      answers: new Map(others.map((one) => [one.id, one.answers])),
    }
    for (const one of others) {
      const button = saveButtonOf(one.form)
      if (button?.form) button.form.requestSubmit(button)
      // What cannot be saved as it stands says why beside its own button.
      else waiting.current = null
    }
  }
}
