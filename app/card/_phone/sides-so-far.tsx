'use client'

import type { CardPack } from '@/lib/facts/card-pack'
import type { CardNow, HoleNow } from '@/lib/outbox/card-now'
import { countOnHole, countsOf } from '@/lib/rules/count/count-on-hole'
import { filledFrom } from '@/lib/rules/score/short-sides'
import { holeValue, signed } from './reading'

interface SideSoFar {
  readonly name: string
  readonly figure: string
  readonly holes: number
}

/** How often a hole counts is a matter of the side, not of each of its scores. */
const once = <H extends HoleNow>(hole: H): H => ({ ...hole, times: 1 })

/** What the sides in this group have together, from the cards on this phone. */
export function sidesSoFar(pack: CardPack, cards: readonly CardNow[]): readonly SideSoFar[] {
  const { together, reading } = pack
  if (!together) return []
  const { shortage } = together
  return together.sides.map(({ name, entryIds }) => {
    const holes = entryIds.flatMap((id) => cards.find((card) => card.card.entryId === id) ?? [])[0]?.holes ?? []
    // Whoever has no card yet is still to play, and is nobody that the side lacks.
    const own = entryIds.map((id) => {
      const card = cards.find((one) => one.card.entryId === id)
      const scored = holes.map((_, at) => card?.holes[at]?.score ?? null)
      return {
        gross: scored,
        values: scored.map((score, at) => (card ? holeValue(reading, once(card.holes[at]!), score) : null)),
      }
    })
    const pars = holes.map((hole) => hole.par)
    const balls = shortage ? filledFrom(shortage, own, pars) : own
    const counts = countsOf(
      together.count,
      together.on,
      holes.map((hole) => hole.hole),
    )
    let sum = 0
    let par = 0
    let played = 0
    let isOut = false
    for (const [at, hole] of holes.entries()) {
      const { times = 1 } = hole
      const value = times === 0 ? null : countOnHole(balls, at, counts[at]!, -1, together.better, [])
      if (value === null) continue
      played++
      par += (hole.level ?? hole.par) * counts[at]!.weight * times
      if (value === 'x') isOut = true
      else sum += value * times
    }
    const figure = isOut || played === 0 ? '–' : together.better === 'high' ? String(sum) : signed(sum - par)
    return { name, figure, holes: played }
  })
}

export function SidesSoFar({ pack, cards }: { readonly pack: CardPack; readonly cards: readonly CardNow[] }) {
  const sides = sidesSoFar(pack, cards)
  if (sides.length === 0) return null
  return (
    <section aria-labelledby="sides">
      <h2 className="sc" id="sides">
        {pack.mainCompetition}
      </h2>
      <ul className="c-sides">
        {sides.map((side) => (
          <li key={side.name}>
            <span className="who">{side.name}</span>
            <span className="fig">{side.figure}</span>
            <span className="small">after {side.holes}</span>
          </li>
        ))}
      </ul>
    </section>
  )
}
