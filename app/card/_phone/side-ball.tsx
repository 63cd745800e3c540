'use client'

// What is written beside the strokes of a side: whose drive was taken on this hole, and that the named ball was lost.

import { listed } from '@/lib/boards/in-words'
import type { PackBall } from '@/lib/facts/card-pack'
import type { EntryId } from '@/lib/facts/ids'
import { holesInPlay, roundOfPack } from '@/lib/outbox/card-now'
import type { GroupBook, GroupSnapshot } from '@/lib/outbox/group-book'
import { placeOfHole } from '@/lib/rules/hole-numbers'

interface Props {
  readonly now: GroupSnapshot
  readonly book: GroupBook
  readonly hole: number
  readonly refuse: (sentence: string | null) => void
}

/** Below the rows: whose drive was taken. */
export function SideBalls({ now, book, hole, refuse }: Props) {
  return now.balls
    .filter((ball) => ball.kind === 'drives')
    .map((ball) => <Drives key={ball.sideId} {...{ ball, now, book, hole, refuse }} />)
}

/** In the head of the hole, where it is seen before a score is written: who has the named ball, or where it was lost. */
export function NamedBalls({ now, book, hole, refuse }: Props) {
  return now.balls
    .filter((ball) => ball.kind === 'named-ball')
    .map((ball) => <NamedBall key={ball.sideId} {...{ ball, now, book, hole, refuse }} />)
}

type OneBall = Props & { readonly ball: PackBall }

const placeOn = ({ pack }: GroupSnapshot, hole: number) => (pack ? placeOfHole(roundOfPack(pack), hole) : 0)

const isShut = (now: GroupSnapshot, ball: PackBall) =>
  now.pack?.status === 'closed' || (now.cards.find((card) => card.card.cardId === ball.cardId)?.closed ?? true)

/** "Drives, 4 needed of each: Ada 3 taken, 1 to come; Ben 5 taken." */
export function drivesInWords({ players, drives, minimum }: PackBall): string {
  const each = players.map(({ entryId, name }) => {
    const taken = drives.filter((one) => one === entryId).length
    if (minimum === null) return `${name} ${taken}`
    return taken >= minimum ? `${name} ${taken} taken` : `${name} ${taken} taken, ${minimum - taken} to come`
  })
  if (minimum === null) return `Drives: ${each.join(', ')}.`
  return `Drives, ${minimum} needed of each: ${each.join('; ')}.`
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

/** Before anybody signs: what the side's drives still lack, by name and number; null where nothing does. */
export function drivesLacking({ players, drives, minimum }: PackBall): string | null {
  const short = players.flatMap(({ entryId, name }) => {
    const taken = drives.filter((one) => one === entryId).length
    return taken < (minimum ?? 0) ? [`${name} ${taken} of ${minimum}`] : []
  })
  return short.length === 0 ? null : `Too few drives are written: ${listed(short)}.`
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

/** In the order of play: a group that began on the 10th lost its ball on the 12th before it came to the 2nd. */
export function lostBefore({ lost }: Pick<PackBall, 'lost'>, order: readonly number[], hole: number): number | null {
  const [first] = lost
  return first !== undefined && order.indexOf(first) < order.indexOf(hole) ? first : null
}

/** After the loss the rota goes on: who is in turn on this hole, and what that score does. */
export function lossOnHole({ cost, inTurn }: Pick<PackBall, 'cost' | 'inTurn'>, name: string | undefined): string {
  return inTurn && name ? `${name} is in turn: that score ${inTurn}.` : (cost ?? '')
}

/** The named ball of every side here was lost by this hole. */
export function allBallsLost({ balls, pack }: GroupSnapshot, hole: number): boolean {
  const named = balls.filter((one) => one.kind === 'named-ball')
  if (!pack || named.length === 0) return false
  const order = holesInPlay(pack)
  return named.every((ball) => ball.lost.includes(hole) || lostBefore(ball, order, hole) !== null)
}

function NamedBall({ ball, now, book, hole, refuse }: OneBall) {
  if (!now.pack) return null
  const lostOn = lostBefore(ball, holesInPlay(now.pack), hole)
  const lostHere = ball.lost.includes(hole)
  const nameOn = (at: number) => whoHasTheBall(ball, placeOn(now, at))?.name
  async function write(lost: boolean) {
    const done = await book.writeBall({ kind: 'ball-lost', cardId: ball.cardId, sideId: ball.sideId, hole, lost })
    refuse(done.ok ? null : done.sentence)
  }
  const several = now.balls.filter((one) => one.kind === 'named-ball').length > 1
  // Where several competitions share the head, its line says already that the ball counts.
  const isSaid = (now.pack.counting?.length ?? 0) > 1
  const whose = several ? `${ball.name}: ` : ''
  if (lostOn !== null && !lostHere)
    return (
      <p className="c-other c-yellow">
        {whose}
        <b>Yellow ball lost on hole {lostOn}</b>, {nameOn(lostOn)} had it. {lossOnHole(ball, nameOn(hole))}
      </p>
    )
  return (
    <p className="c-other c-yellow">
      <span>
        {whose}
        <b>{nameOn(hole)} has the yellow ball</b>
        {lostHere ? `, lost here. ${ball.cost ?? ''}` : isSaid ? '' : ': that score must count.'}
      </span>
      <button
        type="button"
        className="btn plain"
        aria-pressed={lostHere}
        disabled={isShut(now, ball)}
        onClick={() => void write(!lostHere)}
      >
        {lostHere ? 'Not lost' : 'Lost on this hole'}
      </button>
    </p>
  )
}
