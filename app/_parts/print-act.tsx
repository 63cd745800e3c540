'use client'

import { Act } from './act'

/** Opens the browser's own print sheet. */
export function PrintAct({ children }: { children: string }) {
  return (
    <Act kind="first" type="button" onClick={() => window.print()}>
      {children}
    </Act>
  )
}
