import type { HoleLine } from '@/lib/rules/standings'
import { DownTheCard, type ReadCard } from './scorecard-down'
import { Nine } from './scorecard-nine'

interface ScorecardProps extends ReadCard {
  lines: readonly HoleLine[]
  /** `across`: two nines side by side, for a wide page. `down`: hole under hole, as on a phone. */
  way: 'across' | 'down'
}

/** A player's card: two nines, out, in and all, every figure opening when `openHref` says where. */
export function Scorecard({ lines, way, ...read }: ScorecardProps) {
  if (way === 'down') return <DownTheCard lines={lines} {...read} />
  const front = lines.slice(0, 9)
  const back = lines.slice(9)
  return (
    <div className="mini-pair">
      <Nine lines={front} word={back.length > 0 ? 'Out' : 'All'} {...read} />
      {back.length > 0 ? <Nine lines={back} word="In" whole={lines} {...read} /> : null}
    </div>
  )
}
