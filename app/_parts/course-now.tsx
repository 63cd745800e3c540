// The course as columns, a group a row: where it is, where it would be at the expected pace, and the way between.

import { clockInWords } from '@/lib/boards/dates-in-words'
import type { CourseView, GroupWhere } from '@/lib/boards/on-the-course'

const LEFT = 84
const COLUMN = 38
const ROW = 34
const TOP = 46
const MARK = 26

const x = (at: number) => LEFT + at * COLUMN + COLUMN / 2

function says(group: GroupWhere): string {
  if (group.state === 'round') return `group ${group.number} finished`
  if (group.state === 'not-started') return `group ${group.number} not started`
  const should =
    group.expectedHole === null || group.expectedHole === group.onHole ? '' : `, expected on ${group.expectedHole}`
  return `group ${group.number} on ${group.onHole}${should}`
}

const markClass = (group: GroupWhere) =>
  ['at', group.isSilent && 'silent', group.notAgreed.length > 0 && 'differs', group.isHoldingUp && 'slow']
    .filter(Boolean)
    .join(' ')

export function CourseNow({ holes, groups }: Pick<CourseView, 'holes' | 'groups'>) {
  const width = LEFT + (holes.length + 1) * COLUMN
  const height = TOP + groups.length * ROW + 6
  const columnOf = new Map(holes.map(({ hole }, at) => [hole, at]))
  return (
    <div className="scroll" tabIndex={0} role="group" aria-label="The course by hole">
      <svg
        className="course-now"
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={`Where everybody is: ${groups.map(says).join('; ')}.`}
      >
        {holes.map(({ hole, par }, at) => (
          <g key={hole}>
            {at % 2 === 0 ? (
              <rect className="band" x={LEFT + at * COLUMN} y={TOP - 8} width={COLUMN} height={height - TOP + 8} />
            ) : null}
            <text className="hole" x={x(at)} y="18" textAnchor="middle">
              {hole}
            </text>
            <text className="par" x={x(at)} y={TOP - 12} textAnchor="middle" aria-hidden="true">
              {par}
            </text>
          </g>
        ))}
        <text className="par" x={LEFT - 12} y="18" textAnchor="end">
          hole
        </text>
        <text className="hole" x={x(holes.length)} y="18" textAnchor="middle">
          end
        </text>
        {groups.map((group, row) => {
          const y = TOP + row * ROW + ROW / 2 + 2
          const at = group.state === 'round' ? holes.length : (columnOf.get(group.onHole ?? group.startHole) ?? 0)
          const should = group.expectedHole === null ? null : (columnOf.get(group.expectedHole) ?? null)
          return (
            <g key={group.number}>
              <path className="line" d={`M${LEFT} ${y + ROW / 2}H${width}`} />
              <text className="time" x={LEFT - 12} y={y + 5} textAnchor="end">
                {clockInWords(group.startTime)}
              </text>
              {should !== null && group.state === 'out' && should !== at ? (
                <>
                  <path className={should > at ? 'way behind' : 'way'} d={`M${x(at)} ${y}H${x(should)}`} />
                  <rect
                    className="should"
                    x={x(should) - MARK / 2 + 3}
                    y={y - MARK / 2 + 3}
                    width={MARK - 6}
                    height={MARK - 6}
                  />
                </>
              ) : null}
              <rect
                className={group.state === 'not-started' ? 'at waits' : markClass(group)}
                x={x(at) - MARK / 2}
                y={y - MARK / 2}
                width={MARK}
                height={MARK}
              />
              <text
                className={group.state === 'not-started' ? 'number waits' : `number ${markClass(group)}`}
                x={x(at)}
                y={y + 6}
                textAnchor="middle"
              >
                {group.number}
              </text>
            </g>
          )
        })}
      </svg>
    </div>
  )
}
