import { flagPath, hachures } from './engraving'

interface HoleScaleProps {
  /** The tees in play on this hole, the longest first: its block is filled, the others are open. */
  tees: readonly { readonly name: string; readonly yards: number }[]
  /** Yards of the longest hole of the course, so that every hole is drawn to one scale. */
  longest?: number
}

const GREEN = 286
const GROUND = 34

/** The hole drawn to length, measured back from the pin. */
export function HoleScale({ tees, longest = 560 }: HoleScaleProps) {
  const far = Math.max(...tees.map((tee) => tee.yards))
  const yard = (GREEN - 16) / Math.max(longest, far)
  const at = (yards: number) => Math.round((GREEN - yards * yard) * 10) / 10
  const spoken = tees.map((tee) => `${tee.name} ${tee.yards} yards`).join(', ')
  const ticks = Array.from({ length: Math.floor(far / 50) }, (_, i) => (i + 1) * 50)
  const bareTo = far <= 240 ? at(60) : at(far)

  return (
    <svg className="hole-rule" viewBox="0 0 300 52" role="img" aria-label={`The hole to length: ${spoken}`}>
      <path d={`M${at(far) - 4} ${GROUND}H298`} stroke="currentColor" strokeWidth="1.4" />
      <path
        d={ticks.map((yards) => `M${at(yards)} ${GROUND}v${yards % 100 === 0 ? 8 : 4}`).join('')}
        stroke="currentColor"
      />
      <path d={hachures(bareTo, GREEN, GROUND)} stroke="currentColor" />
      {ticks
        .filter((yards) => yards % 100 === 0)
        .map((yards) => (
          <text key={yards} x={at(yards) + 2} y="51">
            {yards}
          </text>
        ))}
      {tees.map((tee) => (
        <rect
          key={tee.name}
          className={tee.yards === far ? 'tee-block filled' : 'tee-block'}
          x={at(tee.yards) - 4}
          y={GROUND - 9}
          width="8"
          height="9"
        />
      ))}
      <path d={`M${GREEN} ${GROUND}V3`} stroke="currentColor" strokeWidth="1.6" />
      <path d={flagPath(GREEN, 3, -13)} fill="currentColor" transform={`rotate(0 ${GREEN} 3)`} />
    </svg>
  )
}
