import { strokesFigure } from '@/lib/boards/figure'
import type { SideHandicaps } from '@/lib/boards/side-handicaps'

/** What the sides on one ball play off; nothing where every player has an own ball. */
export function SideFigures({ competition }: { readonly competition: SideHandicaps | undefined }) {
  if (!competition || competition.sides.length === 0) return null
  return (
    <>
      <h3>What the sides play off</h3>
      <ul>
        {competition.sides.map((side) => (
          <li key={side.sideId}>
            {side.name}: <b className="fig ph">{strokesFigure(side.playingHandicap)}</b>{' '}
            <span className="small second">{side.sentence}</span>
          </li>
        ))}
      </ul>
    </>
  )
}
