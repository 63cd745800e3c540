'use client'

import type { CardPack } from '@/lib/facts/card-pack'
import type { CardNow } from '@/lib/outbox/card-now'
import { countOnHole, countsOf } from '@/lib/rules/count/count-on-hole'
import { holeValue, signed } from './reading'

interface SideSoFar {
  readonly name: string
  readonly figure: string
  readonly holes: number
}

/** What the sides in this group have together, from the cards on this phone. */
export function sidesSoFar(pack: CardPack, cards: readonly CardNow[]): readonly SideSoFar[] {
  const { together, reading } = pack
  if (!together) return []
  return together.sides.map(({ name, entryIds }) => {
    const own = cards.filter((card) => entryIds.includes(card.card.entryId))
    const holes = own[0]?.holes ?? []
    const balls = own.map((card) => ({
      gross: card.holes.map((hole) => hole.score),
      values: card.holes.map((hole) => holeValue(reading, hole, hole.score)),
    }))
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
      const value = countOnHole(balls, at, counts[at]!, -1, together.better, [])
      if (value === null) continue
      played++
      par += hole.par * counts[at]!.weight
      if (value === 'x') isOut = true
      else sum += value
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
