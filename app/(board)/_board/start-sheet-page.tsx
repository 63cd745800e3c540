// The start sheet for everybody: times, names, tees and handicaps. Codes and links are for the groups themselves.

import { CourseBars, isMeasured } from '@/app/_parts/course-bars'
import { clockInWords, dateInWords, dayInWords, timeInWords } from '@/lib/boards/dates-in-words'
import { capital } from '@/lib/boards/in-words'
import type { DayBoard, StartSheet } from '@/lib/boards/views'
import { CalledOff } from './called-off'
import { handicapFigure } from './words'

type Group = StartSheet['groups'][number]

function GroupRows({ sheet, group }: { sheet: StartSheet; group: Group }) {
  return (
    <tbody>
      {group.players.map((player, at) => (
        <tr key={player.entryId} className={at === 0 ? 'first' : undefined}>
          {at === 0 && (
            <th scope="rowgroup" rowSpan={group.players.length} className="lead-col fig start-time">
              {clockInWords(group.startTime)}
              {sheet.startKind === 'shotgun' && <span className="small second block">hole {group.startsAt}</span>}
              {sheet.startKind === 'tee-times' && group.startHole > 1 && (
                <span className="small second block">hole {group.startHole}</span>
              )}
            </th>
          )}
          <th scope="row" className="start-who">
            {player.name} {player.note && <span className="small second">{player.note}</span>}
            {player.side && <span className="small second"> {player.side}</span>}
            <span className="small second start-tee-below">{player.tee} tees</span>
          </th>
          <td className="start-tee">{player.tee}</td>
          <td className="fig num start-figure">{player.figure}</td>
          {player.playing.map(({ competition, playingHandicap }) => (
            <td key={competition} className="fig num start-ph">
              {handicapFigure(playingHandicap)}
            </td>
          ))}
        </tr>
      ))}
    </tbody>
  )
}

export function StartSheetPage({
  sheet,
  course,
  zone,
  address,
}: {
  sheet: StartSheet
  course: DayBoard['course']
  zone: string
  /** Where this installation is reached: a path alone cannot be typed into a phone. */
  address: string
}) {
  const several = sheet.competitions.length > 1
  return (
    <>
      <CalledOff reason={sheet.calledOff} />
      <div className="title">
        <p className="sc second">{sheet.dayName}</p>
        <h1>Start sheet</h1>
        <p className="lead">
          {sheet.courseName}, {dateInWords(sheet.date)}.
        </p>
      </div>
      <dl className="start-facts oxford">
        <div>
          <dt className="sc">{sheet.startKind === 'shotgun' ? 'Shotgun' : 'First tee'}</dt>
          <dd className="fig">{clockInWords(sheet.firstTee)}</dd>
        </div>
        {sheet.startKind === 'tee-times' && (
          <div>
            <dt className="sc">Interval</dt>
            <dd>
              <span className="fig">{sheet.intervalMinutes}</span> minutes
            </dd>
          </div>
        )}
        {sheet.competitions.map((competition) => (
          <div key={competition.name}>
            <dt className="sc">{competition.name}</dt>
            <dd>
              {competition.formatName}, {competition.allowance}
            </dd>
          </div>
        ))}
        <div>
          <dt className="sc">On the tee</dt>
          <dd>ten minutes before</dd>
        </div>
      </dl>
      {/* A wide sheet scrolls inside its own edge on a phone. */}
      <div className="scroll" tabIndex={0} role="region" aria-label="Groups and times">
        <table className="starts ruled">
          <caption className="unseen">Groups in starting order</caption>
          <thead>
            <tr>
              <th scope="col" className="lead-col">
                Time
              </th>
              <th scope="col">Player</th>
              <th scope="col" className="start-tee">
                Tees
              </th>
              <th scope="col" className="num">
                Figure
              </th>
              {(sheet.groups[0]?.players[0]?.playing ?? []).map(({ competition }) => (
                <th scope="col" className="num" key={competition}>
                  {several ? competition : 'Playing'}
                </th>
              ))}
            </tr>
          </thead>
          {sheet.groups.map((group) => (
            <GroupRows key={group.number} sheet={sheet} group={group} />
          ))}
        </table>
      </div>
      <div className="start-foot">
        <div>
          <p className="sc">Mark somebody else’s card</p>
          <p>
            The second in the group marks the first, the third the second, and the first marks the last. Gross figures
            only. Both sign.
          </p>
        </div>
        <div>
          <p className="sc">On your own phone</p>
          <p>
            Each group’s code stands on the printed sheet at the first tee: type it at{' '}
            <b className="start-address">{address.replace(/^https?:\/\//, '')}/card</b>. No account, no signal needed.
          </p>
        </div>
        {isMeasured(course) ? (
          <figure>
            <CourseBars course={course} label="The course, hole by hole, drawn to length." />
          </figure>
        ) : null}
      </div>
      <p className="small second start-terms">
        {sheet.frozenAt
          ? `${capital('handicaps')} frozen ${dayInWords(sheet.frozenAt, zone)}, ${timeInWords(sheet.frozenAt, zone)}. `
          : 'Handicaps are not frozen yet: the figures may still move. '}
        Playing handicap: figure × slope ÷ 113 + rating − par, × the allowance, rounded.
      </p>
    </>
  )
}
