'use client'

import { DemoMark } from '@/app/_parts/demo-mark'
import type { CardPack } from '@/lib/facts/card-pack'
import { type CardNow, holesInPlay } from '@/lib/outbox/card-now'
import type { GroupSnapshot } from '@/lib/outbox/group-book'
import { GamesSoFar } from './games-so-far'
import { HowKept } from './how-kept'
import { MatchesSoFar } from './matches-so-far'
import { TOTAL_WORD, totalFigure, totalOf } from './reading'
import { SidesSoFar } from './sides-so-far'
import { signaturesOffInWords } from './signature-off'
import { standingFirst } from './standing'
import { StateLine } from './state-line'
import { hashOf } from './use-place'
import { allEnteredInFull, cardName, holeLacks, placeWords, shortName } from './words'

/** Nobody wrote a score on it and nobody needs one: the match was over. */
const isSpare = (cards: readonly CardNow[], hole: number) =>
  cards.every(
    (card) =>
      card.notNeeded.includes(hole) && card.holes.every((line) => line.hole !== hole || line.written.length === 0),
  )

export function GroupSheet({ pack, now, holder }: { pack: CardPack; now: GroupSnapshot; holder: string }) {
  const order = holesInPlay(pack)
  return (
    <>
      <section className="c-sheet" aria-labelledby="cards">
        <h1 id="cards">The cards</h1>
        {now.cards
          .flatMap((card) => signaturesOffInWords(pack, card))
          .map((sentence) => (
            <p key={sentence} className="notice waits" role="status">
              {sentence}
            </p>
          ))}
        <ul className="c-cards">
          {now.cards.map((card) => {
            const total = totalOf(pack.reading, card.holes)
            return (
              <li key={card.card.cardId} className={card.notAgreed.length > 0 ? 'differs' : undefined}>
                <a href={hashOf({ at: 'card', entryId: card.card.entryId })}>
                  <span className="who">{cardName(card.card)}</span>
                  <span className="fig total">
                    {totalFigure(pack.reading, total)} <span className="unseen">{TOTAL_WORD[pack.reading]}</span>
                  </span>
                  <span className="small state">
                    {[standingFirst(pack, card), placeWords(pack, card.card.entryId, now.packAt)]
                      .filter(Boolean)
                      .join('. ')}
                  </span>
                </a>
              </li>
            )
          })}
        </ul>
        <MatchesSoFar matches={now.matches} cards={now.cards} />
        <GamesSoFar games={pack.games} cards={now.cards} />
        <SidesSoFar pack={pack} cards={now.cards} />
        <h2 className="sc">Holes</h2>
        <ul className="c-holes">
          {order.map((hole) => {
            const lacks = holeLacks(pack, now.cards, hole)
            const differs = now.cards.some((card) => card.notAgreed.includes(hole))
            const begun = now.cards.some((card) => !card.missing.includes(hole))
            const spare = isSpare(now.cards, hole)
            const state = differs ? 'differs' : spare ? 'spare' : !lacks ? 'in' : begun ? 'begun' : 'open'
            return (
              <li key={hole}>
                <a className={state} href={hashOf({ at: 'hole', hole })}>
                  <span className="unseen">Hole </span>
                  <span className="fig">{hole}</span>
                  <span className="unseen">, {lacks ?? (spare ? 'no score needed' : allEnteredInFull(now.cards))}</span>
                </a>
              </li>
            )
          })}
        </ul>
        <p className="small c-key-line">
          <span className="in">entered</span> <span className="begun">some to enter</span>{' '}
          <span className="differs">not agreed</span>
        </p>
        <p>
          This is {shortName(pack, holder)}’s phone. <a href="#phone">Somebody else has the phone now</a>
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
