import { headers } from 'next/headers'
import Link from '@/app/_parts/link'
import { Qr } from '@/app/_parts/qr'
import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { figure } from '@/app/desk/_frame/words'
import { shortDateInWords } from '@/lib/boards/dates-in-words'
import type { MemberPage } from '@/lib/boards/views'
import type { Actor } from '@/lib/facts/actor'
import type { PersonId } from '@/lib/facts/ids'
import { fullName, nameKey } from '@/lib/facts/person-name'
import { refused } from '@/lib/result'
import { dayPlace } from '@/lib/society/day-place'
import { deskHome } from '@/lib/society/desk-day'
import { knownGuests } from '@/lib/society/enter-guest'
import { memberList } from '@/lib/society/keep-person'
import { ownAddress } from '@/lib/society/own-address'
import { memberHistory } from '@/lib/society/read-member'
import { changeFigure, deleteTheMember, keepMember } from '../actions'
import { DeletePerson } from '../delete-person'
import { FigureForm } from '../figure-form'
import { PageAddress } from '../page-address'
import { PersonForm } from '../person-form'
import { EraseForm, PageKeyForms } from '../privacy-forms'

interface Props {
  readonly params: Promise<{ society: string; person: string }>
  /** The day from which one came here, to go back to. */
  readonly searchParams: Promise<{ day?: string }>
}

export default async function Member({ params, searchParams }: Props) {
  const { day } = await searchParams
  const { society, person: personId } = await params
  const at = `/desk/${society}/members`
  const actor = await officerOr(society, `${at}/${personId}`)
  const home = await deskHome(actor)
  if (!home.ok) return <DeskRefusal answer={home} back="/desk" />
  const list = await memberList(actor, { withFormer: true })
  if (!list.ok) return <DeskRefusal answer={list} back={`/desk/${society}`} />
  const person = list.value.find((one) => one.personId === personId)
  if (!person) return <DeskRefusal answer={refused('not-found', 'There is no such person in the book.')} back={at} />
  const from = day ? await dayPlace(actor, day) : null
  const hasNamesake = list.value.some((one) => one.personId !== personId && nameKey(one) === nameKey(person))
  const given = person.kind === 'guest' ? await givenFor(actor, person.personId) : null
  const { pageKey } = person
  const page = await memberHistory(actor, person.personId)
  return (
    <DeskFrame
      societySlug={society}
      societyName={home.value.societyName}
      tabs={societyTabs(society)}
      current="members"
      folio={home.value.seasons[0]?.name ?? ''}
    >
      {from?.ok ? (
        <p className="back-to">
          <Link href={`/desk/${society}/days/${from.value.slug}/handicaps`}>Back to {from.value.name}</Link>
        </p>
      ) : null}
      <div className="desk-title">
        <div>
          <p className="sc second">{person.kind === 'guest' ? 'Guest' : 'Member'}</p>
          <h1>{fullName(person)}</h1>
          <p className="lead">
            {person.figureReason && person.figureFrom
              ? `${person.figureReason}, since ${shortDateInWords(person.figureFrom)}.`
              : given === null
                ? 'No handicap yet.'
                : `${figure(given.tenths)} on ${given.day}, as told by the host; not checked.`}
          </p>
        </div>
        <p className="desk-now">
          <span className="fig trim">
            {person.indexTenths === null ? (given === null ? '–' : figure(given.tenths)) : person.figure}
          </span>
          <span>
            {person.handicapSource === 'society'
              ? 'society handicap'
              : person.handicapSource === 'claimed'
                ? 'as told, not checked'
                : 'index, home club'}
          </span>
        </p>
      </div>
      <div className="desk-two">
        <div className="desk-side">
          <section aria-labelledby="figure-h">
            <h2 id="figure-h">Change the figure</h2>
            <FigureForm action={changeFigure.bind(null, society)} person={person} today={home.value.today} />
            {page.ok ? <History page={page.value} /> : null}
          </section>
          <section aria-labelledby="own-page-h">
            <h2 id="own-page-h">{person.firstName}’s own page</h2>
            {pageKey === null ? (
              <p>The link of the page is for the secretary, the captain and the handicap secretary.</p>
            ) : pageKey.startsWith('ended-') ? (
              <p>The link of the page has ended. Make a new one to hand over.</p>
            ) : (
              <>
                <PageAddress path={`/member/${pageKey}`} to={person.firstName} />
                <details className="rule-all">
                  <summary>Show it as a square to scan</summary>
                  <Qr
                    text={`${ownAddress(await headers())}/member/${pageKey}`}
                    label={`Address of ${person.firstName}’s own page`}
                  />
                </details>
              </>
            )}
            {pageKey === null ? null : (
              <PageKeyForms society={society} personId={person.personId} ended={pageKey.startsWith('ended-')} />
            )}
          </section>
          <section aria-labelledby="erase-h">
            <h2 id="erase-h">Leaving and privacy</h2>
            <p>
              {person.erased ? 'Contact details were taken out of the book. ' : ''}
              {person.shownAs === 'name'
                ? 'Shown by name on public pages.'
                : `Shown ${person.shownAs === 'initials' ? 'by initials' : 'as “Former member”'} on every public page.`}
            </p>
            <EraseForm society={society} personId={person.personId} name={person.firstName} />
            <DeletePerson
              action={deleteTheMember.bind(null, society)}
              personId={person.personId}
              name={fullName(person)}
              kind={person.kind}
            />
          </section>
        </div>
        <section aria-labelledby="person-h">
          <h2 id="person-h">What the book says</h2>
          <PersonForm action={keepMember.bind(null, society)} person={person} hasNamesake={hasNamesake} at={at} />
        </section>
      </div>
    </DeskFrame>
  )
}

/** A guest has no handicap in the book: what the host gave on the last day is what there is. */
async function givenFor(actor: Actor, personId: PersonId) {
  const guests = await knownGuests(actor)
  const guest = guests.ok ? guests.value.find((one) => one.personId === personId) : undefined
  if (!guest || guest.lastDay === null || guest.indexTenths === null) return null
  return { day: guest.lastDay, tenths: guest.indexTenths }
}

function History({ page }: { readonly page: MemberPage }) {
  if (page.records.length === 0) return null
  return (
    <>
      <h3 className="figures-head">Every figure so far</h3>
      <ol className="ledger rulings figures">
        {page.records.map((record) => (
          <li key={`${record.from} ${record.figure} ${record.reason}`}>
            <p className="in-margin fig">{shortDateInWords(record.from)}</p>
            <p>
              <b className="fig">{record.figure}</b> {record.change ? `(${record.change}) ` : ''}
              {record.reason}
            </p>
          </li>
        ))}
      </ol>
    </>
  )
}
