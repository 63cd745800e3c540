'use client'

import type { CardPack } from '@/lib/facts/card-pack'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { type CardNow, type HoleNow, writtenBy } from '@/lib/outbox/card-now'
import { figureOf } from './reading'
import { shortName } from './words'

interface Props {
  readonly pack: CardPack
  readonly card: CardNow
  readonly line: HoleNow
  readonly holder: string
  readonly onWrite: (score: Exclude<WrittenScore, null>, at: number) => void
}

/** Both scores with their writers, and one large answer for each. Pressing one writes it in the holder's own name. */
export function Differs({ pack, card, line, holder, onWrite }: Props) {
  const who = (writer: string) => (writer === holder ? 'you' : shortName(pack, writer))
  const inOrder = [...line.written].sort((a, b) => Number(a.writer === holder) - Number(b.writer === holder))
  const wrote = inOrder.map(({ writer, score }) => `${who(writer)} wrote ${figureOf(score)}`).join(', ')
  const sentence = wrote.charAt(0).toUpperCase() + wrote.slice(1)
  const mine = writtenBy(line, holder)
  const answers = [...new Set(line.written.map((each) => each.score))]
  const others = line.written.filter((each) => each.writer !== holder && each.score !== mine)
  const names = [...new Set(others.map((each) => who(each.writer)))].join(' and ')
  const asks = holder === card.card.entryId ? 'Think it over together.' : `Ask ${shortName(pack, card.card.entryId)}.`
  return (
    <div className="c-differs" role="alert">
      <p>
        <b>{sentence}.</b> {asks} The card can’t be signed until you agree.
      </p>
      <div className="c-answers">
        {answers.map((score) => (
          <button key={score} type="button" className="btn" onClick={(event) => onWrite(score, event.timeStamp)}>
            It was {figureOf(score)}
          </button>
        ))}
      </div>
      {mine !== null && (
        <p className="small">
          If yours is right, {names} must press “It was {figureOf(mine)}” on the other phone.
        </p>
      )}
    </div>
  )
}
