'use client'

import { type ReactNode, useCallback, useState } from 'react'
import { LeaveQuestion } from './leave-question'
import { type Report, Reports, Unsaved, type UnsavedForm } from './unsaved'
import { UnsavedBar } from './unsaved-bar'

/** Around every page of the desk: knows which forms differ from what was loaded. */
export function UnsavedWork({ children }: { readonly children: ReactNode }) {
  const [forms, setForms] = useState<readonly UnsavedForm[]>([])
  const report = useCallback<Report>((id, unsaved) => {
    setForms((now) => {
      const before = now.find((one) => one.id === id)
      if (unsaved === null) return before ? now.filter((one) => one.id !== id) : now
      if (before && sayTheSame(before, unsaved)) return now
      return before ? now.map((one) => (one.id === id ? unsaved : one)) : [...now, unsaved]
    })
  }, [])
  return (
    <Reports value={report}>
      <Unsaved value={forms}>
        {children}
        <UnsavedBar forms={forms} />
        <LeaveQuestion forms={forms} />
      </Unsaved>
    </Reports>
  )
}

const sayTheSame = (a: UnsavedForm, b: UnsavedForm) =>
  a.label === b.label &&
  a.what === b.what &&
  a.meanwhile === b.meanwhile &&
  a.answers === b.answers &&
  a.form === b.form &&
  (a.stepBack === null) === (b.stepBack === null)
