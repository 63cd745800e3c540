'use client'

import { useId, useState } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, Send } from '@/app/desk/_form/field'
import { StartsAgain } from '@/app/desk/_form/unsaved'
import type { CardReturn, ReturnHole, WrittenBy } from '@/lib/boards/returns-view'
import type { WrittenScore } from '@/lib/facts/score-fact'

const say = (score: WrittenScore) => (score === 'x' ? 'no score' : String(score ?? 'nothing'))

interface Props {
  readonly card: CardReturn
  readonly hole: ReturnHole
  /** When each writer wrote, by the society's clock. */
  readonly times: Readonly<Record<string, string>>
  readonly action: FormAction
  /** Only one button a page is filled. */
  readonly first: boolean
}

/** One hole on which two people differ: both figures stay with their writers, and the committee says which counts. */
export const NotAgreed = (props: Props) => (
  <StartsAgain>
    <HoleToRule {...props} />
  </StartsAgain>
)

function HoleToRule({ card, hole, times, action, first }: Props) {
  const figures = distinct(hole.written)
  const [chosen, setChosen] = useState<string | null>(null)
  const [other, setOther] = useState('')
  const group = useId()
  const value = chosen === 'other' ? other.trim() : (chosen ?? '')
  return (
    <div className="notice differs">
      <p className="sc">Hole {hole.hole}</p>
      <ul className="who-wrote">
        {hole.written.map((one) => (
          <li key={`${one.writer} ${one.receivedAt}`}>
            <b>{one.name}</b> wrote <b>{say(one.score)}</b> at {times[one.writer]}.
          </li>
        ))}
      </ul>
      <ActForm action={action} label={`Rule on hole ${hole.hole}`}>
        <input type="hidden" name="cardId" value={card.cardId} />
        <input type="hidden" name="kind" value="hole-score" />
        <input type="hidden" name="hole" value={hole.hole} />
        <input type="hidden" name="clause" value="Rules of Golf 3.3b" />
        <input type="hidden" name="value" value={value} />
        <div className="rule-form">
          <fieldset className="pair">
            <legend className="unseen">The committee rules on hole {hole.hole}</legend>
            {figures.map((one) => (
              <label key={String(one.score)} className="pickone">
                <input
                  type="radio"
                  name={group}
                  checked={chosen === String(one.score)}
                  onChange={() => setChosen(String(one.score))}
                />
                <span>
                  <b className="fig">{one.score === 'x' ? '–' : one.score}</b> {one.whose}
                </span>
              </label>
            ))}
            <label className="pickone">
              <input type="radio" name={group} checked={chosen === 'other'} onChange={() => setChosen('other')} />
              <span>another</span>
            </label>
          </fieldset>
          {chosen === 'other' ? (
            <Field
              name="other"
              label="Strokes"
              inputMode="numeric"
              maxLength={2}
              onChange={(event) => setOther(event.target.value)}
            />
          ) : null}
          <Field name="reason" label="Reason, kept with the card" required minLength={3} maxLength={400} />
          <Send kind={first ? 'first' : undefined} why={value === '' && 'choose the figure'}>
            {value === '' ? 'Rule it' : `Rule it ${value === 'x' ? 'no score' : value}`}
          </Send>
        </div>
        <p className="small">
          Ruled by the committee, with date and name. What counts no longer is kept beside it. Rules of Golf 3.3b
        </p>
      </ActForm>
    </div>
  )
}

function distinct(written: readonly WrittenBy[]): readonly { score: WrittenScore; whose: string }[] {
  const figures = new Map<WrittenScore, string[]>()
  for (const one of written) figures.set(one.score, [...(figures.get(one.score) ?? []), one.name])
  return [...figures].map(([score, names]) => ({ score, whose: names.join(', ') }))
}
