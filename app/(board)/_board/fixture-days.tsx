// The inside of the fixture card: a line a day, and one sentence about what comes next.

import { calledOffSentence } from '@/lib/boards/called-off'
import { clockInWords, dateInWords, shortDateInWords } from '@/lib/boards/dates-in-words'
import { capital, inWords } from '@/lib/boards/in-words'
import type { FixtureCard } from '@/lib/boards/views'
import { dayAt, resultAt, startAt } from './addresses'

type FixtureDay = FixtureCard['days'][number]

/** The day in play, else the first that is not closed; never one that was called off. */
export function nextDay(card: FixtureCard): FixtureDay | null {
  if (!card.isNewest) return null
  const on = card.days.filter((day) => day.calledOff === null)
  return on.find((day) => day.status === 'in-play') ?? on.find((day) => day.status !== 'closed') ?? null
}

export function nextSentence(card: FixtureCard, next: FixtureDay | null): string {
  if (card.days.length === 0) return 'No day has been called yet. The first one will stand here.'
  if (!card.isNewest) return `The days of ${card.seasonName}.`
  if (!next) {
    const played = card.days.filter((day) => day.calledOff === null).length
    return `${capital(inWords(played))} ${played === 1 ? 'day' : 'days'} played, and every one of them closed.`
  }
  if (next.status === 'in-play') return `${next.dayName} is being played at ${next.courseName} now.`
  return `Next: ${next.dayName}, ${dateInWords(next.date)} at ${next.courseName}, first tee ${clockInWords(next.firstTee)}.`
}

/** Each format keeps together, so that a four-ball is never cut in two. */
function Formats({ formats }: Pick<FixtureDay, 'formats'>) {
  return (
    <span className="second">
      {formats.map((format, at) => (
        <span key={format}>
          {at === 0 ? ', ' : at === formats.length - 1 ? ' and ' : ', '}
          <span className="nowrap">{format}</span>
        </span>
      ))}
    </span>
  )
}

function Acts({ card, day }: { card: FixtureCard; day: FixtureDay }) {
  const { societySlug } = card
  if (day.calledOff !== null) return <b className="nowrap">Called off</b>
  if (day.published !== null)
    return (
      <a className="nowrap" href={resultAt(societySlug, day.daySlug)}>
        Result<span className="unseen"> of {day.dayName}</span>
      </a>
    )
  if (day.status === 'in-play')
    return (
      <a className="nowrap fx-live" href={dayAt(societySlug, day.daySlug)}>
        The board, live<span className="unseen">: {day.dayName}</span>
      </a>
    )
  if (day.startPublished)
    return (
      <a className="nowrap" href={startAt(societySlug, day.daySlug)}>
        Start sheet<span className="unseen"> of {day.dayName}</span>
      </a>
    )
  return null
}

export function FixtureDays({ card, next }: { card: FixtureCard; next: string | null }) {
  if (card.days.length === 0) return <p className="empty">The inside of the card is still blank.</p>
  return (
    <table className="fx-table" role="table">
      <caption className="unseen">Days of {card.seasonName}</caption>
      <thead role="rowgroup" className="unseen">
        <tr role="row">
          <th role="columnheader" scope="col">
            Date
          </th>
          <th role="columnheader" scope="col">
            Day
          </th>
          <th role="columnheader" scope="col">
            Board or result
          </th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        {card.days.map((day) => (
          <tr role="row" key={day.daySlug} className={day.daySlug === next ? 'fx-next' : undefined}>
            <th role="rowheader" scope="row" className="lead-col fx-date fig">
              <time dateTime={day.date}>{shortDateInWords(day.date)}</time>
            </th>
            <td role="cell" className="fx-what">
              <a className="fx-name" href={dayAt(card.societySlug, day.daySlug)}>
                {day.courseName}
              </a>
              <span className="fx-title">
                {day.dayName}
                {day.formats.length > 0 && <Formats formats={day.formats} />}
              </span>
              {day.winner && (
                <span className="small second block">
                  Won by {day.winner.name}, {day.winner.score}
                </span>
              )}
              {day.calledOff !== null && <span className="small block">{calledOffSentence(day.calledOff)}</span>}
              {day.calledOff === null && !day.winner && day.status !== 'closed' && (
                <span className="small second block">
                  {day.startKind === 'shotgun' ? 'Shotgun' : 'First tee'} {clockInWords(day.firstTee)}
                  {day.players > 0 && `, ${day.players} entered`}
                </span>
              )}
            </td>
            <td role="cell" className="fx-act">
              <Acts card={card} day={day} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
