import Link from '@/app/_parts/link'
import type { WorkingStep } from '@/lib/rules/standings'

/** The steps of one figure, the clause under the words. */
export function Working({
  title,
  steps,
  close,
}: {
  readonly title: string
  readonly steps: readonly WorkingStep[]
  readonly close: string
}) {
  return (
    <section className="desk-working" id="working" aria-labelledby="working-h" tabIndex={-1}>
      <div className="head-acts">
        <h2 id="working-h">{title}</h2>
        <p className="acts">
          <Link className="btn plain" href={close} scroll={false}>
            Close the working
          </Link>
        </p>
      </div>
      <ol className="ledger steps">
        {steps.map((step, place) => (
          <li key={`${step.label} ${step.figure}`} className={place === steps.length - 1 ? 'answer' : undefined}>
            <p className="in-margin step-fig fig">{step.figure}</p>
            <h3>{step.label}</h3>
            {step.sum ? <p className="sum fig">{step.sum}</p> : null}
            <p>{step.sentence}</p>
            <p className="clause">{step.clause}</p>
          </li>
        ))}
      </ol>
    </section>
  )
}
