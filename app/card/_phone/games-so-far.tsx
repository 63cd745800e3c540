'use client'

import type { CardPack } from '@/lib/facts/card-pack'
import { type CardNow, scoresIn } from '@/lib/outbox/card-now'
import { gameNow } from '@/lib/rules/score/game-now'
import { afterHoles, wonOnHole, wonSaid, worthOfHole } from './game-words'

interface Props {
  readonly games: CardPack['games']
  readonly cards: readonly CardNow[]
}

const standings = ({ games = [], cards }: Props) =>
  games.map((one) => ({ one, now: gameNow(one.game, scoresIn(cards)) }))

/** On the page of a hole: one line a game. */
export function GamesOnHole({ hole, ...props }: Props & { readonly hole: number }) {
  const several = (props.games?.length ?? 0) > 1
  return standings(props).map(({ one, now }) => {
    const worth = worthOfHole(one, now, hole)
    const won = wonOnHole(one, now, hole)
    if (worth === null) return null
    return (
      <p className="c-other" key={one.competition}>
        {several && `${one.competition}: `}
        <b>{worth}</b>
        {won && `. ${won}`}
      </p>
    )
  })
}

/** On the page of all cards: who has won how many. */
export function GamesSoFar(props: Props) {
  return standings(props).map(({ one, now }, at) => (
    <section key={one.competition} aria-labelledby={`game-${at}`}>
      <h2 className="sc" id={`game-${at}`}>
        {one.competition}, {afterHoles(now)}
      </h2>
      <ul className="c-games">
        {one.players.map(({ entryId, name }, ball) => (
          <li key={entryId}>
            {name}: <b>{wonSaid(now.won[ball] ?? 0, one.unit)}</b>
          </li>
        ))}
      </ul>
    </section>
  ))
}
