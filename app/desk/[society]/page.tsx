import { Empty } from '@/app/_parts/empty'
import Link from '@/app/_parts/link'
import { Notice } from '@/app/_parts/notice'
import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { count } from '@/app/desk/_frame/words'
import { clockInWords, dateInWords, shortDateInWords } from '@/lib/boards/dates-in-words'
import type { DeskHome } from '@/lib/boards/desk-views'
import { deskHome } from '@/lib/society/desk-day'
import { firstSteps } from '@/lib/society/first-steps'
import { copyCaution } from '@/lib/society/keep-copies'
import { FirstSteps } from './_start/first-steps'
import { openTheSeason } from './actions'
import { SeasonForm } from './season-form'

type Season = DeskHome['seasons'][number]

const STATUS = { called: 'entries open', frozen: 'handicaps frozen', 'in-play': 'in play', closed: 'closed' } as const

export default async function Desk({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params
  const actor = await officerOr(society, `/desk/${society}`)
  const answer = await deskHome(actor)
  if (!answer.ok) return <DeskRefusal answer={answer} back="/desk" />
  const home = answer.value
  const first = await firstSteps(actor)
  const caution = copyCaution()
  const [season, ...earlier] = home.seasons
  const next = season?.fixtures.find((day) => day.next !== null && day.next.what !== 'handicap-changes')
  return (
    <DeskFrame
      societySlug={society}
      societyName={home.societyName}
      tabs={societyTabs(society)}
      current="days"
      folio={season?.name ?? ''}
    >
      <div className="desk-title">
        <div>
          <p className="sc second">{season ? season.name : 'No season is open'}</p>
          <h1>{home.societyName}</h1>
          <p className="lead">
            {count(home.members, 'member')}, {count(home.courses, 'course')}
            {season ? `, ${count(season.fixtures.length, 'day')} this season` : ''}.
          </p>
        </div>
        {season ? (
          <p className="acts">
            <Link className={next ? 'btn' : 'btn first'} href={`/desk/${society}/new-day?season=${season.seasonId}`}>
              Call a day
            </Link>
          </p>
        ) : null}
      </div>
      {caution ? (
        <Notice kind="waits" word="Copies">
          <p>{caution}</p>
        </Notice>
      ) : null}
      {next?.next ? (
        <section className="next-due" aria-labelledby="next-h">
          <p className="sc">
            {next.next.late ? 'Overdue since' : 'Due'} {shortDateInWords(next.next.on)}
            {next.next.at ? `, ${clockInWords(next.next.at)}` : ''}
          </p>
          <h2 id="next-h">
            {next.next.title}, {next.name}
          </h2>
          <p>{next.next.note}</p>
          <p className="acts">
            <Link className="btn first" href={`/desk/${society}/days/${next.slug}`}>
              To {next.name}
            </Link>
          </p>
        </section>
      ) : null}
      {first.ok && first.value ? <FirstSteps society={society} first={first.value} /> : null}
      {season ? <Fixtures season={season} society={society} /> : null}
      {season && !(first.ok && first.value) && season.fixtures.length === 0 ? (
        <Empty first="No day is called yet.">
          {home.courses === 0 ? 'Enter a course first, or load its card from a file.' : 'Call the first one above.'}
        </Empty>
      ) : null}
      <details id="season" className="rule-all" open={!season}>
        <summary>Open a season</summary>
        <SeasonForm action={openTheSeason.bind(null, society)} year={Number(home.today.slice(0, 4))} first={!season} />
      </details>
      {earlier.map((one) => (
        <details key={one.seasonId} className="rule-all">
          <summary>
            {one.name}, {count(one.fixtures.length, 'day')}
          </summary>
          <Fixtures season={one} society={society} />
        </details>
      ))}
    </DeskFrame>
  )
}

function Fixtures({ season, society }: { readonly season: Season; readonly society: string }) {
  if (season.fixtures.length === 0) return null
  return (
    <div className="scroll" role="group" aria-label={`Days of ${season.name}`}>
      <table role="table" className="fixtures">
        <caption className="unseen">Days of the season {season.name}</caption>
        <thead role="rowgroup">
          <tr role="row">
            <th role="columnheader" scope="col" className="lead-col">
              Day
            </th>
            <th role="columnheader" scope="col">
              Date and name
            </th>
            <th role="columnheader" scope="col">
              Course
            </th>
            <th role="columnheader" scope="col" className="num">
              Entered
            </th>
            <th role="columnheader" scope="col">
              Stands at
            </th>
          </tr>
        </thead>
        <tbody role="rowgroup">
          {season.fixtures.map((day) => (
            <tr key={day.dayId} role="row">
              <td role="cell" className="lead-col fig">
                {day.number}
              </td>
              <th role="rowheader" scope="row">
                <Link href={`/desk/${society}/days/${day.slug}`}>{day.name}</Link>
                <span className="under second small">{dateInWords(day.date)}</span>
              </th>
              <td role="cell" className="course">
                {day.courseName}
              </td>
              <td role="cell" className="num fig">
                {day.entered}
              </td>
              <td role="cell" className={day.next?.late ? 'stands late' : 'stands'}>
                {day.calledOff !== null
                  ? 'called off'
                  : day.published !== null
                    ? `sheet ${day.published} published`
                    : STATUS[day.status]}
                {day.calledOff !== null ? <span className="under second small">{day.calledOff}</span> : null}
                {day.next ? (
                  <span className="under second small">
                    next: {day.next.title.charAt(0).toLowerCase() + day.next.title.slice(1)}
                  </span>
                ) : null}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
