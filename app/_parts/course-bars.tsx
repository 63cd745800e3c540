import { engravedBar, flagPath, groundLine, placesOnStrip } from './engraving'

interface CourseBarsProps {
  course: readonly { readonly hole: number; readonly par: number; readonly yards: number | null }[]
  /** Holes with a group on them; a hole twice when two groups stand there. */
  groupsOn?: readonly number[]
  /** What the picture says, for those who do not see it. */
  label: string
}

const WIDTH = 480
const GROUND = 80
const TALLEST = 50
/** Where a tee has no yards in the book, a hole of its par stands for it: then the picture is not to length. */
const USUAL_YARDS: Record<number, number> = { 3: 160, 4: 370, 5: 500, 6: 620 }

/** Whether the picture may be called one to length. */
export const isMeasured = (course: CourseBarsProps['course']) => course.every((hole) => hole.yards !== null)

/** The course to length in engraved bars, with a gorse flag where a group still is. */
export function CourseBars({ course, groupsOn = [], label }: CourseBarsProps) {
  const yards = course.map((hole) => hole.yards ?? USUAL_YARDS[hole.par] ?? 370)
  const longest = Math.max(...yards)
  const heights = yards.map((length) => (length / longest) * TALLEST)
  const places = placesOnStrip(course.length, WIDTH)
  const numbered = new Set([1, 3, 6, 9, 10, 12, 15, 18])

  return (
    <svg className="strip" viewBox={`0 0 ${WIDTH} 104`} role="img" aria-label={label}>
      <path
        d={heights.map((height, i) => engravedBar(places[i] ?? 0, GROUND, height)).join('')}
        stroke="currentColor"
        strokeWidth="1.1"
      />
      <path d={groundLine(course.length, WIDTH, GROUND)} stroke="currentColor" strokeWidth="1.4" />
      {course.map((hole, i) =>
        numbered.has(hole.hole) ? (
          <text key={hole.hole} x={places[i]} y="99" textAnchor="middle">
            {hole.hole}
          </text>
        ) : null,
      )}
      {groupsOn.map((on, turn) => {
        const i = course.findIndex((hole) => hole.hole === on)
        if (i < 0) return null
        const here = groupsOn.slice(0, turn).filter((other) => other === on).length
        const x = (places[i] ?? 0) - here * 9 - 1
        const top = GROUND - (heights[i] ?? 0) - 22 - here * 7
        return (
          <g key={`${on} ${here}`}>
            <path d={`M${x} ${GROUND - (heights[i] ?? 0) - 2}V${top}`} stroke="currentColor" strokeWidth="1.4" />
            <path className="gorse-flag" d={flagPath(x, top, 12)} />
          </g>
        )
      })}
    </svg>
  )
}
