import type { MatchState } from '@/lib/rules/standings'
import { engravedBar, groundLine, placesOnStrip } from './engraving'

interface MatchStripProps {
  a: string
  b: string
  holes: readonly MatchState[]
  /** "2&1", "1 up", "halved", or the state so far. */
  result: string
}

const WIDTH = 480

function stateInWords(up: number, a: string, b: string): string {
  if (up === 0) return 'level'
  return `${up > 0 ? a : b} ${Math.abs(up)} up`
}

/** Who is up after each hole: above the line the first name, below it the second, nothing when they are level. */
export function MatchStrip({ a, b, holes, result }: MatchStripProps) {
  const places = placesOnStrip(holes.length, WIDTH)
  const above = Math.max(0, ...holes.map((state) => state.up ?? 0))
  const below = Math.max(0, ...holes.map((state) => -(state.up ?? 0)))
  const unit = Math.min(14, 48 / Math.max(1, above, below))
  const level = 22 + above * unit
  const foot = level + below * unit + 44
  const played = holes.filter((state) => state.up !== null)
  const last = played.at(-1)

  return (
    <figure className="match">
      <p className="match-name">
        <b>{a}</b> above the line, <b>{b}</b> below it
      </p>
      <svg className="strip" viewBox={`0 0 ${WIDTH} ${foot}`} role="img" aria-label={`${a} against ${b}: ${result}`}>
        <path
          d={holes.map((state, i) => engravedBar(places[i] ?? 0, level, (state.up ?? 0) * unit)).join('')}
          stroke="currentColor"
          strokeWidth="1.1"
        />
        <path d={groundLine(holes.length, WIDTH, level)} stroke="currentColor" strokeWidth="1.4" />
        {holes.map((state, i) => {
          const up = state.up
          const x = places[i] ?? 0
          return (
            <g key={state.hole}>
              {up === null ? null : up === 0 ? (
                <circle cx={x} cy={level} r="3.2" className="level-mark" />
              ) : (
                <text
                  x={x}
                  y={up > 0 ? level - up * unit - 4 : level - up * unit + 14}
                  textAnchor="middle"
                  className={state === last ? 'marked' : undefined}
                >
                  {Math.abs(up)}
                </text>
              )}
              <text x={x} y={foot - 4} textAnchor="middle" className={state.hole % 3 ? 'by-the-way' : undefined}>
                {state.hole}
              </text>
            </g>
          )
        })}
      </svg>
      <ol className="unseen">
        {played.map((state) => (
          <li key={state.hole}>
            After hole {state.hole}: {stateInWords(state.up ?? 0, a, b)}
          </li>
        ))}
      </ol>
    </figure>
  )
}
