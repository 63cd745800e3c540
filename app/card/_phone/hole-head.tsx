'use client'

import { useEffect, useRef } from 'react'
import type { CardPack, PackHole } from '@/lib/facts/card-pack'
import { HoleRule } from './hole-rule'
import { shortName } from './words'

interface TeeOnHole {
  readonly name: string
  readonly players: readonly string[]
  readonly line: PackHole
}

/** The tees of the group on one hole, the one most of them play from first. */
function teesOnHole(pack: CardPack, hole: number): readonly TeeOnHole[] {
  const tees = new Map<string, TeeOnHole>()
  for (const card of pack.cards) {
    const line = card.holes.find((each) => each.hole === hole)
    if (!line) continue
    const key = `${card.tee.name} ${card.tee.gender}`
    const players = [...(tees.get(key)?.players ?? []), shortName(pack, card.entryId)]
    tees.set(key, { name: card.tee.name, players, line })
  }
  return [...tees.values()].sort((a, b) => b.players.length - a.players.length)
}

const names = (players: readonly string[]) =>
  players.length === 1 ? players[0] : `${players.slice(0, -1).join(', ')} and ${players.at(-1)}`

export function HoleHead({ pack, hole, hasMoved }: { pack: CardPack; hole: number; hasMoved: boolean }) {
  const heading = useRef<HTMLHeadingElement>(null)
  // A new hole is a new page to whoever listens instead of looking. Runs for every hole after the first.
  useEffect(() => {
    if (hasMoved && hole > 0) heading.current?.focus({ preventScroll: true })
  }, [hole, hasMoved])

  const [main, ...others] = teesOnHole(pack, hole)
  if (!main) return null
  const lengths = [main, ...others].flatMap((tee) =>
    tee.line.yards === null ? [] : [{ name: tee.name, yards: tee.line.yards }],
  )
  return (
    <>
      <div className="c-hole">
        <h1 className="fig c-no trim" tabIndex={-1} ref={heading}>
          <span className="unseen">Hole </span>
          {hole}
        </h1>
        <div>
          <dl className="c-facts">
            <div>
              <dt className="sc">Par</dt>
              <dd className="fig">{main.line.par}</dd>
            </div>
            <div>
              <dt className="sc">Index</dt>
              <dd className="fig">{main.line.strokeIndex}</dd>
            </div>
            {main.line.yards !== null && (
              <div className="after">
                <dt className="sc">yd</dt>
                <dd className="fig">{main.line.yards}</dd>
              </div>
            )}
          </dl>
          {lengths.length > 0 && <HoleRule hole={hole} tees={lengths} />}
        </div>
      </div>
      {others.map((tee) => (
        <p className="c-other" key={tee.players.join()}>
          <b>
            {tee.players.length === 1 ? `${tee.players[0]}, ${tee.name.toLowerCase()}` : `${tee.name} tees`}
            <span className="unseen">{tee.players.length > 1 && ` (${names(tee.players)})`}</span>:
          </b>{' '}
          par {tee.line.par}, index {tee.line.strokeIndex}
          {tee.line.yards !== null && `, ${tee.line.yards} yd`}
        </p>
      ))}
    </>
  )
}
