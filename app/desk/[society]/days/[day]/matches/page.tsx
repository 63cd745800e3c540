import type { ReactNode } from 'react'
import { Empty } from '@/app/_parts/empty'
import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import { DeskFrame, DeskRefusal, dayTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { canBeAdded, countedOtherwise, waysToCount } from '@/lib/boards/counted-terms'
import { teamMatesPaired } from '@/lib/boards/team-mates'
import { deskMatches } from '@/lib/society/desk-matches'
import {
  callNextRound,
  keepBall,
  keepCountedDays,
  keepEnding,
  keepListedSides,
  keepPairings,
  keepTeams,
} from './actions'
import { BallForm } from './ball-form'
import { EndingForm } from './ending-form'
import { PairingsForm } from './pairings-form'
import { CallAgain, CountedDays } from './rounds-form'
import { SidesList } from './sides-list'
import { TeamMates } from './team-mates'
import { TeamsForm } from './teams-form'

/** Sides, matches, teams and rounds: whatever a day needs beyond its groups. */
export default async function Matches({ params }: { params: Promise<{ society: string; day: string }> }) {
  const where = await params
  const { society, day } = where
  const actor = await officerOr(society, `/desk/${society}/days/${day}/matches`)
  const found = await deskMatches(actor, day)
  if (!found.ok) return <DeskRefusal answer={found} back={`/desk/${society}`} />
  const { record, players, competitions, days, courses } = found.value
  const seen = <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
  const shut = record.status === 'closed'
  const matched = competitions.filter((one) => one.matches !== null)
  const sided = competitions.filter((one) => one.size > 1)
  const added = competitions.filter((one) => one.matches === null)
  const balls = competitions.flatMap((one) => one.balls)
  return (
    <DeskFrame
      societySlug={society}
      societyName={record.society.name}
      tabs={dayTabs(society, day)}
      current="matches"
      folio={`Day ${record.number}`}
    >
      <div className="desk-title">
        <div>
          <p className="sc second">
            Day {record.number} · {record.name}
          </p>
          <h1>Sides and matches</h1>
          <p className="lead">
            {shut
              ? 'The day is closed: everything stays as it was.'
              : 'Who plays with whom, who against whom, and what is added up.'}
          </p>
        </div>
      </div>
      {teamMatesPaired(record).map((one) => (
        <TeamMates key={one.competitionId} paired={one} action={keepPairings.bind(null, where)}>
          {seen}
        </TeamMates>
      ))}
      {matched.flatMap((one) =>
        one.matches!.length === 0
          ? []
          : [
              <Part key={one.id} id={`matches-${one.id}`} title={one.name}>
                <ol className="match-ends">
                  {one.matches!.map((match) => (
                    <li key={match.id}>
                      <details>
                        <summary>
                          <span>
                            <b>
                              {match.a} against {match.b}
                            </b>
                            : {match.result}
                            {match.said ? `. ${match.said}` : ''}
                          </span>
                        </summary>
                        {shut ? null : (
                          <EndingForm
                            action={keepEnding.bind(null, where)}
                            competitionId={one.id}
                            match={match}
                            withExtraHoles={one.withExtraHoles}
                          >
                            {seen}
                          </EndingForm>
                        )}
                      </details>
                    </li>
                  ))}
                </ol>
              </Part>,
            ],
      )}
      {shut
        ? null
        : matched.map((one) => (
            <Part key={one.id} id={`pairs-${one.id}`} title={`Who plays whom: ${one.name}`}>
              {one.ends.length < 2 ? (
                <Empty first="Nobody to pair yet.">
                  {one.size > 1 ? 'Make the sides first, below or with the draw.' : 'Enter the players first.'}
                </Empty>
              ) : (
                <PairingsForm
                  action={keepPairings.bind(null, where)}
                  competition={one}
                  ends={one.ends}
                  pairings={one.pairings}
                >
                  {seen}
                </PairingsForm>
              )}
            </Part>
          ))}
      {!shut && matched.length > 0 ? (
        <Part id="teams-h" title="Teams of the day">
          <p className="second">
            With teams, every match won counts one point and every halved match a half, over all the matches of the day.
            A side with players of two teams counts for neither.
          </p>
          <TeamsForm action={keepTeams.bind(null, where)} players={players} teams={record.teams}>
            {seen}
          </TeamsForm>
        </Part>
      ) : null}
      {shut
        ? null
        : sided.map((one) => (
            <Part key={one.id} id={`list-${one.id}`} title={`Sides of ${one.name}`}>
              <SidesList
                action={keepListedSides.bind(null, where)}
                competition={one}
                players={players}
                sides={one.sides.map((side) => side.entryIds)}
                names={one.sides.map((side) => side.name)}
              >
                {seen}
              </SidesList>
            </Part>
          ))}
      {!shut && balls.length > 0 ? (
        <Part id="balls-h" title="From the paper cards">
          {balls.map((ball) => (
            <details key={ball.side.id}>
              <summary>
                {ball.side.name}: {ball.said}
              </summary>
              <BallForm action={keepBall.bind(null, where)} {...ball}>
                {seen}
              </BallForm>
            </details>
          ))}
        </Part>
      ) : null}
      {!shut && added.length > 0 ? (
        <Part id="rounds-h" title="Several rounds">
          {days.length === 0 ? (
            <p className="second">There is no earlier day to add up with.</p>
          ) : (
            added.map((one) => (
              <CountedDays
                key={one.id}
                action={keepCountedDays.bind(null, where)}
                competition={one}
                days={days.flatMap((before) => {
                  const kept = record.competitions.find(({ id }) => id === one.id)
                  if (!kept || !(canBeAdded(kept, before) || one.countedDayIds.includes(before.id))) return []
                  const { competitions: _, ...shown } = before
                  return [{ ...shown, otherwise: countedOtherwise(kept, before), ways: waysToCount(kept, before) }]
                })}
              >
                {seen}
              </CountedDays>
            ))
          )}
          <details>
            <summary>Call a further round from this day</summary>
            <CallAgain
              action={callNextRound.bind(null, where)}
              day={{
                name: record.name,
                date: record.date,
                courseId: record.round.courseId,
                holes: record.round.holes,
              }}
              courses={courses}
            >
              {seen}
            </CallAgain>
          </details>
        </Part>
      ) : null}
    </DeskFrame>
  )
}

function Part({ id, title, children }: { readonly id: string; readonly title: string; readonly children: ReactNode }) {
  return (
    <section aria-labelledby={id} className="desk-sheet">
      <h2 id={id}>{title}</h2>
      {children}
    </section>
  )
}
