'use client'

import type { CardPack } from '@/lib/facts/card-pack'
import type { GroupSnapshot } from '@/lib/outbox/group-book'
import { figureOf } from './reading'
import { StateLine } from './state-line'
import type { Place } from './use-place'
import { allIn, holeLacks, shortName } from './words'

interface Props {
  readonly pack: CardPack
  readonly now: GroupSnapshot
  readonly hole: number
  readonly order: readonly number[]
  readonly go: (place: Place) => void
  readonly onUndo: () => void
}

/** "Jago 5", with the hole when it is not the one on the screen. */
function undoes(pack: CardPack, now: GroupSnapshot, hole: number): string | null {
  const fact = now.undo?.fact
  if (fact?.kind !== 'score') return null
  const card = pack.cards.find((each) => each.cardId === fact.cardId)
  if (!card) return null
  const what = fact.score === null ? 'cleared' : figureOf(fact.score)
  const where = fact.hole === hole ? '' : `, hole ${fact.hole}`
  return `${shortName(pack, card.entryId)} ${what}${where}`
}

export function HoleFoot({ pack, now, hole, order, go, onUndo }: Props) {
  const at = order.indexOf(hole)
  const back = order[at - 1]
  const next = order[at + 1]
  const lacks = holeLacks(pack, now.cards, hole)
  const undo = undoes(pack, now, hole)
  return (
    <footer className="c-foot">
      <StateLine now={now} />
      <nav className="c-nav" aria-label="Holes">
        <button type="button" className="btn" onClick={() => go(back ? { at: 'hole', hole: back } : { at: 'cards' })}>
          {back ? `Hole ${back}` : 'Cards'}
          <span className="small">back</span>
        </button>
        <button type="button" className="btn" aria-disabled={!undo} onClick={() => undo && onUndo()}>
          Undo
          <span className="small">{undo ?? 'nothing yet'}</span>
        </button>
        <button
          type="button"
          className={lacks ? 'btn' : 'btn first'}
          onClick={() => go(next ? { at: 'hole', hole: next } : { at: 'cards' })}
        >
          {next ? `Hole ${next}` : 'The cards'}
          <span className="small">{lacks ?? allIn(now.cards)}</span>
        </button>
      </nav>
    </footer>
  )
}
