'use client'

import type { CardPack } from '@/lib/facts/card-pack'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { type CardNow, type HoleNow, isOwn, writtenBy } from '@/lib/outbox/card-now'
import type { Me } from '@/lib/outbox/holding'
import { figureOf } from './reading'
import { shortName, whoWrote } from './words'

interface Props {
  readonly pack: CardPack
  readonly card: CardNow
  readonly line: HoleNow
  readonly me: Me
  /** The holder has answered with the score that stands here already: now the other one must. */
  readonly waiting: boolean
  readonly onWrite: (score: Exclude<WrittenScore, null>, at: number) => void
}

const named = (names: readonly string[]) =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`

/** Both scores with their writers, and one large answer for each. Pressing one writes it in the holder's own name. */
export function Differs({ pack, card, line, me, waiting, onWrite }: Props) {
  const inOrder = [...line.written].sort((a, b) => Number(isOwn(a, me)) - Number(isOwn(b, me)))
  const wrote = inOrder.map((one) => `${whoWrote(pack, one, me, line.written)} wrote ${figureOf(one.score)}`).join(', ')
  const sentence = wrote.charAt(0).toUpperCase() + wrote.slice(1)
  const mine = writtenBy(line, me)
  const answers = [...new Set(line.written.map((each) => each.score))]
  const others = line.written.filter((each) => !isOwn(each, me) && each.score !== mine)
  const names = named([...new Set(others.map((each) => whoWrote(pack, each, me, line.written)))])
  const asks =
    me.holder === card.card.entryId ? 'Think it over together.' : `Ask ${shortName(pack, card.card.entryId)}.`
  return (
    <div className="c-differs">
      <p role="alert">
        <b>{sentence}.</b> {asks} The card can’t be signed until you agree.
      </p>
      <div className="c-answers">
        {answers.map((score) => (
          <button key={score} type="button" className="btn" onClick={(event) => onWrite(score, event.timeStamp)}>
            {score === 'x' ? 'Yes, no score' : `Yes, it was ${score}`}
          </button>
        ))}
      </div>
      {mine !== null && (
        <p className="small" role="status">
          {waiting
            ? `You say ${figureOf(mine)}. Waiting for ${names}.`
            : `If ${figureOf(mine)} is right, ${names} must answer so too.`}
        </p>
      )}
    </div>
  )
}
