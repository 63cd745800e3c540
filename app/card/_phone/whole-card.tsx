'use client'

import { useEffect, useRef, useState } from 'react'
import type { CardPack } from '@/lib/facts/card-pack'
import type { CardNow, HoleNow } from '@/lib/outbox/card-now'
import type { GroupBook, GroupSnapshot } from '@/lib/outbox/group-book'
import type { Me } from '@/lib/outbox/holding'
import { playsIn } from '@/lib/rules/matches/match-now'
import { Dots } from './dots'
import { HandedIn } from './handed-in'
import { concededOn, concededSaid, strokesSaid } from './match-words'
import {
  figureOf,
  holeValue,
  type Reading,
  signed,
  strokesIn,
  TOTAL_WORD,
  totalFigure,
  totalOf,
  workingOf,
} from './reading'
import { BeforeSigning, SignPart, signsNext, type ToSign, toSign } from './sign-part'
import { StateLine } from './state-line'
import { hashOf } from './use-place'
import { cardName, placeWords, shortName, whoWrote } from './words'

interface Props {
  readonly pack: CardPack
  readonly now: GroupSnapshot
  readonly book: GroupBook
  readonly card: CardNow
  readonly holder: string
  readonly refuse: (sentence: string | null) => void
}

const LAST_COLUMN: Readonly<Record<Reading, string>> = { points: 'Points', net: 'Net', gross: 'To par', par: 'Hole' }
const HANDICAP = (figure: number) => (figure < 0 ? `+${-figure}` : String(figure))

export function WholeCard(props: Props) {
  const { pack, now, book, card, holder, refuse } = props
  const [inHand, setInHand] = useState(holder)
  const [giveTo, setGiveTo] = useState<Pick<ToSign, 'role' | 'entryId'> | null>(null)
  const [whole, setWhole] = useState(false)
  const [first, ...others] = toSign(pack, card, inHand)

  async function sign(who: ToSign) {
    const done = await book.sign(card.card.cardId, who.role, who.entryId)
    refuse(done.ok ? null : done.sentence)
    if (!done.ok) return
    setInHand(who.entryId)
    setGiveTo(signsNext(pack, card, who))
    window.scrollTo(0, 0)
  }

  if (card.closed && !whole) return <HandedIn pack={pack} now={now} card={card} onWhole={() => setWhole(true)} />
  if (giveTo && first) {
    return (
      <GivePhone
        now={now}
        name={shortName(pack, giveTo.entryId)}
        what={giveTo.role === 'player' ? 'this card' : `${cardOf(pack, card)} as marker`}
        onHere={() => {
          setInHand(giveTo.entryId)
          setGiveTo(null)
        }}
      />
    )
  }
  const total = totalOf(pack.reading, card.holes)
  const marker = card.card.markerId ? pack.cards.find((each) => each.entryId === card.card.markerId) : null
  const matches = now.matches.filter((one) => playsIn(one.match, card.card.entryId))
  const conceded = matches.flatMap(concededSaid)
  const strokes = matches.flatMap((one) => strokesSaid(one, card.card))
  const nines = [card.holes.slice(0, 9), card.holes.slice(9)]
  const isWhole = card.holes.length > 9
  return (
    <>
      <header className="c-whole-head">
        <h1>{cardName(card.card)}</h1>
        <p className="small second">
          Playing handicap {HANDICAP(card.card.playingHandicap)}, {card.card.tee.name.toLowerCase()} tees.
          {marker && ` Marker: ${cardName(marker)}.`}
          {card.card.guestOf && ` Guest of ${card.card.guestOf}.`}
        </p>
        {card.card.leftOut?.map((sentence) => (
          <p key={sentence} className="small">
            {sentence}
          </p>
        ))}
        {[...strokes, ...conceded].map((sentence) => (
          <p className="small" key={sentence}>
            {sentence}
          </p>
        ))}
        {pack.position && <p className="small">{placeWords(pack, card.card.entryId, now.packAt)}</p>}
        <dl className="c-heroes">
          <div>
            <dt>{TOTAL_WORD[pack.reading]}</dt>
            <dd className="fig trim">{totalFigure(pack.reading, total)}</dd>
          </div>
          {pack.reading !== 'gross' && (
            <div>
              <dt>gross</dt>
              <dd className="fig trim lesser">{total.gross ?? '–'}</dd>
            </div>
          )}
          <div>
            <dt>holes</dt>
            <dd className="fig trim lesser">{total.played}</dd>
          </div>
        </dl>
      </header>
      <BeforeSigning pack={pack} card={card} balls={now.balls} />
      <div className="scroll" tabIndex={0} role="group" aria-label="Hole by hole">
        <table className="c-table">
          <caption className="unseen">Card of {cardName(card.card)}, hole by hole</caption>
          <thead>
            <tr>
              <th scope="col" className="lead-col">
                Hole
              </th>
              <th scope="col">Par</th>
              <th scope="col">Index</th>
              <th scope="col">Strokes</th>
              <th scope="col">Gross</th>
              <th scope="col">{LAST_COLUMN[pack.reading]}</th>
            </tr>
          </thead>
          {nines.map((holes, index) =>
            holes.length === 0 ? null : (
              <tbody key={index === 0 ? 'out' : 'in'}>
                {index === 1 && (
                  <tr className="foldrow" aria-hidden="true">
                    <td colSpan={6}>
                      <div className="fold" />
                    </td>
                  </tr>
                )}
                {holes.map((hole) => (
                  <HoleLine
                    key={hole.hole}
                    pack={pack}
                    hole={hole}
                    me={now.me}
                    spare={card.notNeeded.includes(hole.hole)}
                    conceded={matches.some((one) => concededOn(one, hole.hole) !== null)}
                  />
                ))}
                {isWhole && (
                  <SumLine reading={pack.reading} word={index === 0 ? 'Out' : 'In'} holes={holes} className="half" />
                )}
                {(index === 1 || !isWhole) && (
                  <SumLine reading={pack.reading} word="All" holes={card.holes} className="all" />
                )}
              </tbody>
            ),
          )}
        </table>
      </div>
      <hr className="fold" />
      <SignPart pack={pack} card={card} others={others} onSign={(who) => void sign(who)} />
      <footer className="c-foot">
        <StateLine now={now} />
        {first && (
          <div className="c-act">
            <button type="button" className="btn first wide" onClick={() => void sign(first)}>
              {first.words}
            </button>
            <p>
              <a href="#cards">A score is wrong</a>
            </p>
          </div>
        )}
        {card.closed && (
          <div className="c-act">
            <button type="button" className="btn first wide" onClick={() => setWhole(false)}>
              Back
            </button>
          </div>
        )}
      </footer>
    </>
  )
}

const cardOf = (pack: CardPack, card: CardNow) =>
  card.players.length > 1 ? 'the card' : `${shortName(pack, card.card.entryId)}’s card`

/** Between two signatures on one phone: the other person reads and signs, not the same thumb twice. */
function GivePhone({
  now,
  name,
  what,
  onHere,
}: {
  readonly now: GroupSnapshot
  readonly name: string
  readonly what: string
  readonly onHere: () => void
}) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus(), [])
  return (
    <>
      <section className="c-sheet" aria-labelledby="give">
        <h1 id="give" tabIndex={-1} ref={heading}>
          Now give the phone to {name}
        </h1>
        <p className="lead">
          {name} reads the scores and signs {what}.
        </p>
      </section>
      <footer className="c-foot">
        <StateLine now={now} />
        <div className="c-act">
          <button type="button" className="btn first wide" onClick={onHere}>
            I am {name}
          </button>
          <p>
            <a href="#cards">All cards</a>
          </p>
        </div>
      </footer>
    </>
  )
}

interface OneHole {
  readonly pack: CardPack
  readonly hole: HoleNow
  readonly me: Me
  readonly spare: boolean
  readonly conceded: boolean
}

function HoleLine({ pack, hole, me, spare, conceded }: OneHole) {
  const [open, setOpen] = useState(false)
  const working = hole.score === null ? null : workingOf(pack.reading, hole, hole.score)
  const value = hole.score === null ? null : holeValue(pack.reading, hole, hole.score)
  const isOut = hole.times === 0
  const none = isOut ? '·' : value === null ? '' : '–'
  const last = typeof value === 'number' ? lastFigure(pack.reading, value, hole.par) : none
  const differ = hole.written
    .map((each) => `${whoWrote(pack, each, me, hole.written)} ${figureOf(each.score)}`)
    .join(', ')
  return (
    <>
      <tr className={hole.differs ? 'differs' : hole.score === null && !spare ? 'waits' : undefined}>
        <th scope="row" className="lead-col fig">
          <a href={hashOf({ at: 'hole', hole: hole.hole })} aria-label={`Hole ${hole.hole}: go to it`}>
            {hole.hole}
          </a>
        </th>
        <td className="fig">{hole.par}</td>
        <td className="fig">{hole.strokeIndex}</td>
        <td>
          <Dots strokes={strokesIn(pack.reading, hole)} />
        </td>
        {hole.differs ? (
          <td colSpan={2} className="small">
            {differ}
          </td>
        ) : (
          <>
            <td className="fig gross">
              {hole.score === null && <span className="unseen">{spare ? 'no score needed' : 'to enter'}</span>}
              {hole.score === 'x' ? <span className="small">no score</span> : hole.score}
              {conceded && <span className="small"> conceded</span>}
              {hole.ruled && <span className="small"> ruled</span>}
            </td>
            <td className="fig c-opens">
              {working && (
                <button
                  type="button"
                  className="opens"
                  aria-expanded={open}
                  aria-label={`${isOut ? 'does not count' : last === '–' ? 'no score' : last}, hole ${hole.hole}: open the working`}
                  onClick={() => setOpen(!open)}
                >
                  {last}
                </button>
              )}
            </td>
          </>
        )}
      </tr>
      {open && working && (
        <tr className="working">
          <td colSpan={6} role="status">
            {working.sentence} <span className="clause">{working.clause}</span>
          </td>
        </tr>
      )}
    </>
  )
}

function lastFigure(reading: Reading, value: number, par: number): string {
  if (reading === 'par') return value > 0 ? '+' : value < 0 ? '−' : '0'
  return reading === 'gross' ? signed(value - par, '0') : String(value)
}

function SumLine({
  reading,
  word,
  holes,
  className,
}: {
  reading: Reading
  word: string
  holes: readonly HoleNow[]
  className: string
}) {
  const total = totalOf(reading, holes)
  return (
    <tr className={className}>
      <th scope="row" className="lead-col">
        {word}
      </th>
      <td className="fig">{holes.reduce((sum, hole) => sum + hole.par, 0)}</td>
      <td />
      <td />
      <td className="fig gross">{total.gross ?? '–'}</td>
      <td className="fig gross">{totalFigure(reading, total)}</td>
    </tr>
  )
}
