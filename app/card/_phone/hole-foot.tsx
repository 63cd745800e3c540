'use client'

import { ordinal } from '@/lib/boards/in-words'
import type { CardPack } from '@/lib/facts/card-pack'
import type { UndoNow } from '@/lib/outbox/card-now'
import type { GroupSnapshot } from '@/lib/outbox/group-book'
import { figureOf } from './reading'
import { StateLine } from './state-line'
import type { Place } from './use-place'
import { allEntered, holeLacks, shortName } from './words'

interface Props {
  readonly pack: CardPack
  readonly now: GroupSnapshot
  readonly hole: number
  readonly order: readonly number[]
  readonly go: (place: Place) => void
  /** A sentence for the line above the buttons, until the next touch. */
  readonly says: string | null
  readonly onUndo: () => void
}

interface Undoes {
  /** ", 12th" where it is not the hole on the screen. */
  readonly where: string
  readonly short: string
  readonly full: string
}

/** "Jago 5", with the hole when it is not the one on the screen; one short line, so that the foot keeps its height. */
function undoes(pack: CardPack, undo: UndoNow | null, hole: number): Undoes | null {
  const fact = undo?.kept.fact
  if (fact?.kind !== 'score') return null
  const card = pack.cards.find((each) => each.cardId === fact.cardId)
  if (!card) return null
  const shown = undo?.changedTo === undefined ? fact.score : undo.changedTo
  const name = shortName(pack, card.entryId)
  const now = undo?.changedTo === undefined ? '' : 'now '
  return {
    where: fact.hole === hole ? '' : `, ${ordinal(fact.hole)}`,
    short: `${name} ${now}${shown === null || shown === 'x' ? '–' : shown}`,
    full: `Undo ${name} ${now}${shown === null ? 'cleared' : figureOf(shown)}, hole ${fact.hole}`,
  }
}

/** "Vikram was changed to 7 on another phone", or null while the score is here to take back. */
export function changedSince(pack: CardPack, { kept: { fact }, changedTo }: UndoNow): string | null {
  const card = pack.cards.find((each) => each.cardId === fact.cardId)
  if (changedTo === undefined || !card) return null
  const name = shortName(pack, card.entryId)
  return changedTo === null
    ? `${name} was cleared on another phone`
    : `${name} was changed to ${figureOf(changedTo)} on another phone`
}

export function HoleFoot({ pack, now, hole, order, go, says, onUndo }: Props) {
  const at = order.indexOf(hole)
  const back = order[at - 1]
  const next = order[at + 1]
  const lacks = holeLacks(pack, now.cards, hole)
  const undo = undoes(pack, now.undo, hole)
  const changed = now.undo ? changedSince(pack, now.undo) : null
  return (
    <footer className="c-foot">
      <StateLine now={now} says={says} />
      <nav className="c-nav" aria-label="Holes">
        <button type="button" className="btn" onClick={() => go(back ? { at: 'hole', hole: back } : { at: 'cards' })}>
          {back ? `Hole ${back}` : 'All cards'}
        </button>
        <button
          type="button"
          className="btn"
          aria-disabled={!undo || changed !== null}
          aria-label={changed === null ? undo?.full : `Undo: ${changed}`}
          onClick={() => undo && onUndo()}
        >
          <span>Undo{undo?.where}</span>
          <span className="small">{undo?.short ?? 'nothing yet'}</span>
        </button>
        <button
          type="button"
          className={lacks ? 'btn' : 'btn first'}
          onClick={() => go(next ? { at: 'hole', hole: next } : { at: 'cards' })}
        >
          {next ? `Hole ${next}` : 'All cards'}
          <span className="small">{lacks ?? allEntered(now.cards)}</span>
        </button>
      </nav>
    </footer>
  )
}
