import Link from '@/app/_parts/link'
import { timeOf } from '@/app/desk/_frame/moments'
import { count, list } from '@/app/desk/_frame/words'
import { clockInWords } from '@/lib/boards/dates-in-words'
import type { CourseView, GroupWhere } from '@/lib/boards/on-the-course'

function whereOf(group: GroupWhere): string {
  if (group.state === 'round') return 'finished'
  if (group.state === 'not-started') return 'not started'
  return `on ${group.onHole}, ${count(group.through, 'hole')} finished`
}

function paceOf({ late, state }: GroupWhere): string {
  if (late === null || state === 'not-started') return '–'
  if (Math.abs(late) < 3) return 'on time'
  return late > 0 ? `${late} min behind` : `${-late} min ahead`
}

const gapOf = ({ gap }: GroupWhere) =>
  gap ? `${gap.minutes} min to group ${gap.inFront}, ${gap.atStart} on the tee` : '–'

export function GroupsTable({ view, at }: { readonly view: CourseView; readonly at: string }) {
  return (
    <div className="scroll" tabIndex={0} role="group" aria-label="Groups one by one">
      <table className="desk-table course-table">
        <caption className="unseen">Every group: where it is, its pace, its gap, its silence and its phones</caption>
        <thead>
          <tr>
            <th scope="col">Group</th>
            <th scope="col">Where</th>
            <th scope="col">Pace</th>
            <th scope="col">Gap in front</th>
            <th scope="col">Last entered</th>
            <th scope="col">Not agreed</th>
            <th scope="col">Phones</th>
          </tr>
        </thead>
        <tbody>
          {view.groups.map((group) => (
            <tr key={group.number}>
              <th scope="row">
                <span className="fig">
                  {group.number} · {clockInWords(group.startTime)}
                  {group.startsAt === '1' ? '' : `, hole ${group.startsAt}`}
                </span>
                <span className="under small">{list(group.names)}</span>
              </th>
              <td>{whereOf(group)}</td>
              <td className={group.isHoldingUp ? 'owed-cell' : undefined}>
                {paceOf(group)}
                {group.isHoldingUp ? <span className="under small">and nobody close in front</span> : null}
              </td>
              <td>{gapOf(group)}</td>
              <td className={group.isSilent ? 'owed-cell' : undefined}>
                {group.silentMinutes === null || group.state === 'round'
                  ? '–'
                  : group.state === 'not-started'
                    ? `nothing yet, ${group.silentMinutes} min`
                    : `${group.silentMinutes} min ago`}
              </td>
              <td className={group.notAgreed.length > 0 ? 'differs-cell' : undefined}>
                {group.notAgreed.length === 0
                  ? '–'
                  : group.notAgreed.map(({ name, cardId, holes }) => (
                      <Link key={cardId} className="under" href={`${at}/returns?card=${cardId}`}>
                        {name}, {holes.length === 1 ? 'hole' : 'holes'} {list(holes.map(String))}
                      </Link>
                    ))}
              </td>
              <td>
                {group.phones.length === 0 ? 'none heard of' : null}
                {group.phones.map((phone) => (
                  <span className="under small" key={phone.deviceId}>
                    seen {timeOf(phone.lastSeen)}
                    {phone.unsent > 0 ? `, still keeps ${phone.unsent}` : ''}
                    {isOlder(phone.appVersion) ? ', older app' : ''}
                  </span>
                ))}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

const NOW = process.env.DAYBOOK_APP_BUILD ?? ''
const isOlder = (version: string | null) => version !== null && NOW !== '' && version < NOW
