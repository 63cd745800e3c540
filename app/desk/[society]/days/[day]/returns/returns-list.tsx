import Link from '@/app/_parts/link'
import { clockInWords } from '@/lib/boards/dates-in-words'
import type { CardReturn, ReturnsView } from '@/lib/boards/returns-view'
import { AcceptHandedIn } from './accept-handed-in'
import { acceptHandedIn } from './actions'
import { FoldOnPhone } from './fold-on-phone'

function stateClass(card: CardReturn, current: boolean): string {
  if (current) return 's-now'
  if (card.state === 'taken-in' || card.outcome) return 's-in'
  if (card.notAgreed.length > 0) return 's-differs'
  if (card.missing.length === 0 && !card.stands && card.signatures.filter((one) => one.covers).length < 2)
    return 's-unsigned'
  return 's-out'
}

/** Every card by group, with what stands in its way in three words. */
export function ReturnsList({
  view,
  current,
  here,
  where,
}: {
  readonly view: ReturnsView
  readonly current: string | undefined
  readonly here: string
  readonly where: { readonly society: string; readonly day: string }
}) {
  const chosen = view.groups.flatMap((group) => group.cards).find((card) => card.cardId === current)
  const line = `${view.cards} cards, ${view.takenIn} accepted${chosen ? `; ${chosen.name} chosen` : ''}`
  return (
    <aside className="returns-list" aria-labelledby="cards-by-group">
      <p className="big-of">
        <span className="fig trim">{view.takenIn}</span>
        <span>
          of {view.cards} cards
          <br />
          accepted
        </span>
      </p>
      {view.status === 'closed' ? null : (
        <AcceptHandedIn
          dayId={view.dayId}
          cards={view.groups.flatMap((group) => group.cards)}
          action={acceptHandedIn.bind(null, where)}
        />
      )}
      <h2 id="cards-by-group" className="unseen">
        Cards by group
      </h2>
      <FoldOnPhone key={current ?? 'none'} line={line}>
        {view.groups.map((group) => (
          <section key={group.number} aria-label={`Group ${group.number}`}>
            <h3 className="fig">
              {clockInWords(group.startTime)} <span className="second small">group {group.number}</span>
            </h3>
            <ul className="card-states">
              {group.cards.map((card) => (
                <li key={card.cardId} className={stateClass(card, card.cardId === current)}>
                  <Link
                    href={`${here}?card=${card.cardId}`}
                    aria-current={card.cardId === current ? 'true' : undefined}
                    aria-label={`${card.name}, ${card.line}`}
                  >
                    {card.name}
                  </Link>{' '}
                  <span>{card.cardId === current ? 'this card' : card.line}</span>
                </li>
              ))}
            </ul>
          </section>
        ))}
      </FoldOnPhone>
    </aside>
  )
}
