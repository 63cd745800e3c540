'use client'

import { type ReactNode, useEffect, useId, useRef } from 'react'

interface DialogProps {
  open: boolean
  onClose: () => void
  /** Says what will happen and to how many: "Publish sheet 1?" */
  title: string
  children: ReactNode
  acts: ReactNode
}

/** The browser's own dialog: it keeps the focus, closes with Escape, and gives the focus back. */
export function Dialog({ open, onClose, title, children, acts }: DialogProps) {
  const id = useId()
  const dialog = useRef<HTMLDialogElement>(null)

  useEffect(() => {
    const element = dialog.current
    if (!element) return
    if (open && !element.open) element.showModal()
    if (!open && element.open) element.close()
  }, [open])

  return (
    <dialog ref={dialog} className="dialog" aria-labelledby={id} onClose={onClose}>
      <h2 id={id}>{title}</h2>
      <div>{children}</div>
      <div className="acts">{acts}</div>
    </dialog>
  )
}
