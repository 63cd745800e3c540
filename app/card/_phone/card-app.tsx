'use client'

import { useState } from 'react'
import { clockInWords } from '@/lib/boards/dates-in-words'
import { holesInPlay } from '@/lib/outbox/card-now'
import type { GroupSnapshot } from '@/lib/outbox/group-book'
import { askToKeep } from '@/lib/outbox/on-this-phone'
import { GroupSheet } from './group-sheet'
import { HoleView } from './hole-view'
import { NoPackYet } from './no-pack-yet'
import { Notices } from './notices'
import { PlayStopped } from './play-stopped'
import { TwoPhones } from './two-phones'
import { useGroup } from './use-group'
import { KeptPage, useKeptPage } from './use-kept-page'
import { useNewBuild } from './use-new-build'
import { hashOf, usePlace } from './use-place'
import { WhoHolds } from './who-holds'
import { WholeCard } from './whole-card'
import { playersIn, shortName } from './words'

export function CardApp({ link }: { link: string }) {
  const { book, now } = useGroup(link)
  const [place, go] = usePlace()
  const pageKept = useKeptPage()
  // The page and what stands on it: one without the other opens nothing.
  const kept = pageKept === 'kept' && now?.packKept === false ? 'cannot' : pageKept
  useNewBuild(now?.pack?.app, now?.inPageOnly === 0)
  const [refusal, refuse] = useState<string | null>(null)
  const [reading, setReading] = useState(false)
  const [openedOn, setOpenedOn] = useState<number | null>(null)

  const pack = now?.pack
  if (!book || !now || !pack) return <NoPackYet now={now} retry={() => book?.refresh()} />

  const holder = playersIn(pack).some((each) => each.entryId === now.holder) ? now.holder : null
  const order = holesInPlay(pack)
  // Where it opened it stays: the last score of a hole must not turn the page under somebody's thumb.
  if (openedOn === null) setOpenedOn(firstOpen(now, order))
  const hole = place.at === 'hole' && order.includes(place.hole) ? place.hole : openedOn
  const card = place.at === 'card' ? now.cards.find((each) => each.card.entryId === place.entryId) : undefined
  const notices = (
    <>
      <PlayStopped now={now} book={book} reading={reading} setReading={setReading} />
      <Notices now={now} book={book} refusal={refusal} canKeepPage={kept !== 'cannot'} />
      {holder && place.at !== 'phone' && <TwoPhones pack={pack} now={now} book={book} holder={holder} />}
    </>
  )
  const change = (sentence: string | null) => refuse(sentence)

  if (!holder || place.at === 'phone') {
    return (
      <KeptPage value={kept}>
        <RunningLine now={now} toCards={holder !== null} />
        {notices}
        <WhoHolds
          pack={pack}
          me={now.me}
          holder={holder}
          onHold={(entryId) => {
            void book.hold(entryId)
            void askToKeep()
            go({ at: 'hole', hole: hole ?? firstOpen(now, order) })
          }}
        />
      </KeptPage>
    )
  }
  return (
    <KeptPage value={kept}>
      <RunningLine now={now} toCards={place.at !== 'cards'} />
      {notices}
      {place.at === 'cards' ? (
        <GroupSheet pack={pack} now={now} holder={holder} />
      ) : card ? (
        <WholeCard
          key={card.card.cardId}
          pack={pack}
          now={now}
          book={book}
          card={card}
          holder={holder}
          refuse={change}
        />
      ) : (
        <HoleView
          pack={pack}
          now={now}
          book={book}
          hole={hole ?? firstOpen(now, order)}
          why={hole !== null && hole === openedOn ? whyHere(now, order, hole) : null}
          go={go}
          refuse={change}
        />
      )}
    </KeptPage>
  )
}

/** The hole to open on: the first in playing order that still lacks something. */
function firstOpen(now: GroupSnapshot, order: readonly number[]): number {
  const lacking = (hole: number) =>
    now.cards.some((card) => !card.closed && (card.missing.includes(hole) || card.notAgreed.includes(hole)))
  // Nothing lacks: the last hole that was played, which a match may have ended on.
  return order.find(lacking) ?? order.findLast((hole) => hasScore(now, hole)) ?? order.at(-1) ?? 1
}

const hasScore = (now: GroupSnapshot, hole: number) =>
  now.cards.some((card) => card.holes.some((line) => line.hole === hole && line.written.length > 0))

/** Why it opens on a hole the group has gone past; null on the hole that is simply next. */
function whyHere(now: GroupSnapshot, order: readonly number[], hole: number): string | null {
  const isPast = order.slice(order.indexOf(hole) + 1).some((later) => hasScore(now, later))
  if (!isPast) return null
  const open = now.cards.filter((card) => !card.closed)
  if (open.some((card) => card.notAgreed.includes(hole))) return `Hole ${hole} first: two different scores`
  const [one, ...more] = open.filter((card) => card.missing.includes(hole))
  if (!one || !now.pack) return null
  return more.length > 0
    ? `Hole ${hole} first: ${more.length + 1} scores missing`
    : `Hole ${hole} first: ${shortName(now.pack, one.card.entryId)} has no score`
}

/** One head for every page of the card: the day, the group, and the way to the cards. */
function RunningLine({ now, toCards }: { now: GroupSnapshot; toCards: boolean }) {
  const { pack } = now
  if (!pack) return null
  return (
    <div className="c-run">
      <p className="sc">
        <span className="item">{pack.dayName}</span>
        <span className="item second">
          Group {pack.group.number}
          {!toCards && ` · ${clockInWords(pack.group.startTime)}`}
          {pack.group.startsAt && ` · from ${pack.group.startsAt}`}
        </span>
      </p>
      {toCards && <a href={hashOf({ at: 'cards' })}>All cards</a>}
    </div>
  )
}
