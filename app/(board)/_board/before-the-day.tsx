// A day that has not begun: when, where, what, and who; and where the start sheet is.

import { ActLink } from '@/app/_parts/act'
import { CourseBars, isMeasured } from '@/app/_parts/course-bars'
import { Empty } from '@/app/_parts/empty'
import { clockInWords, dateInWords } from '@/lib/boards/dates-in-words'
import { capital, inWords } from '@/lib/boards/in-words'
import { byLastWord } from '@/lib/boards/order-of-names'
import type { DayBoard } from '@/lib/boards/views'
import { startAt } from './addresses'

/** "Shotgun 9.30 am." */
function startOf({ start }: DayBoard): string {
  return start ? `${start.kind === 'shotgun' ? 'Shotgun' : 'First tee'} ${clockInWords(start.firstTee)}.` : ''
}

export function BeforeTheDay({ board }: { board: DayBoard }) {
  const first = board.groups[0]
  const names = (board.competitions[0]?.rows ?? [])
    .map((row) => ({
      key: row.entrant,
      name: row.name,
      note: row.note,
    }))
    .sort((a, b) => byLastWord(a.name, b.name))
  return (
    <>
      <div className="board-top">
        <div>
          <p className="sc second">
            <span className="item">{board.courseName} ·</span> <span className="item">{dateInWords(board.date)}</span>
          </p>
          <h1>{board.dayName}</h1>
          <p className="lead">
            {board.calledOff === undefined ? startOf(board) : board.sentence}{' '}
            {first && board.calledOff === undefined ? 'Nothing played yet.' : null}
          </p>
          {first && board.calledOff === undefined && (
            <p className="acts">
              <ActLink kind="first" href={startAt(board.societySlug, board.daySlug)}>
                Start sheet
              </ActLink>
            </p>
          )}
        </div>
        {isMeasured(board.course) ? (
          <figure>
            <CourseBars course={board.course} label="The course, hole by hole, drawn to length." />
            <figcaption className="small second">The course, drawn to length.</figcaption>
          </figure>
        ) : null}
      </div>
      <section className="before oxford" aria-labelledby="what-h">
        <h2 id="what-h">What is played</h2>
        <div className="scroll" tabIndex={0} role="region" aria-label="Competitions of the day">
          <table className="plain-table ruled played-table" role="table">
            <caption className="unseen">Competitions of the day</caption>
            <thead role="rowgroup">
              <tr role="row">
                <th role="columnheader" scope="col">
                  Competition
                </th>
                <th role="columnheader" scope="col">
                  Format
                </th>
                <th role="columnheader" scope="col">
                  Allowance
                </th>
              </tr>
            </thead>
            <tbody role="rowgroup">
              {board.competitions.map((competition) => (
                <tr role="row" key={competition.id}>
                  <th role="rowheader" scope="row">
                    {competition.name}
                  </th>
                  <td role="cell">{competition.formatName}</td>
                  <td role="cell">
                    <span className="fig">{competition.allowance}</span>{' '}
                    <span className="small second block">{competition.allowanceFrom}</span>
                    {competition.moreTerms?.map((sentence) => (
                      <span key={sentence} className="small second block">
                        {sentence}
                      </span>
                    ))}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </section>
      <section className="before" aria-labelledby="who-h">
        <h2 id="who-h">Who plays</h2>
        {names.length === 0 ? (
          <Empty first="Nobody is entered yet.">The names stand here as they come in.</Empty>
        ) : (
          <>
            <p className="second">{capital(inWords(board.players))} entered.</p>
            <ul className="name-list">
              {names.map(({ key, name, note }) => (
                <li key={key}>
                  {name} {note && <span className="small second">{note}</span>}
                </li>
              ))}
            </ul>
          </>
        )}
      </section>
    </>
  )
}
