// What only some boards have, under the table: points of the teams, rounds that are added up, groups that share a game,
// the drives of a scramble. Nothing on a day that has none of them.

import { Opens } from '@/app/_parts/opens'
import { shortDateInWords } from '@/lib/boards/dates-in-words'
import type { TeamLine } from '@/lib/boards/extra-views'
import { scoreShort } from '@/lib/boards/in-words'
import type { BoardRow, CompetitionBoard, DayHead } from '@/lib/boards/views'
import { teamAt } from './addresses'

type Row = Pick<BoardRow, 'entrant' | 'name' | 'place' | 'score' | 'rounds' | 'drives'>

interface Props {
  readonly head: Pick<DayHead, 'societySlug' | 'daySlug'>
  /** Which competition of the day, from 1. */
  readonly c: number
  readonly competition: Pick<CompetitionBoard, 'name' | 'unit' | 'teams' | 'shared' | 'placesInGroups' | 'notShared'>
  readonly rows: readonly Row[]
  /** All the matches of the day together, where it has teams. */
  readonly teams?: readonly TeamLine[] | undefined
}

export function BoardExtras({ head: { societySlug, daySlug }, c, competition, rows, teams }: Props) {
  const opens = (of?: number) => (team: string) => teamAt(societySlug, daySlug, team, of)
  return (
    <>
      {teams && teams.length > 1 ? <Teams title="The teams, all matches" lines={teams} at={opens()} /> : null}
      {competition.teams && competition.teams.length > 1 ? (
        <Teams title={`The teams, ${competition.name}`} lines={competition.teams} at={opens(c)} />
      ) : null}
      <Rounds competition={competition} rows={rows} />
      <Shared competition={competition} rows={rows} />
      <Drives rows={rows} />
    </>
  )
}

interface TeamsProps {
  readonly title: string
  readonly lines: readonly TeamLine[]
  /** Where the points of a team open. */
  readonly at: (team: string) => string
}

function Teams({ title, lines, at }: TeamsProps) {
  return (
    <div className="scroll">
      <table className="extras ruled">
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">Team</th>
            <th scope="col" className="num">
              Points
            </th>
            <th scope="col" className="num">
              Won
            </th>
            <th scope="col" className="num">
              Halved
            </th>
            <th scope="col" className="num">
              Lost
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.team}>
              <th scope="row">{line.name}</th>
              <td className="num fig">
                <Opens href={at(line.team)} label={`${line.points} points, ${line.name}: open the working`}>
                  <b>{line.points}</b>
                </Opens>
              </td>
              <td className="num fig">{line.won}</td>
              <td className="num fig">{line.halved}</td>
              <td className="num fig">{line.lost}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

function Rounds({ competition, rows }: Pick<Props, 'competition' | 'rows'>) {
  const rounds = rows.find((row) => row.rounds)?.rounds
  if (!rounds) return null
  const say = (score: number | null) => (score === null ? '–' : scoreShort(score, competition.unit))
  return (
    <div className="scroll">
      <table className="extras ruled">
        <caption>Round by round</caption>
        <thead>
          <tr>
            <th scope="col">Name</th>
            {rounds.map((round) => (
              <th scope="col" className="num" key={round.daySlug}>
                {round.name}
                <br />
                <span className="second">{shortDateInWords(round.date)}</span>
              </th>
            ))}
            <th scope="col" className="num">
              Total
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.entrant}>
              <th scope="row">{row.name}</th>
              {(row.rounds ?? []).map((round) => (
                <td className="num fig" key={round.daySlug}>
                  {say(round.score)}
                </td>
              ))}
              <td className="num fig">
                <b>{say(row.score)}</b>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

/** Each group by itself: nobody plays against the other groups. */
function Shared({ competition, rows }: Pick<Props, 'competition' | 'rows'>) {
  // Where the list itself goes group by group it is not said twice.
  if ((competition.placesInGroups || !competition.shared?.length) && !competition.notShared) return null
  const rowOf = new Map(rows.map((row) => [row.entrant, row]))
  return (
    <section className="extras" aria-label={`${competition.name}, group by group`}>
      {(competition.placesInGroups ? [] : competition.shared)?.map(({ groupNumber, entrants }) => (
        <p key={groupNumber}>
          <b>Group {groupNumber}:</b>{' '}
          {entrants
            .flatMap((id) => rowOf.get(id) ?? [])
            .map((row) => `${row.name} ${row.score === null ? '–' : scoreShort(row.score, competition.unit)}`)
            .join(', ')}
          .
        </p>
      ))}
      {competition.notShared?.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </section>
  )
}

function Drives({ rows }: Pick<Props, 'rows'>) {
  const counted = rows.flatMap((row) => (row.drives ? [{ row, drives: row.drives }] : []))
  if (counted.length === 0) return null
  return (
    <section className="extras" aria-label="Drives">
      {counted.map(({ row, drives }) => (
        <p key={row.entrant} className={drives.outOfReach ? 'differs' : undefined}>
          <b>{row.name}.</b> {drives.sentence}
        </p>
      ))}
    </section>
  )
}
