import Link from '@/app/_parts/link'
import type { DeskDay, DutyOfDay } from '@/lib/boards/desk-views'

/** The room in which each job of the day is done; what is not here is done elsewhere. */
const ROOM: Partial<Record<DutyOfDay, string>> = {
  'close-entries': 'entries',
  freeze: 'handicaps',
  draw: 'draw',
  'publish-start': 'draw',
  'first-tee': 'returns',
  returns: 'returns',
  close: 'result',
  publish: 'result',
}

/** At the foot of a room: the next job of the day that is done in another one. */
export function NextJob({
  desk,
  at,
  current,
}: {
  readonly desk: DeskDay
  readonly at: string
  readonly current: string
}) {
  if (desk.counts.entered === 0) return null
  const open = desk.due.filter((due) => due.state !== 'done')
  // What is due in this room comes first, apart from the entries, which are never quite over.
  if (open.some((due) => ROOM[due.what] === current && due.what !== 'close-entries' && due.state === 'next'))
    return null
  const next = open.find(
    (due) => ROOM[due.what] !== undefined && ROOM[due.what] !== current && due.what !== 'close-entries',
  )
  if (!next) return null
  return (
    <p className="acts next-job">
      <Link className="btn" href={`${at}/${ROOM[next.what]}`}>
        Next: {next.title.charAt(0).toLowerCase()}
        {next.title.slice(1)}
      </Link>
    </p>
  )
}
