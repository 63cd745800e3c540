'use client'

import { Act } from '@/app/_parts/act'

export function PrintButton({ children }: { children: string }) {
  return (
    <Act kind="first" type="button" onClick={() => window.print()}>
      {children}
    </Act>
  )
}
