import type { ReactNode } from 'react'
import { ActLink } from '@/app/_parts/act'
import { PrintAct } from '@/app/_parts/print-act'
import '@/app/styles/paper.css'

interface PaperFrameProps {
  back: string
  print: string
  /** Above the sheets on the screen, never on paper: what is still open, other ways to print. */
  beside?: ReactNode
  paper: 'a4' | 'a4-across' | 'a6'
  children: ReactNode
}

/** Sheets of paper on a screen. Printed, only the sheets remain. */
export function PaperFrame({ back, print, beside, paper, children }: PaperFrameProps) {
  return (
    <div className={`paper on-${paper}`}>
      <nav className="paper-bar no-print" aria-label="Printing">
        <div className="acts">
          <PrintAct>{print}</PrintAct>
          <ActLink href={back}>Back to the papers</ActLink>
        </div>
        {beside}
      </nav>
      <main id="main">{children}</main>
    </div>
  )
}
