import { engravedBar, groundLine, placesOnStrip } from './engraving'

interface HoleBarsProps {
  values: readonly { readonly hole: number; readonly value: number | null }[]
  /** A dotted line to measure against: two points, or level par. */
  level: number
  /** How a value is written: 2.11. */
  write: (value: number) => string
  label: string
}

const WIDTH = 480
const GROUND = 92
const TALLEST = 72

/** How the course played: one value a hole, with the highest and the lowest written on. */
export function HoleBars({ values, level, write, label }: HoleBarsProps) {
  const played = values.flatMap((hole) => (hole.value === null ? [] : [hole.value]))
  const most = Math.max(level, ...played)
  const least = Math.min(...played)
  const places = placesOnStrip(values.length, WIDTH)
  const height = (value: number) => (value / most) * TALLEST
  const marked = [values.findIndex((h) => h.value === Math.max(...played)), values.findIndex((h) => h.value === least)]
  const levelY = GROUND - height(level)

  return (
    <svg className="strip" viewBox={`0 0 ${WIDTH} 112`} role="img" aria-label={label}>
      <path d={`M0 ${levelY}H${WIDTH}`} className="level-line" />
      <path
        d={values.map((hole, i) => engravedBar(places[i] ?? 0, GROUND, height(hole.value ?? 0))).join('')}
        stroke="currentColor"
        strokeWidth="1.1"
      />
      <path d={groundLine(values.length, WIDTH, GROUND)} stroke="currentColor" strokeWidth="1.4" />
      {values.map((hole, i) => (
        <text
          key={hole.hole}
          className={hole.hole % 3 ? 'by-the-way' : undefined}
          x={places[i]}
          y="110"
          textAnchor="middle"
        >
          {hole.hole}
        </text>
      ))}
      {marked.map((i) => {
        const value = values[i]?.value
        if (value === undefined || value === null) return null
        return (
          <text key={`at ${i}`} className="marked" x={places[i]} y={GROUND - height(value) - 4} textAnchor="middle">
            {write(value)}
          </text>
        )
      })}
    </svg>
  )
}
