import Link from '@/app/_parts/link'
import { Notice } from '@/app/_parts/notice'
import { CalledOffNotice } from '@/app/desk/_frame/called-off-notice'
import { DeskFrame, DeskRefusal, dayTabs } from '@/app/desk/_frame/desk-frame'
import { LeftOutNotice } from '@/app/desk/_frame/left-out'
import { LiveRefresh } from '@/app/desk/_frame/live-refresh'
import { officerOr } from '@/app/desk/_frame/officer'
import { inWords } from '@/app/desk/_frame/words'
import { clockInWords, dateInWords } from '@/lib/boards/dates-in-words'
import type { DeskDay } from '@/lib/boards/desk-views'
import { leftOut } from '@/lib/boards/left-out'
import { PLAY_CAUTION, playSentence } from '@/lib/boards/play-in-words'
import { prizesInTurn } from '@/lib/boards/prize-rule'
import { isStopped, playNow } from '@/lib/facts/play-stop'
import { deskDay } from '@/lib/society/desk-day'
import { handicapTable } from '@/lib/society/freeze-handicaps'
import { houseZone } from '@/lib/society/house-zone'
import { CallOff } from './call-off'
import { Competitions } from './competitions'
import { Duties } from './duties'
import { ShownOnBoard } from './shown-on-board'
import { StartTable } from './start-table'

export default async function Day({ params }: { params: Promise<{ society: string; day: string }> }) {
  const { society, day } = await params
  const at = `/desk/${society}/days/${day}`
  const actor = await officerOr(society, at)
  const found = await deskDay(actor, day)
  if (!found.ok) return <DeskRefusal answer={found} back={`/desk/${society}`} />
  const { record, cautions, tees } = found.value
  const handicaps = await handicapTable(actor, record.id)
  const shotgun = record.round.startKind === 'shotgun'
  return (
    <DeskFrame
      societySlug={society}
      societyName={record.society.name}
      tabs={dayTabs(society, day)}
      current="day"
      folio={`Day ${record.number}`}
    >
      {record.status === 'in-play' ? <LiveRefresh society={society} day={day} /> : null}
      <div className="desk-title">
        <div>
          <p className="sc second">
            Day {record.number} of {record.season.dayCount} · {record.name}
          </p>
          <h1>{dateInWords(record.date)}</h1>
          <p className="lead">
            {record.round.courseName}, {shotgun ? 'shotgun start at' : 'first tee'}{' '}
            {clockInWords(record.round.firstTee)}
            {record.groups.length > 0
              ? `, ${inWords(record.groups.length)} groups${shotgun ? '' : ` every ${inWords(record.round.intervalMinutes)} minutes`}`
              : ''}
            .
          </p>
        </div>
        <ToGo day={found.value} />
      </div>
      <CalledOffNotice record={record} at={at} />
      <OutNow day={found.value} at={at} />
      <Counts day={found.value} at={at} />
      {cautions.map((caution) => (
        <Notice key={caution} kind="waits" word="Please check">
          <p>{caution}</p>
        </Notice>
      ))}
      <LeftOutNotice sentences={record.status === 'closed' || record.calledOff ? [] : leftOut(record)} at={at} />
      <div className="desk-two">
        <section aria-labelledby="due-h">
          <h2 id="due-h">What is due</h2>
          <Duties day={found.value} society={society} at={at} />
        </section>
        <div className="desk-side">
          <section aria-labelledby="comp-h">
            <h2 id="comp-h">Competitions</h2>
            <Competitions record={record} />
            <p className="acts">
              <Link className="btn plain" href={`${at}/change`}>
                Change the day
              </Link>
              <a className="btn plain" href={`${at}/export`}>
                Day file
              </a>
            </p>
          </section>
          <section className="terms" aria-labelledby="terms-h">
            <h2 id="terms-h">Terms, read back</h2>
            <p>{tees}</p>
            {record.competitions.some((one) => one.prizes.length > 0) ? (
              <p>{prizesInTurn(record.competitions)}</p>
            ) : null}
          </section>
          <ShownOnBoard day={found.value} society={society} />
        </div>
      </div>
      {record.groups.length > 0 && handicaps.ok ? (
        <section className="desk-sheet" aria-labelledby="sheet-h">
          <div className="head-acts">
            <h2 id="sheet-h">Start sheet</h2>
            <p className="acts">
              <Link className="btn" href={`${at}/draw`}>
                Mend the draw
              </Link>
              <Link className="btn" href={`${at}/print`}>
                See it printed
              </Link>
            </p>
          </div>
          <StartTable record={record} handicaps={handicaps.value} />
          <p className="small second">
            The figure after a name is the playing handicap in {record.competitions[0]?.name}
            {handicaps.value.frozen ? ', as frozen.' : ', as it stands now; it is fixed at the freeze.'}
          </p>
        </section>
      ) : null}
      <CallOff record={record} where={{ society, day }} />
    </DeskFrame>
  )
}

/** While groups are out: the way to them, and that play is stopped. */
function OutNow({ day, at }: { readonly day: DeskDay; readonly at: string }) {
  const { record } = day
  if (record.calledOff) return null
  if (record.status !== 'in-play' && record.status !== 'frozen') return null
  const play = playNow(record.playStops)
  if (isStopped(play))
    return (
      <Notice
        kind="differs"
        word="Stopped"
        acts={
          <Link className="btn" href={`${at}/course#stop`}>
            On the course
          </Link>
        }
      >
        <p>
          <b>{playSentence(play, houseZone())}</b> {PLAY_CAUTION[0]}
        </p>
      </Notice>
    )
  if (record.status !== 'in-play') return null
  return (
    <p className="acts">
      <Link className="btn" href={`${at}/course`}>
        Where everybody is
      </Link>
    </p>
  )
}

function ToGo({ day }: { readonly day: DeskDay }) {
  const { daysToGo } = day
  const words = daysToGo > 0 ? 'to go' : 'ago'
  return (
    <p className="desk-now">
      {daysToGo === 0 ? (
        <span className="fig now-word">today</span>
      ) : (
        <>
          <span className="fig trim">{Math.abs(daysToGo)}</span>
          <span>
            {Math.abs(daysToGo) === 1 ? 'day' : 'days'} {words}
          </span>
        </>
      )}
    </p>
  )
}

function Counts({ day, at }: { readonly day: DeskDay; readonly at: string }) {
  const { counts, places } = day
  return (
    <dl className="counts">
      <div>
        <dt>entered</dt>
        <dd className="fig trim">{counts.entered}</dd>
        <dd className="of">
          {places === null ? <Link href={`${at}/entries`}>to the entries</Link> : `of ${places} places`}
        </dd>
      </div>
      <div>
        <dt>guests</dt>
        <dd className="fig trim">{counts.guests}</dd>
        <dd className="of">{counts.guests === 0 ? 'none yet' : 'each with a host'}</dd>
      </div>
      <div>
        <dt>waiting</dt>
        <dd className="fig trim">{counts.waiting}</dd>
        <dd className="of">{counts.withdrawn > 0 ? `${counts.withdrawn} withdrawn` : 'none withdrawn'}</dd>
      </div>
      <div className={counts.ungrouped > 0 && counts.groups > 0 ? 'owed' : undefined}>
        <dt>groups</dt>
        <dd className="fig trim">{counts.groups}</dd>
        <dd className="of">
          {counts.groups > 0 && counts.ungrouped > 0 ? (
            <Link href={`${at}/draw`}>{counts.ungrouped} in no group</Link>
          ) : counts.groups > 0 ? (
            'everybody in one'
          ) : (
            'not drawn yet'
          )}
        </dd>
      </div>
      {counts.cards > 0 ? (
        <div>
          <dt>cards in</dt>
          <dd className="fig trim">{counts.cardsIn}</dd>
          <dd className="of">
            of {counts.cards}, {counts.cardsAccepted} accepted
            {counts.cardsNotReturned > 0 ? `, ${counts.cardsNotReturned} not returned` : ''}
          </dd>
        </div>
      ) : (
        <div className={counts.noFigure > 0 ? 'owed' : undefined}>
          <dt>no figure</dt>
          <dd className="fig trim">{counts.noFigure}</dd>
          <dd className="of">
            {counts.noFigure > 0 ? <Link href={`${at}/handicaps`}>they hold up the freeze</Link> : 'all have one'}
          </dd>
        </div>
      )}
    </dl>
  )
}
