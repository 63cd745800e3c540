// A side's ball as this phone knows it: the pack, with this phone's own facts laid over it. The newest fact of a hole
// counts, whoever wrote it.

import type { CardPack, PackBall } from '@/lib/facts/card-pack'
import { placeOfHole } from '@/lib/rules/hole-numbers'
import { holesInPlay, notInPack, roundOfPack } from './card-now'
import type { KeptFact } from './kept-fact'

export function ballsNow(pack: CardPack, facts: readonly KeptFact[]): readonly PackBall[] {
  const balls = pack.balls ?? []
  if (balls.length === 0) return []
  const fresh = notInPack(pack, facts)
  const round = roundOfPack(pack)
  const order = holesInPlay(pack)
  return balls.map((ball) => {
    const drives = [...ball.drives]
    const lost = new Set(ball.lost)
    for (const { fact } of fresh) {
      if (fact.kind === 'drive' && fact.sideId === ball.sideId) drives[placeOfHole(round, fact.hole)] = fact.entryId
      if (fact.kind !== 'ball-lost' || fact.sideId !== ball.sideId) continue
      if (fact.lost) lost.add(fact.hole)
      else lost.delete(fact.hole)
    }
    return { ...ball, drives, lost: order.filter((hole) => lost.has(hole)) }
  })
}
