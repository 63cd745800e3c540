// The head of the board: where and when, the name of the day, the sentence, and the course with the groups on it.

import { CourseBars, isMeasured } from '@/app/_parts/course-bars'
import { Notice } from '@/app/_parts/notice'
import { dateInWords, timeInWords } from '@/lib/boards/dates-in-words'
import { listed, ordinal } from '@/lib/boards/in-words'
import type { DayBoard } from '@/lib/boards/views'
import { resultAt } from './addresses'
import { groupsOut } from './groups-out'
import { PlayNotice } from './play-notice'
import type { ScreenBoard } from './screen-board'

type TopBoard = Pick<
  ScreenBoard,
  | 'head'
  | 'course'
  | 'groups'
  | 'players'
  | 'cards'
  | 'cardsIn'
  | 'cardsToSign'
  | 'cardsNotReturned'
  | 'sentence'
  | 'countedAt'
  | 'zone'
  | 'play'
>

function spokenCourse(course: DayBoard['course'], groups: DayBoard['groups']): string {
  const picture = isMeasured(course) ? 'The course, hole by hole, drawn to length' : 'The course, hole by hole'
  const out = groups.filter((group) => group.onHole !== null)
  if (out.length === 0) return `${picture}.`
  const where = out.map((group) => `group ${group.number} on the ${ordinal(group.onHole ?? 1)}`)
  return `${picture}: ${listed(where)}.`
}

export function BoardTop({ board }: { board: TopBoard }) {
  const { head } = board
  const live = head.status === 'in-play'
  const on = live ? board.groups.flatMap((group) => (group.onHole === null ? [] : [group.onHole])) : []
  return (
    <>
      <PlayNotice play={board.play} zone={board.zone} />
      <div className="board-top">
        <div>
          <p className="sc second">
            <span className="item">{head.courseName} ·</span>{' '}
            <span className="item">
              {dateInWords(head.date)}
              {live && ' ·'}
            </span>
            {live && (
              <>
                {' '}
                <span className="item">
                  <time dateTime={board.countedAt}>{timeInWords(board.countedAt, board.zone)}</time>
                </span>
              </>
            )}
          </p>
          <h1>{head.dayName}</h1>
          <p className="lead">{board.sentence}</p>
        </div>
        <figure>
          <CourseBars
            course={board.course}
            groupsOn={on}
            label={spokenCourse(board.course, live ? board.groups : [])}
          />
          <figcaption className="small second">{groupsOut(board)}</figcaption>
        </figure>
      </div>
      {head.published !== null && (
        <Notice word="Published">
          <p>
            The result is out: <a href={resultAt(head.societySlug, head.daySlug)}>sheet {head.published}</a> is the
            record. This board shows the same cards.
          </p>
        </Notice>
      )}
    </>
  )
}
