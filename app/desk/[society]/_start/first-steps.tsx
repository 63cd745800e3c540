import type { ReactNode } from 'react'
import Link from '@/app/_parts/link'
import type { FirstStep, FirstSteps as Steps, StepWhat } from '@/lib/society/first-steps'

interface Props {
  readonly society: string
  readonly first: Steps
}

const TITLES: Readonly<Record<StepWhat, string>> = {
  season: 'Add a season',
  members: 'Add the members',
  course: 'Add a course',
  day: 'Set up the first golf day',
  officer: 'Add a second officer',
}

const WHY: Readonly<Record<StepWhat, string>> = {
  season: 'Usually a year: its name and its first and last day.',
  members: 'From a spreadsheet, or typed in one by one. Nothing is saved until you have seen it.',
  course: 'Par, stroke index, course rating and slope of the tees you play. They are on the card of the course.',
  day: 'It needs a season and a course.',
  officer: 'With one officer only, nobody can let you in again if you forget your password.',
}

/** The next thing stands open with its buttons; what is done is ticked, what comes after waits in its order. */
export function FirstSteps({ society, first }: Props) {
  const { steps } = first
  const next = steps.find((step) => !step.isDone)
  const done = steps.filter((step) => step.isDone).length
  return (
    <section className="first-steps" aria-labelledby="first-h">
      <div className="head-acts">
        <h2 id="first-h">Setting up, in order</h2>
        <p className="second">
          {done} of {steps.length} done
        </p>
      </div>
      <ol className="ledger duties">
        {steps.map((step, at) => (
          <Step key={step.what} step={step} number={at + 1} isNext={step === next}>
            <Acts what={step.what} society={society} first={first} />
          </Step>
        ))}
      </ol>
    </section>
  )
}

interface StepProps {
  readonly step: FirstStep
  readonly number: number
  readonly isNext: boolean
  readonly children: ReactNode
}

function Step({ step: { what, isDone, note }, number, isNext, children }: StepProps) {
  if (isNext)
    return (
      <li className="duty due">
        <p className="in-margin when fig">{number}</p>
        <div>
          <p className="sc">Next</p>
          <h3>{TITLES[what]}</h3>
          <p>{WHY[what]}</p>
          {children}
        </div>
      </li>
    )
  return (
    <li className={isDone ? 'duty done' : 'duty next'}>
      <p className="in-margin when fig">{number}</p>
      <p>
        <span className="what">{TITLES[what]}</span>
        <span className="second">{isDone ? note : WHY[what]}</span>
      </p>
      <span className="small second">{isDone ? 'done' : <Later what={what}>{children}</Later>}</span>
    </li>
  )
}

/** A second officer and a course can be added at any time; the rest waits for its turn. */
function Later({ what, children }: { readonly what: StepWhat; readonly children: ReactNode }) {
  return what === 'officer' ? children : 'not started'
}

function Acts({ what, society, first }: Props & { readonly what: StepWhat }) {
  const at = `/desk/${society}`
  switch (what) {
    case 'season':
      return (
        <p className="acts">
          <a className="btn first" href="#season">
            Add a season
          </a>
        </p>
      )
    case 'members':
      return (
        <>
          <p className="acts">
            <Link className="btn first" href={`${at}/members/import`}>
              Import a spreadsheet
            </Link>
            <Link className="btn" href={`${at}/members/new`}>
              Type them in
            </Link>
          </p>
          <AddMe society={society} first={first} />
        </>
      )
    case 'course':
      return (
        <p className="acts">
          <Link className="btn first" href={`${at}/courses/new`}>
            Add a course
          </Link>
          <Link className="btn" href={`${at}/courses/import`}>
            Import a course file
          </Link>
        </p>
      )
    case 'day':
      return (
        <p className="acts">
          <Link className="btn first" href={`${at}/new-day?season=${first.seasonId ?? ''}`}>
            Set up a golf day
          </Link>
        </p>
      )
    case 'officer':
      return (
        <p className="acts">
          <Link className="btn" href={`${at}/officers#give-h`}>
            Add an officer
          </Link>
        </p>
      )
  }
}

function AddMe({ society, first: { addMe } }: Props) {
  if (!addMe) return null
  return (
    <p className="small">
      You are not a member yourself yet:{' '}
      <Link href={`/desk/${society}/members/new?me=yes`}>
        add {addMe.firstName} {addMe.familyName}
      </Link>
      .
    </p>
  )
}
