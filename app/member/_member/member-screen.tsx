// A member's own page: the figure, how it came about as a picture, every change with its reason, the cards.

import { Empty } from '@/app/_parts/empty'
import { Folio } from '@/app/_parts/folio'
import { HandicapSteps } from '@/app/_parts/handicap-steps'
import { RunningHead } from '@/app/_parts/running-head'
import { cardAt, societyAt } from '@/app/(board)/_board/addresses'
import { NO_PLACE } from '@/app/(board)/_board/words'
import { dateInWords, shortDateInWords } from '@/lib/boards/dates-in-words'
import { ordinal } from '@/lib/boards/in-words'
import type { MemberPage } from '@/lib/boards/views'
import { pictureOf, SOURCE_WORDS } from './history'

type OwnCard = MemberPage['cards'][number]

/** The large figure of a day and what it counts: a day of matches has no score, but matches won. */
function figureOf({ score, reading, matches }: OwnCard): { readonly figure: string; readonly counts: string | null } {
  if (score !== null) return { figure: score, counts: reading }
  if (matches.length === 0) return { figure: '–', counts: null }
  return { figure: String(matches.filter((one) => one.startsWith('won')).length), counts: 'won' }
}

function OwnScore({ card }: { card: OwnCard }) {
  const { figure, counts } = figureOf(card)
  return (
    <span className="own-score">
      <span className="fig">{figure}</span>
      {counts && <span className="small second">{counts}</span>}
    </span>
  )
}

/** What stands under the day: where and when, with whom, and how it came out. */
function underDay(card: OwnCard): string {
  const isMatch = card.matches.length > 0 && card.score === null
  return [
    card.courseName,
    shortDateInWords(card.date),
    ...(card.side ? [card.side] : []),
    ...(card.gross !== null && card.reading !== 'gross' ? [`gross ${card.gross}`] : []),
    ...card.matches,
    ...(isMatch ? [] : [place(card)]),
  ].join(', ')
}

/** Each other competition has a line of its own. */
function Others({ card }: { card: OwnCard }) {
  return card.others?.lines.map((line) => (
    <span key={line} className="small second">
      {line}
    </span>
  ))
}

function place(card: OwnCard): string {
  if (card.live) return 'being played'
  if (card.noPlace) return NO_PLACE[card.noPlace]
  if (card.place === null) return 'no place'
  return card.others ? `${ordinal(card.place)} in ${card.others.in}` : ordinal(card.place)
}

function Changes({ records }: Pick<MemberPage, 'records'>) {
  return (
    <section aria-labelledby="changes-h">
      <h2 id="changes-h">Every change, with its reason</h2>
      <table className="changes ruled">
        <caption className="unseen">Handicap changes, newest first</caption>
        <thead>
          <tr>
            <th scope="col" className="lead-col">
              From
            </th>
            <th scope="col" className="num">
              Figure
            </th>
            <th scope="col" className="num">
              Change
            </th>
            <th scope="col">Reason</th>
          </tr>
        </thead>
        <tbody>
          {records.map((record, at) => (
            // Two records of one date keep their order: newest first.
            // biome-ignore lint/suspicious/noArrayIndexKey: a record has no other name on this page
            <tr key={at}>
              <th scope="row" className="lead-col">
                {shortDateInWords(record.from)}
              </th>
              <td className="fig num changes-figure">{record.figure}</td>
              <td className="fig num">{record.change ?? ''}</td>
              <td>
                {record.reason}
                <span className="small second block">{SOURCE_WORDS[record.source]}</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

function Cards({ page }: { page: MemberPage }) {
  return (
    <section aria-labelledby="cards-h">
      <h2 id="cards-h">Your cards</h2>
      {page.cards.length === 0 ? (
        <Empty first="No card yet.">The first one stands here as soon as you have played.</Empty>
      ) : (
        <ul className="own-cards ruled">
          {page.cards.map((card) => (
            <li key={card.entryId}>
              <a href={cardAt(page.societySlug, card.daySlug, card.entryId)}>
                <OwnScore card={card} />
                <span className="own-where">
                  <b>{card.dayName}</b>
                  <span className="small second">{underDay(card)}</span>
                  <Others card={card} />
                </span>
              </a>
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}

export function MemberScreen({ page, dataAt }: { page: MemberPage; dataAt: string }) {
  const picture = pictureOf(page)
  return (
    <div className="page member">
      <RunningHead
        society={page.societyName}
        href={societyAt(page.societySlug)}
        place={page.seasonName ?? 'Your page'}
      />
      <main id="main">
        <div className="member-title">
          <div>
            <p className="sc second">{page.memberSince ? `Member since ${page.memberSince}` : 'Your own page'}</p>
            <h1>{page.name}</h1>
            <p className="lead">{page.sentence}</p>
          </div>
          {page.figure !== null && (
            <p className="member-figure">
              <span className="fig trim">{page.figure}</span>
              <span>
                {SOURCE_WORDS[page.source]}
                {page.figureFrom && <span className="second block">from {dateInWords(page.figureFrom)}</span>}
              </span>
            </p>
          )}
        </div>
        {picture && (
          <section className="oxford" aria-labelledby="came-h">
            <h2 id="came-h">How it came about</h2>
            <HandicapSteps points={picture.points} until={picture.until} label={picture.label} />
          </section>
        )}
        <div className="member-two">
          {page.records.length > 0 ? (
            <Changes records={page.records} />
          ) : (
            <Empty first="No figure yet.">The handicap secretary writes the first one, with its reason.</Empty>
          )}
          <Cards page={page} />
        </div>
        <p className="small second member-note">
          This page is behind a private link. Whoever has the link sees it: keep it to yourself. A society handicap is
          the society’s own figure; an index belongs to the associations. <a href={dataAt}>What is held about you</a>:
          read it, take it away, put it right, or leave.{' '}
          <a href={`${societyAt(page.societySlug)}/privacy`}>Privacy notice</a>.
        </p>
      </main>
      <Folio name={page.societyName} place={page.seasonName ?? ''} />
    </div>
  )
}
