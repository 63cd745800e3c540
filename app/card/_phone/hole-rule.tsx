// The hole drawn to length, every hole of the card to one scale: tee blocks left, flag right, a tick each 50 yards.

interface TeeMark {
  readonly name: string
  readonly yards: number
}

const FLAG = 220
const PER_YARD = 0.36
const x = (yards: number) => Math.max(6, FLAG - yards * PER_YARD)
const one = (figure: number) => Math.round(figure * 10) / 10

/** The ground in small strokes, a little different on every hole, always the same on one. */
function ground(hole: number, from: number): string {
  const strokes: string[] = []
  for (let at = from + 13; at < FLAG - 3; at += 2.7) {
    const wave = 8 + 4 * Math.sin(at * 0.035 + hole * 1.7) + 2 * Math.sin(at * 0.11 + hole)
    const fade = Math.min(1, (at - from) / 40, (FLAG - at) / 14)
    strokes.push(`M${one(at)} 35v${-one(Math.max(1.8, wave * fade))}`)
  }
  return strokes.join('')
}

export function HoleRule({ hole, tees }: { hole: number; tees: readonly TeeMark[] }) {
  const longest = Math.max(...tees.map((tee) => tee.yards))
  const from = x(longest)
  const ticks = Array.from({ length: Math.floor(longest / 50) }, (_, index) => (index + 1) * 50)
  const label = `Length to scale: ${tees.map((tee) => `${tee.name} ${tee.yards} yards`).join(', ')}`
  return (
    <svg className="c-rule" viewBox="0 0 230 52" role="img" aria-label={label}>
      <path d={`M${one(from)} 35H228`} stroke="currentColor" strokeWidth="1.3" />
      <path
        d={ticks.map((yards) => `M${one(x(yards))} 35v${yards % 100 === 0 ? 8 : 4}`).join('')}
        stroke="currentColor"
      />
      <path d={ground(hole, from)} stroke="currentColor" strokeWidth=".9" />
      {tees.map((tee, index) => (
        <path
          key={tee.name}
          d={`M${one(x(tee.yards) - 3.5)} 35v-9h7v9z`}
          fill={index === 0 ? 'currentColor' : 'var(--paper)'}
          stroke="currentColor"
          strokeWidth="1.4"
        />
      ))}
      <path d={`M${FLAG} 35V3`} stroke="currentColor" strokeWidth="1.6" />
      <path d={`M${FLAG} 3l-13 4.6 13 4.6z`} fill="currentColor" />
      {ticks
        .filter((yards) => yards % 100 === 0)
        .map((yards) => (
          <text key={yards} x={one(x(yards) + 3)} y="50" fontSize="12.5" className="fig" fill="currentColor">
            {yards}
          </text>
        ))}
    </svg>
  )
}
