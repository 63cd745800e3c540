'use client'

// What is written beside the strokes of a side: whose drive was taken on this hole, or that the named ball was lost.

import type { PackBall } from '@/lib/facts/card-pack'
import type { EntryId } from '@/lib/facts/ids'
import { roundOfPack } from '@/lib/outbox/card-now'
import type { GroupBook, GroupSnapshot } from '@/lib/outbox/group-book'
import { placeOfHole } from '@/lib/rules/hole-numbers'

interface Props {
  readonly now: GroupSnapshot
  readonly book: GroupBook
  readonly hole: number
  readonly refuse: (sentence: string | null) => void
}

export function SideBalls({ now, book, hole, refuse }: Props) {
  return (
    <>
      {now.balls.map((ball) =>
        ball.kind === 'drives' ? (
          <Drives key={ball.sideId} {...{ ball, now, book, hole, refuse }} />
        ) : (
          <NamedBall key={ball.sideId} {...{ ball, now, book, hole, refuse }} />
        ),
      )}
    </>
  )
}

type OneBall = Props & { readonly ball: PackBall }

const placeOn = ({ pack }: GroupSnapshot, hole: number) => (pack ? placeOfHole(roundOfPack(pack), hole) : 0)

const isShut = (now: GroupSnapshot, ball: PackBall) =>
  now.pack?.status === 'closed' || (now.cards.find((card) => card.card.cardId === ball.cardId)?.closed ?? true)

/** "Drives: Ada 3 of 4, Ben 4 of 4." */
export function drivesInWords({ players, drives, minimum }: PackBall): string {
  const each = players.map(({ entryId, name }) => {
    const taken = drives.filter((one) => one === entryId).length
    return minimum === null ? `${name} ${taken}` : `${name} ${taken} of ${minimum}`
  })
  return `Drives: ${each.join(', ')}.`
}

/** More drives are wanted than there are holes left to take them on. */
export function drivesOutOfReach({ players, drives, minimum }: PackBall): boolean {
  const known = new Set(players.map((one) => one.entryId))
  const open = drives.filter((one) => one === null || !known.has(one)).length
  const wanted = players.reduce((sum, { entryId }) => {
    return sum + Math.max(0, (minimum ?? 0) - drives.filter((one) => one === entryId).length)
  }, 0)
  return wanted > open
}

function Drives({ ball, now, book, hole, refuse }: OneBall) {
  const taken = ball.drives[placeOn(now, hole)] ?? null
  async function write(entryId: EntryId | null) {
    const done = await book.writeBall({ kind: 'drive', cardId: ball.cardId, sideId: ball.sideId, hole, entryId })
    refuse(done.ok ? null : done.sentence)
  }
  return (
    <fieldset className="c-ball" disabled={isShut(now, ball)}>
      <legend className="sc">Whose drive on this hole?</legend>
      <div className="c-ball-picks">
        {ball.players.map(({ entryId, name }) => (
          <label key={entryId} className="c-ball-pick">
            <input
              type="radio"
              name={`drive-${ball.sideId}-${hole}`}
              checked={taken === entryId}
              onChange={() => void write(entryId)}
            />
            <span>{name}</span>
          </label>
        ))}
        {taken !== null && (
          <button type="button" className="btn plain" onClick={() => void write(null)}>
            Clear
          </button>
        )}
      </div>
      <p className={drivesOutOfReach(ball) ? 'c-ball-said differs' : 'c-ball-said'} role="status">
        {drivesInWords(ball)}
        {drivesOutOfReach(ball) ? ' The minimum cannot be reached any more.' : ''}
      </p>
    </fieldset>
  )
}

/** In the side's order from the first hole of the card, at place 0: the engine's rota. */
export function whoHasTheBall({ players }: PackBall, place: number): PackBall['players'][number] | null {
  return players.length === 0 ? null : players[place % players.length]!
}

function NamedBall({ ball, now, book, hole, refuse }: OneBall) {
  const holder = whoHasTheBall(ball, placeOn(now, hole))
  const lostOn = ball.lost[0] ?? null
  const lostHere = ball.lost.includes(hole)
  async function write(lost: boolean) {
    const done = await book.writeBall({ kind: 'ball-lost', cardId: ball.cardId, sideId: ball.sideId, hole, lost })
    refuse(done.ok ? null : done.sentence)
  }
  return (
    <fieldset className="c-ball" disabled={isShut(now, ball)}>
      <legend className="sc">The yellow ball of {ball.name}</legend>
      <p className="c-ball-said">
        {lostOn !== null && lostOn < hole
          ? `Lost on hole ${lostOn}.`
          : holder
            ? `${holder.name} has it on this hole: that score must count.`
            : ''}
      </p>
      {lostOn === null || lostOn >= hole || lostHere ? (
        <label className="c-ball-pick">
          <input type="checkbox" checked={lostHere} onChange={(event) => void write(event.target.checked)} />
          <span>Lost on this hole</span>
        </label>
      ) : null}
    </fieldset>
  )
}
