import type { ReactNode } from 'react'
import type { HoleLine, WorkingStep } from '@/lib/rules/standings'
import { Dots } from './dots'

interface WorkingStepsProps {
  steps: readonly WorkingStep[]
  /** Something to show under a step, by its place in the list: the strokes by index. */
  under?: Readonly<Record<number, ReactNode>>
  heading?: 'h2' | 'h3'
}

/** The running figure stands in the margin; label, sum, sentence and clause beside it. The last one is the answer. */
export function WorkingSteps({ steps, under = {}, heading: Heading = 'h2' }: WorkingStepsProps) {
  return (
    <ol className="ledger steps">
      {steps.map((step, i) => (
        <li key={`${step.label} ${step.figure}`} className={i === steps.length - 1 ? 'answer' : undefined}>
          <p className="in-margin fig step-fig">{step.figure}</p>
          <Heading>{step.label}</Heading>
          {step.sum ? <p className="sum fig">{step.sum}</p> : null}
          <p>{step.sentence}</p>
          {under[i]}
          <p className="clause">{step.clause}</p>
        </li>
      ))}
    </ol>
  )
}

/** Strokes received index by index, with the hole in question marked. */
export function StrokeBand({ lines, here }: { lines: readonly HoleLine[]; here?: number }) {
  const byIndex = [...lines].sort((a, b) => a.strokeIndex - b.strokeIndex)
  return (
    <ul className="band" aria-label="Strokes by stroke index">
      {byIndex.map((line) => (
        <li key={line.hole} className={line.hole === here ? 'here' : undefined}>
          <span className="unseen">index </span>
          <span className="fig">{line.strokeIndex}</span>
          <Dots strokes={line.strokes} />
        </li>
      ))}
    </ul>
  )
}
