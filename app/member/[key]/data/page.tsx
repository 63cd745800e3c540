import type { Metadata } from 'next'
import { headers } from 'next/headers'
import { notFound } from 'next/navigation'
import Link from '@/app/_parts/link'
import '@/app/desk/desk.css'
import '@/app/desk/forms.css'
import { Folio } from '@/app/_parts/folio'
import { RunningHead } from '@/app/_parts/running-head'
import { ownData } from '@/lib/society/own-data'
import { memberOf } from '@/lib/society/who-is-asking'
import { OwnDetails } from '../../_member/own-details'
import '../../_member/member.css'

export const metadata: Metadata = {
  title: 'What is held about you',
  robots: { index: false, follow: false, nocache: true },
}

export default async function HeldAboutMe({ params }: { params: Promise<{ key: string }> }) {
  const { key } = await params
  const actor = await memberOf(key, await headers())
  if (!actor.ok) notFound()
  const data = await ownData(actor.value)
  if (!data.ok) notFound()
  const { societyName, societySlug, name, parts, settings } = data.value
  const here = `/member/${key}`
  return (
    <div className="page desk member">
      <RunningHead society={societyName} href={here} place="Your page" />
      <main id="main">
        <div className="title">
          <h1>What is held about you</h1>
          <p className="lead">
            Everything the book of {societyName} holds about {name}, and why. How long it is kept stands in the{' '}
            <Link href={`/${societySlug}/privacy`}>privacy notice</Link>.
          </p>
          <p className="acts">
            <a className="btn" href={`${here}/data/file?as=csv`} download>
              Take it as a table
            </a>
            <a className="btn" href={`${here}/data/file?as=json`} download>
              Take it as JSON
            </a>
            <Link href={here}>Back to your page</Link>
          </p>
        </div>
        {parts.map((part) => (
          <section key={part.title} className="held" aria-label={part.title}>
            <h2>{part.title}</h2>
            <p className="second">{part.why}</p>
            <Held lines={part.lines} />
          </section>
        ))}
        <OwnDetails
          pageKey={key}
          email={data.value.email}
          phone={data.value.phone}
          leftOn={data.value.leftOn}
          leaversShownAs={settings.leaversShownAs}
        />
      </main>
      <Folio name={societyName} place={name} />
    </div>
  )
}

const SHOWN = 14

type Lines = readonly { readonly what: string; readonly value: string }[]

/** A long part is folded: twenty years of cards are many lines. */
function Held({ lines }: { readonly lines: Lines }) {
  const list = (some: Lines) => (
    <dl className="held-lines">
      {some.map((line, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two lines may say the same, and their order never changes
        <div key={at}>
          <dt>{line.what}</dt>
          <dd>{line.value}</dd>
        </div>
      ))}
    </dl>
  )
  if (lines.length <= SHOWN) return list(lines)
  return (
    <>
      {list(lines.slice(0, SHOWN))}
      <details className="rule-all">
        <summary>and {lines.length - SHOWN} more lines</summary>
        {list(lines.slice(SHOWN))}
      </details>
    </>
  )
}
