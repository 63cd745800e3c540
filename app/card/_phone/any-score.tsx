'use client'

import { useEffect, useId, useRef, useState } from 'react'
import type { CardPack } from '@/lib/facts/card-pack'
import type { WrittenScore } from '@/lib/facts/score-fact'
import type { CardNow, HoleNow } from '@/lib/outbox/card-now'
import { Dots } from './dots'
import { levelOn, strokesIn, worth } from './reading'

interface Props {
  readonly pack: CardPack
  readonly card: CardNow
  readonly line: HoleNow
  readonly onWrite: (score: WrittenScore) => void
  readonly onClose: () => void
}

const KEYS = Array.from({ length: 12 }, (_, index) => index + 1)
const MANY = Array.from({ length: 18 }, (_, index) => index + 13)

/** Every score there is, for the rare one outside the five. */
export function AnyScore({ pack, card, line, onWrite, onClose }: Props) {
  const dialog = useRef<HTMLDialogElement>(null)
  const title = useId()
  const [many, setMany] = useState(false)
  useEffect(() => dialog.current?.showModal(), [])
  const level = levelOn(pack.reading, line)

  return (
    <dialog className="c-pad" ref={dialog} aria-labelledby={title} onClose={onClose}>
      <p className="c-pad-name" id={title}>
        <b>{card.card.firstName}</b> {card.card.familyName} <Dots strokes={strokesIn(pack.reading, line)} />
        <span className="c-said">hole {line.hole}, any score</span>
      </p>
      <div className="c-keys">
        {(many ? MANY : KEYS).map((score) => (
          <button
            key={score}
            type="button"
            className={`c-key${score === level ? ' par' : ''}${line.score === score ? ' chosen' : ''}`}
            onClick={() => onWrite(score)}
          >
            <span className="fig trim">{score}</span>
            <span className="small">{worth(pack.reading, line, score)}</span>
          </button>
        ))}
        <button type="button" className="c-key wide" onClick={() => setMany(!many)}>
          {many ? '1 to 12' : '13 or more'}
        </button>
        <button type="button" className="c-key wide" onClick={() => onWrite('x')}>
          no score
        </button>
      </div>
      <div className="c-pad-acts">
        <button type="button" className="btn" onClick={onClose}>
          Back
        </button>
        <button type="button" className="btn" onClick={() => onWrite(null)}>
          Clear the score
        </button>
      </div>
    </dialog>
  )
}
