import { headers } from 'next/headers'
import { Notice } from '@/app/_parts/notice'
import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { shortDateInWords } from '@/lib/boards/dates-in-words'
import { deskHome } from '@/lib/society/desk-day'
import { type DutyLine, officerList } from '@/lib/society/officer-list'
import { ownAddress } from '@/lib/society/own-address'
import '@/app/desk/account/account.css'
import { DutyForms, GiveForm } from './duty-forms'

const dutyName = (duty: string) => duty.replace('-', ' ')

export default async function Officers({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params
  const at = `/desk/${society}/officers`
  const actor = await officerOr(society, at)
  const home = await deskHome(actor)
  if (!home.ok) return <DeskRefusal answer={home} back="/desk" />
  const list = await officerList(actor)
  if (!list.ok) return <DeskRefusal answer={list} back={`/desk/${society}`} />
  const { present, before, mayChange, mayEndSessions } = list.value
  const able = new Set(present.filter((line) => line.canSignIn).map((line) => line.userId))
  const origin = ownAddress(await headers())
  return (
    <DeskFrame
      societySlug={society}
      societyName={home.value.societyName}
      tabs={societyTabs(society)}
      current="officers"
      folio="Officers"
    >
      <div className="desk-title">
        <div>
          <h1>Officers</h1>
          <p className="lead">
            Who holds which duty. A duty is given and ended with its date, and every change stands in the record.
          </p>
        </div>
      </div>
      {able.size < 2 ? (
        <Notice kind="waits" word="One officer only">
          <p>
            Add a second officer soon: with one only, nobody can let you in again if you forget your password.{' '}
            <a href="#give-h">Add an officer</a>
          </p>
        </Notice>
      ) : null}
      <section aria-labelledby="present-h">
        <h2 id="present-h">At present</h2>
        <ul className="account-list officers">
          {present.map((line) => (
            <li key={line.dutyId}>
              <Holder line={line} />
              {mayChange ? (
                <DutyForms
                  society={society}
                  origin={origin}
                  line={{ ...line, duty: dutyName(line.duty) }}
                  mayEndSessions={mayEndSessions}
                  others={others(present, line)}
                />
              ) : null}
            </li>
          ))}
        </ul>
      </section>
      {mayChange ? (
        <section aria-labelledby="give-h">
          <h2 id="give-h">Give a duty</h2>
          <p>
            Somebody who signs in here already needs nothing more. For somebody new a one-time link is made: hand it
            over in a message or on paper, it opens once and within seven days.
          </p>
          <GiveForm society={society} origin={origin} />
        </section>
      ) : null}
      {before.length > 0 ? (
        <details className="rule-all">
          <summary>Earlier duties</summary>
          <ul className="account-list">
            {before.map((line) => (
              <li key={line.dutyId}>
                <Holder line={line} />
              </li>
            ))}
          </ul>
        </details>
      ) : null}
    </DeskFrame>
  )
}

/** The other officers, once each: the usual people a duty goes to. */
function others(present: readonly DutyLine[], line: DutyLine) {
  const people = new Map(present.filter((one) => one.userId !== line.userId).map((one) => [one.userId, one]))
  return [...people.values()].map(({ name, email }) => ({ name, email }))
}

function Holder({ line }: { readonly line: DutyLine }) {
  return (
    <p>
      <b>{dutyName(line.duty)}</b> {line.name}
      {line.mine ? <span className="second"> (you)</span> : null}
      <span className="under second small">
        {line.until
          ? `${shortDateInWords(line.from.slice(0, 10))} to ${shortDateInWords(line.until.slice(0, 10))}`
          : `since ${shortDateInWords(line.from.slice(0, 10))}`}
        {line.canSignIn || line.until ? '' : ', has not used the one-time link yet'}
      </span>
    </p>
  )
}
