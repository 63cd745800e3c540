'use client'

import { DemoMark } from '@/app/_parts/demo-mark'
import type { CardPack } from '@/lib/facts/card-pack'
import { type CardNow, holesInPlay } from '@/lib/outbox/card-now'
import type { GroupSnapshot } from '@/lib/outbox/group-book'
import { HowKept } from './how-kept'
import { TOTAL_WORD, totalFigure, totalOf } from './reading'
import { SidesSoFar } from './sides-so-far'
import { StateLine } from './state-line'
import { hashOf } from './use-place'
import { fullName, holeLacks, holeList, placeWords, shortName } from './words'

/** What is still to do on a card, or how far it has come. */
function standing(card: CardNow, holes: number): string {
  if (card.state === 'taken-in') return 'Taken in at the desk'
  if (card.state === 'handed-in') return 'Handed in'
  if (card.closed) return 'Signed by both, on this phone'
  if (card.notAgreed.length > 0) return `Not agreed: ${holeList(card.notAgreed)}`
  if (card.missing.length === holes) return 'Nothing entered yet'
  if (card.missing.length > 3) return `${holes - card.missing.length} of ${holes} holes`
  if (card.missing.length > 0) return `Missing: ${holeList(card.missing)}`
  const signed = card.signatures.map((each) => each.role)
  return signed.length > 0 ? `Signed by the ${signed[0]}, the other to sign` : 'Complete: look it over and sign'
}

export function GroupSheet({ pack, now, holder }: { pack: CardPack; now: GroupSnapshot; holder: string }) {
  const order = holesInPlay(pack)
  return (
    <>
      <section className="c-sheet" aria-labelledby="cards">
        <h1 id="cards">The cards</h1>
        <ul className="c-cards">
          {now.cards.map((card) => {
            const total = totalOf(pack.reading, card.holes)
            return (
              <li key={card.card.cardId} className={card.notAgreed.length > 0 ? 'differs' : undefined}>
                <a href={hashOf({ at: 'card', entryId: card.card.entryId })}>
                  <span className="who">{fullName(card.card)}</span>
                  <span className="fig total">
                    {totalFigure(pack.reading, total)} <span className="unseen">{TOTAL_WORD[pack.reading]}</span>
                  </span>
                  <span className="small state">
                    {standing(card, order.length)}
                    {placeWords(pack, card.card.entryId, now.packAt)}
                  </span>
                </a>
              </li>
            )
          })}
        </ul>
        <SidesSoFar pack={pack} cards={now.cards} />
        <h2 className="sc">Holes</h2>
        <ul className="c-holes">
          {order.map((hole) => {
            const lacks = holeLacks(pack, now.cards, hole)
            const differs = now.cards.some((card) => card.notAgreed.includes(hole))
            const begun = now.cards.some((card) => !card.missing.includes(hole))
            const state = differs ? 'differs' : !lacks ? 'in' : begun ? 'begun' : 'open'
            return (
              <li key={hole}>
                <a className={state} href={hashOf({ at: 'hole', hole })}>
                  <span className="unseen">Hole </span>
                  <span className="fig">{hole}</span>
                  <span className="unseen">: {lacks ?? 'all in'}</span>
                </a>
              </li>
            )
          })}
        </ul>
        <p className="small c-key-line">
          <span className="in">in</span> <span className="begun">some to enter</span>{' '}
          <span className="differs">not agreed</span>
        </p>
        <p>
          {shortName(pack, holder)} holds this phone. <a href="#phone">Hand it to somebody else</a>
        </p>
        <HowKept />
        {pack.isDemo ? <DemoMark /> : null}
        <p>
          <a className="btn" href={`/${pack.societySlug}/days/${pack.daySlug}`}>
            See the board
          </a>
        </p>
      </section>
      <footer className="c-foot">
        <StateLine now={now} />
      </footer>
    </>
  )
}
