import { CourseNow } from '@/app/_parts/course-now'
import Link from '@/app/_parts/link'
import { Notice } from '@/app/_parts/notice'
import { DeskFrame, DeskRefusal, dayTabs } from '@/app/desk/_frame/desk-frame'
import { LiveRefresh } from '@/app/desk/_frame/live-refresh'
import { timeOf } from '@/app/desk/_frame/moments'
import { officerOr } from '@/app/desk/_frame/officer'
import { count, list } from '@/app/desk/_frame/words'
import { type CourseView, SILENT_MINUTES } from '@/lib/boards/on-the-course'
import { PLAY_CAUTION, PLAY_SIGNALS, PLAY_WORDS, playSentence, SIGNALS_FROM } from '@/lib/boards/play-in-words'
import { isStopped } from '@/lib/facts/play-stop'
import { houseZone } from '@/lib/society/house-zone'
import { onCourse } from '@/lib/society/on-the-course'
import { tellTheCourse } from './actions'
import { EveryMinute } from './every-minute'
import { GroupsTable } from './groups-table'
import { HeldPhones } from './held-phones'
import { StopForm } from './stop-form'
import '../../../../course.css'

export default async function OnTheCourse({ params }: { params: Promise<{ society: string; day: string }> }) {
  const { society, day } = await params
  const at = `/desk/${society}/days/${day}`
  const actor = await officerOr(society, `${at}/course`)
  const found = await onCourse(actor, day)
  if (!found.ok) return <DeskRefusal answer={found} back={at} />
  const view = found.value
  const where = { society, dayId: view.dayId }
  const mayStop = view.status === 'frozen' || view.status === 'in-play'
  return (
    <DeskFrame
      societySlug={society}
      societyName={view.societyName}
      tabs={dayTabs(society, day)}
      current="course"
      folio={`Day ${view.dayNumber}`}
    >
      <LiveRefresh society={society} day={day} />
      <EveryMinute />
      <div className="desk-title">
        <div>
          <p className="sc second">
            {view.dayName} · {view.courseName}
          </p>
          <h1>On the course</h1>
          <p className="lead">{sentenceOf(view)}</p>
        </div>
        {mayStop ? (
          <p className="acts">
            <a className="btn" href="#stop">
              {view.isStopped ? 'Play on' : 'Stop play'}
            </a>
          </p>
        ) : null}
      </div>
      {isStopped(view.play) ? (
        <Notice kind="differs" word="Stopped" announced>
          <p>
            <b>{playSentence(view.play, houseZone())}</b> {PLAY_CAUTION[0]}
          </p>
        </Notice>
      ) : null}
      <Wanted view={view} at={at} />
      <HeldPhones held={view.held} where={where} />
      {view.groups.length === 0 ? (
        <p className="second">There are no groups yet.</p>
      ) : (
        <>
          <CourseNow holes={view.holes} groups={view.groups} />
          <p className="small second course-key">
            <span className="at">where the group is</span> <span className="should">where it would be</span>{' '}
            <span className="silent">nothing entered for {SILENT_MINUTES} minutes</span>{' '}
            <span className="differs">a card not agreed</span>
          </p>
          <h2 className="unseen">Group by group</h2>
          <GroupsTable view={view} at={at} />
          <p className="small second">
            Expected pace is society custom: eighteen holes in 3 h 20 for two-balls, 3 h 50 for threes, 4 h 20 for
            fours, shared out by par. Times are those on the phones where they can be true. A phone without a signal is
            silent although its group is not. While play is stopped no time is counted.
          </p>
        </>
      )}
      {mayStop ? (
        <section className="stop" id="stop" aria-labelledby="stop-h">
          <h2 id="stop-h">Suspension of play</h2>
          <p>
            Cards that are open say it at once, the others when they next have a signal.{' '}
            <b>The siren of the course is what stops play: sound it first, or have it sounded.</b> {PLAY_CAUTION[1]}
          </p>
          <StopForm
            action={tellTheCourse.bind(null, where)}
            stopped={isStopped(view.play) && view.play.kind !== 'resume' ? view.play.kind : null}
          />
          <table className="desk-table signals">
            <caption className="unseen">Signals of the siren</caption>
            <tbody>
              {PLAY_SIGNALS.map((one) => (
                <tr key={one.kind}>
                  <th scope="row">{one.signal}</th>
                  <td>{one.meaning}</td>
                  <td className="small second">
                    {PLAY_WORDS[one.kind].title}. {PLAY_WORDS[one.kind].clause}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          <p className="small second">{SIGNALS_FROM}</p>
          <Told view={view} />
        </section>
      ) : null}
    </DeskFrame>
  )
}

function sentenceOf({ groups }: CourseView): string {
  const out = groups.filter((group) => group.state === 'out').length
  const round = groups.filter((group) => group.state === 'round').length
  const waiting = groups.length - out - round
  const parts = [
    out > 0 ? `${count(out, 'group')} on the course` : '',
    round > 0 ? `${round} finished` : '',
    waiting > 0 ? `${waiting} not started` : '',
  ].filter(Boolean)
  return parts.length === 0 ? 'Nobody is out.' : `${list(parts)}.`
}

/** Who wants somebody to walk out, ring up or look. */
function Wanted({ view, at }: { readonly view: CourseView; readonly at: string }) {
  const lines = view.groups.flatMap((group) => [
    ...(group.isSilent
      ? [
          {
            key: `silent ${group.number}`,
            words: `Group ${group.number} has entered nothing for ${group.silentMinutes} minutes.`,
            href: null,
          },
        ]
      : []),
    ...(group.isHoldingUp
      ? [
          {
            key: `slow ${group.number}`,
            words: `Group ${group.number} is ${group.late} minutes behind and has lost the group in front.`,
            href: null,
          },
        ]
      : []),
    ...group.notAgreed.map(({ name, cardId, holes }) => ({
      key: cardId,
      words: `${name}’s card is not agreed on ${holes.length === 1 ? 'hole' : 'holes'} ${list(holes.map(String))}.`,
      href: `${at}/returns?card=${cardId}`,
    })),
    ...(group.unsent > 0
      ? [
          {
            key: `unsent ${group.number}`,
            words: `A phone of group ${group.number} still keeps ${count(group.unsent, 'line')} that the desk does not have.`,
            href: null,
          },
        ]
      : []),
  ])
  if (lines.length === 0) return null
  return (
    <ul className="wanted">
      {lines.map(({ key, words, href }) => (
        <li key={key}>{href ? <Link href={href}>{words}</Link> : words}</li>
      ))}
    </ul>
  )
}

function Told({ view }: { readonly view: CourseView }) {
  if (view.stops.length === 0) return null
  return (
    <ol className="ledger told">
      {view.stops.map((stop) => (
        <li key={stop.number}>
          <p className="in-margin when fig">{timeOf(stop.at)}</p>
          <p>
            <b>{PLAY_WORDS[stop.kind].title}.</b> {stop.reason}. <span className="second">{stop.by}.</span>
          </p>
        </li>
      ))}
    </ol>
  )
}
