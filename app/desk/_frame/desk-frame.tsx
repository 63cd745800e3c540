import type { ReactNode } from 'react'
import { Folio } from '@/app/_parts/folio'
import Link from '@/app/_parts/link'
import { RunningHead } from '@/app/_parts/running-head'
import { Tabs } from '@/app/_parts/tabs'
import { UnsavedMark } from '@/app/desk/_form/unsaved-bar'
import type { Refused } from '@/lib/result'
import { DayLine } from './day-line'
import { SignOut } from './sign-out'

export interface DeskTab {
  readonly href: string
  readonly label: string
  readonly key: string
}

export const dayTabs = (society: string, day: string): readonly DeskTab[] => {
  const at = `/desk/${society}/days/${day}`
  return [
    { key: 'day', href: at, label: 'The day' },
    { key: 'entries', href: `${at}/entries`, label: 'Entries' },
    { key: 'handicaps', href: `${at}/handicaps`, label: 'Handicaps' },
    { key: 'draw', href: `${at}/draw`, label: 'Draw' },
    { key: 'matches', href: `${at}/matches`, label: 'Sides and matches' },
    { key: 'course', href: `${at}/course`, label: 'On the course' },
    { key: 'returns', href: `${at}/returns`, label: 'Returns' },
    { key: 'result', href: `${at}/result`, label: 'Result' },
  ]
}

export const societyTabs = (society: string): readonly DeskTab[] => {
  const at = `/desk/${society}`
  return [
    { key: 'days', href: at, label: 'Days' },
    { key: 'members', href: `${at}/members`, label: 'Members' },
    { key: 'courses', href: `${at}/courses`, label: 'Courses' },
    { key: 'officers', href: `${at}/officers`, label: 'Officers' },
    { key: 'record', href: `${at}/record`, label: 'Record' },
    { key: 'privacy', href: `${at}/privacy`, label: 'Privacy' },
    { key: 'book', href: `${at}/book`, label: 'The book' },
  ]
}

/** For whoever is asked which version this is. */
const PROGRAM = `Daybook ${process.env.DAYBOOK_VERSION ?? ''}`.trim()

interface FrameProps {
  readonly societySlug: string
  readonly societyName: string
  readonly tabs: readonly DeskTab[]
  readonly current: string
  readonly folio: string
  readonly children: ReactNode
  readonly mainClass?: string
}

/** Running head, tabs, the page, the folio: every screen of the desk stands in it. */
export function DeskFrame({ societySlug, societyName, tabs, current, folio, children, mainClass }: FrameProps) {
  return (
    <div className="page desk">
      <RunningHead society={societyName} href={`/desk/${societySlug}`} place="The desk" />
      <DayLine />
      <Tabs
        label="The desk"
        items={tabs.map((tab) => ({
          ...tab,
          current: tab.key === current,
          note: tab.key === current ? <UnsavedMark /> : null,
        }))}
      />
      <main id="main" className={mainClass}>
        {children}
      </main>
      <Folio name={[societyName, 'the desk', folio, PROGRAM].filter(Boolean).join(' · ')}>
        <span className="folio-acts acts">
          <Link href={`/${societySlug}`}>What the members see</Link>
          <Link href="/desk/account">Your account</Link>
          <SignOut />
        </span>
      </Folio>
    </div>
  )
}

/** A page that an officer may not have, or that is not in the book. */
export function DeskRefusal({ answer, back }: { readonly answer: Refused; readonly back: string }) {
  return (
    <div className="page desk">
      <main id="main" className="title">
        <h1>Not on this desk</h1>
        <p className="lead">{answer.sentence}</p>
        <p className="acts">
          <Link className="btn" href={back}>
            Back to the desk
          </Link>
        </p>
      </main>
    </div>
  )
}
