'use client'

import { type RefObject, use, useEffect, useId, useRef } from 'react'
import { Reports } from './unsaved'

interface Work {
  readonly label: string
  /** What would be lost, in words. */
  readonly what: string
  /** What it takes until anything happens. */
  readonly meanwhile: string
  readonly clear: () => void
}

/**
 * A part of a page that is no form of its own, such as a file with everything said about it, takes part in the rule of
 * unsaved work: it counts as unsaved for as long as it has work. Mark the part with `data-desk-form`, its button with
 * `data-saves`.
 */
export function useUnsavedPart(ref: RefObject<HTMLElement | null>, work: Work | null) {
  const report = use(Reports)
  const id = useId()
  const now = useRef(work)
  now.current = work

  useEffect(() => {
    const form = ref.current
    if (!form || !work) return report(id, null)
    const { label, what, meanwhile } = work
    const undo = () => now.current?.clear()
    report(id, { id, label, what, meanwhile, saves: false, keeps: false, answers: 0, form, undo, stepBack: null })
  })
  useEffect(() => () => report(id, null), [id, report])
}
