import { type Box, placeNotes } from './place-notes'

export interface HandicapPoint {
  /** YYYY-MM-DD, in order of date. */
  readonly from: string
  readonly tenths: number
  /** A word on the picture, for the changes worth one: "won with 38, two off". */
  readonly note?: string
}

interface HandicapStepsProps {
  points: readonly HandicapPoint[]
  /** YYYY-MM-DD: the picture ends here. */
  until: string
  /** A limit, drawn as a dotted line: "never above 23.4". */
  limit?: { readonly tenths: number; readonly words: string }
  label: string
}

interface Shape {
  width: number
  height: number
  left: number
  right: number
  notes: boolean
  letter: number
}
const WIDE: Shape = { width: 960, height: 264, left: 38, right: 84, notes: true, letter: 6.4 }
const NARROW: Shape = { width: 360, height: 224, left: 30, right: 62, notes: false, letter: 7 }

const inTenths = (tenths: number) => `${tenths < 0 ? '+' : ''}${(Math.abs(tenths) / 10).toFixed(1)}`
const daysOf = (date: string) => Date.parse(`${date}T00:00:00Z`) / 86_400_000

function scales(points: readonly HandicapPoint[], until: string, limit: number | undefined, shape: Shape) {
  const tenths = [...points.map((point) => point.tenths), ...(limit === undefined ? [] : [limit])]
  const low = Math.floor((Math.min(...tenths) - 3) / 20) * 20
  const high = Math.max(low + 40, Math.ceil((Math.max(...tenths) + 3) / 20) * 20)
  const first = daysOf(points[0]?.from ?? until)
  const span = Math.max(30, daysOf(until) - first)
  const top = 14
  const foot = shape.height - 34
  return {
    low,
    high,
    foot,
    x: (date: string) =>
      shape.left + 14 + ((daysOf(date) - first) / span) * (shape.width - shape.left - 14 - shape.right),
    y: (value: number) => foot - ((value - low) / (high - low)) * (foot - top),
  }
}

function Chart({ points, until, limit, label, shape, name }: HandicapStepsProps & { shape: Shape; name: string }) {
  const { low, high, foot, x, y } = scales(points, until, limit?.tenths, shape)
  const end = shape.width - shape.right + 6
  const last = points.at(-1)
  const step = high - low > 80 ? 40 : 20
  const lines = Array.from({ length: Math.floor((high - low) / step) + 1 }, (_, i) => low + i * step)
  const years = [...new Set([...points.map((point) => point.from), until].map((date) => date.slice(0, 4)))]

  const corners = points.map((point) => ({ x: x(point.from), y: y(point.tenths) }))
  const path = corners.map((corner, i) => (i === 0 ? `M${corner.x} ${corner.y}` : `H${corner.x}V${corner.y}`)).join('')
  const taken: Box[] = corners.map((corner, i) => {
    const next = corners[i + 1]
    return { left: corner.x - 3, right: next?.x ?? end, top: corner.y - 4, bottom: corner.y + 4 }
  })
  const notes = shape.notes
    ? placeNotes(
        points.flatMap((point, i) => {
          const corner = corners[i]
          const before = corners[i - 1]
          if (!point.note || !corner) return []
          return [{ words: point.note, x: corner.x, y: before ? (corner.y + before.y) / 2 : corner.y }]
        }),
        taken,
        { left: shape.left, right: end, top: 4, bottom: foot - 6 },
        shape.letter,
      )
    : []

  return (
    <svg className={`steps-chart ${name}`} viewBox={`0 0 ${shape.width} ${shape.height}`} role="img" aria-label={label}>
      {lines.map((value) => (
        <g key={value}>
          <path d={`M${shape.left} ${y(value)}H${end}`} className={value === low ? 'axis' : 'hairline'} />
          <text x={shape.left - 10} y={y(value) + 5} textAnchor="end">
            {inTenths(value).replace(/\.0$/, '')}
          </text>
        </g>
      ))}
      {years.map((year) => {
        const at = x(`${year}-01-01`)
        const seen = Math.max(shape.left, at)
        return (
          <g key={year}>
            <path d={`M${seen} ${foot}v7`} className="axis" />
            <text x={seen + 6} y={foot + 21}>
              {year}
            </text>
          </g>
        )
      })}
      {limit ? (
        <g>
          <path d={`M${shape.left} ${y(limit.tenths)}H${end}`} className="level-line" />
          <text x={end} y={y(limit.tenths) - 5} textAnchor="end" className="note">
            {limit.words}
          </text>
        </g>
      ) : null}
      <path d={`${path}H${Math.max(end - 8, (corners.at(-1)?.x ?? 0) + 12)}`} className="history" />
      {corners.map((corner) => (
        <circle key={`${corner.x} ${corner.y}`} cx={corner.x} cy={corner.y} r="3.6" fill="currentColor" />
      ))}
      {notes.map((note) => (
        <g key={note.words}>
          <path d={`M${note.fromX} ${note.fromY}L${note.toX} ${note.toY}`} className="leader" />
          <text x={note.x} y={note.y} textAnchor={note.anchor} className="note">
            {note.words}
          </text>
        </g>
      ))}
      {last ? (
        <text x={end + 6} y={y(last.tenths) + 9} className="now">
          {inTenths(last.tenths)}
        </text>
      ) : null}
    </svg>
  )
}

/** A handicap over the seasons, step by step. A picture first: set the table of changes under it. */
export function HandicapSteps(props: HandicapStepsProps) {
  if (props.points.length === 0) return null
  return (
    <>
      <Chart {...props} shape={WIDE} name="chart-wide" />
      <Chart {...props} shape={NARROW} name="chart-narrow" />
    </>
  )
}
