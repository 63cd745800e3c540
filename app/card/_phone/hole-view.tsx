'use client'

import { useEffect, useRef, useState } from 'react'
import type { CardPack } from '@/lib/facts/card-pack'
import type { CardId } from '@/lib/facts/ids'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { type CardNow, holesInPlay } from '@/lib/outbox/card-now'
import type { GroupBook, GroupSnapshot } from '@/lib/outbox/group-book'
import { AnyScore } from './any-score'
import { AskNoScore } from './ask-no-score'
import { Concessions } from './concede'
import { CountsHere } from './counts-here'
import { GamesOnHole } from './games-so-far'
import { changedSince, HoleFoot } from './hole-foot'
import { HoleHead } from './hole-head'
import { MatchesOnHole } from './matches-so-far'
import { headingsOf, noScoreEndsTheCard } from './reading'
import { ScoreRow } from './score-row'
import { NamedBalls, SideBalls } from './side-ball'
import { signatureOffOnHole, signaturesOffInWords } from './signature-off'
import type { Place } from './use-place'
import { shortName } from './words'

interface Props {
  readonly pack: CardPack
  readonly now: GroupSnapshot
  readonly book: GroupBook
  readonly hole: number
  /** Why the card opened on this hole, where the group has gone past it. */
  readonly why: string | null
  readonly go: (place: Place) => void
  readonly refuse: (sentence: string | null) => void
}

// Wet glass sends a touch twice.
const DOUBLE_TOUCH_MS = 250
// Rows fold or unfold when a difference comes or goes; a thumb already on its way would hit another row.
const MOVED_MS = 500
const SAVED_MS = 25

/** A saved score is felt, through gloves and in the rain, on phones that can; the others stay still. */
const feel = () => navigator.vibrate?.(SAVED_MS)

export function HoleView({ pack, now, book, hole, why, go, refuse }: Props) {
  const [padFor, setPadFor] = useState<string | null>(null)
  const [asking, setAsking] = useState<CardNow | null>(null)
  const [saidAgain, setSaidAgain] = useState<string | null>(null)
  const [says, setSays] = useState<string | null>(null)
  const [opened, setOpened] = useState<string | null>(null)
  const touched = useRef(new Map<string, number>())
  const firstHole = useRef(hole)
  const moved = firstHole.current !== hole
  const times = now.cards[0]?.holes.find((each) => each.hole === hole)?.times
  const { columns, unit } = headingsOf(pack, times)

  const differ = now.cards.filter((card) => card.notAgreed.includes(hole))
  const differing = differ.length
  // One question at a time; pressing another name opens its own.
  const question = differ.find((card) => card.card.cardId === opened) ?? differ[0]
  const off = signatureOffOnHole(pack, now.cards, hole)
  const shifted = useRef({ differing, hole, at: Number.NEGATIVE_INFINITY })
  useEffect(() => {
    if (shifted.current.differing !== differing && shifted.current.hole === hole) shifted.current.at = performance.now()
    shifted.current = { differing, hole, at: shifted.current.at }
  }, [differing, hole])

  async function write(cardId: CardId, score: WrittenScore) {
    const done = await book.write(cardId, hole, score)
    refuse(done.ok ? null : done.sentence)
    if (done.ok && done.value !== 'stands') feel()
    // No button does nothing: whoever says again what stands here hears who has to answer.
    setSaidAgain(done.ok && done.value === 'stands' ? `${cardId} ${hole}` : null)
    setSays(null)
  }

  const endsTheCard = (card: CardNow) =>
    noScoreEndsTheCard(
      pack.reading,
      card.holes.find((each) => each.hole === hole),
    )

  function press(card: CardNow, score: Exclude<WrittenScore, null>, at: number) {
    const { cardId } = card.card
    const last = touched.current.get(cardId) ?? Number.NEGATIVE_INFINITY
    if (at - last < DOUBLE_TOUCH_MS || at - shifted.current.at < MOVED_MS) return
    touched.current.set(cardId, at)
    if (score === 'x' && endsTheCard(card)) setAsking(card)
    else void write(cardId, score)
  }

  const padCard = now.cards.find((card) => card.card.cardId === padFor)
  const padLine = padCard?.holes.find((each) => each.hole === hole)

  return (
    <>
      <header className="c-head">
        <HoleHead pack={pack} hole={hole} hasMoved={moved} />
        <CountsHere pack={pack} now={now} hole={hole} />
        <NamedBalls now={now} book={book} hole={hole} refuse={refuse} />
        <GamesOnHole games={pack.games} cards={now.cards} hole={hole} />
        <MatchesOnHole
          matches={now.matches}
          cards={now.cards}
          hole={hole}
          nameOf={(entryId) => shortName(pack, entryId)}
        />
      </header>
      <p className="unseen" aria-live="polite">
        {off && now.cards.flatMap((card) => signaturesOffInWords(pack, card)).join(' ')}
      </p>
      <hr className="fold" />
      <form className="c-scores" onSubmit={(event) => event.preventDefault()}>
        <div className="c-six c-worth" aria-hidden="true">
          {columns.map((column, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the five columns never change places
            <span className="fig" key={index}>
              {column}
            </span>
          ))}
          <span className="unit">{unit}</span>
        </div>
        {now.cards.map((card) => {
          const line = card.holes.find((each) => each.hole === hole)
          return line ? (
            <ScoreRow
              key={card.card.cardId}
              pack={pack}
              card={card}
              line={line}
              me={now.me}
              waiting={saidAgain === `${card.card.cardId} ${hole}`}
              folded={question !== undefined && question !== card}
              onWrite={(score, at) => press(card, score, at)}
              onPad={() => (line.differs && question !== card ? setOpened : setPadFor)(card.card.cardId)}
            />
          ) : null
        })}
        <SideBalls now={now} book={book} hole={hole} refuse={refuse} />
        <Concessions now={now} book={book} hole={hole} refuse={refuse} />
      </form>
      <HoleFoot
        pack={pack}
        now={now}
        hole={hole}
        order={holesInPlay(pack)}
        go={go}
        says={says ?? off ?? (now.waitingScores > 0 ? null : why)}
        onUndo={async () => {
          setSays(now.undo ? changedSince(pack, now.undo) : null)
          const undone = await book.undo()
          refuse(undone.ok ? null : undone.sentence)
          if (undone.ok && undone.value?.fact.kind === 'score') go({ at: 'hole', hole: undone.value.fact.hole })
        }}
      />
      {padCard && padLine && (
        <AnyScore
          pack={pack}
          card={padCard}
          line={padLine}
          onClose={() => setPadFor(null)}
          onWrite={(score) => {
            setPadFor(null)
            if (score === 'x' && endsTheCard(padCard)) setAsking(padCard)
            else void write(padCard.card.cardId, score)
          }}
        />
      )}
      {asking && (
        <AskNoScore
          firstName={asking.card.firstName}
          hole={hole}
          onClose={() => setAsking(null)}
          onYes={() => {
            setAsking(null)
            void write(asking.card.cardId, 'x')
          }}
        />
      )}
    </>
  )
}
