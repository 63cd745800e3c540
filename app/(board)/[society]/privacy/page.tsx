import type { Metadata } from 'next'
import { Folio } from '@/app/_parts/folio'
import { RunningHead } from '@/app/_parts/running-head'
import { privacyNotice } from '@/lib/society/keep-privacy'
import { found } from '../../_board/answer'
import { NothingHere } from '../../_board/nothing-here'

interface Props {
  readonly params: Promise<{ society: string }>
}

export const metadata: Metadata = { title: 'Privacy notice' }

const days = (count: number) =>
  count === 0
    ? 'at once'
    : count === 1
      ? 'after one day'
      : count % 365 === 0
        ? `after ${years(count / 365)}`
        : `after ${count} days`
const years = (count: number) => (count === 1 ? 'one year' : `${count} years`)
const LEAVERS = { name: 'by name', initials: 'by initials', 'former-member': 'as “Former member”' } as const

export default async function Notice({ params }: Props) {
  const { society } = await params
  const { value: notice, refusal } = found(await privacyNotice(society))
  if (refusal) return <NothingHere society={society} refusal={refusal} />
  const { societyName, societySlug, settings } = notice
  const { retention, leaversShownAs, juniorsShownAs, searchEngines, privacyContact, noticeMore } = settings
  return (
    <div className="page words">
      <RunningHead society={societyName} href={`/${societySlug}`} place="Privacy" />
      <main id="main">
        <div className="title">
          <h1>Privacy notice</h1>
          <p className="lead">What {societyName} holds about players, why, who sees it, and for how long.</p>
        </div>
        <section aria-labelledby="held-h">
          <h2 id="held-h">What is held</h2>
          <ul className="plain-list">
            <li>
              <b>Name, tees, handicap and results.</b> To enter players, to work the results out, and to explain them
              later. Names and results of the days are public: that is what a result sheet is.
            </li>
            <li>
              <b>Telephone and e-mail, if given.</b> For the officers, to reach you. Never on a public page, a sheet or
              in a log.
            </li>
            <li>
              <b>Handicaps with their reasons.</b> Each member sees the own ones on a page behind a private link.
            </li>
            <li>
              <b>Who changed what.</b> A record of acts with the officer’s name and the network it came from, shortened.
            </li>
            <li>
              <b>Cookies.</b> One, for officers, that keeps them signed in. Nothing is told to third parties, and no
              page asks another site for anything.
            </li>
          </ul>
        </section>
        <section aria-labelledby="long-h">
          <h2 id="long-h">For how long</h2>
          <ul className="plain-list">
            <li>Results, cards and handicaps stay with the days they belong to.</li>
            <li>Contact details of whoever leaves are taken out {days(retention.leaversContact)}.</li>
            <li>The private page of whoever leaves ends {days(retention.leaversPage)}.</li>
            <li>Contact details of guests are taken out {days(retention.guestsContact)} from their last day.</li>
            {retention.guestsNames === null ? null : (
              <li>Guests are shown by initials {days(retention.guestsNames)} from their last day.</li>
            )}
            <li>What a host said of a guest’s handicap is shown on the start sheet of that day only.</li>
            <li>Whoever leaves is shown {LEAVERS[leaversShownAs]} on every sheet from then on, or by less if asked.</li>
            <li>
              Players under 18 are shown {juniorsShownAs === 'initials' ? 'by their initials' : 'by name'} on public
              pages.
            </li>
            <li>
              {searchEngines
                ? 'Search engines may list the public pages.'
                : 'Search engines are asked not to list the public pages.'}
            </li>
          </ul>
        </section>
        <section aria-labelledby="rights-h">
          <h2 id="rights-h">What you can do</h2>
          <p>
            On your own page, behind your private link, you can read everything that is held about you, take it away as
            a file, change your contact details, ask for a correction, and leave. Ask the secretary for the link.
          </p>
          <p>
            {privacyContact ? `Questions go to: ${privacyContact}.` : 'Questions go to the secretary of the society.'}
          </p>
          {noticeMore ? <p>{noticeMore}</p> : null}
          <p className="small second">
            The data-protection law of your country decides what a society may hold and what you may ask for. This
            notice tells what this book does; it does not replace that law, nor advice on it.
          </p>
        </section>
      </main>
      <Folio name={societyName} place="Privacy" />
    </div>
  )
}
