'use client'

import { useEffect, useRef, useState } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, SelectField, Send } from '@/app/desk/_form/field'
import { StartsAgain } from '@/app/desk/_form/unsaved'
import type { CardReturn } from '@/lib/boards/returns-view'
import { ChooseRuling } from './choose-ruling'
import type { Reading } from './reading'
import { fitsCard, KINDS_OF_RULING } from './ruling-kinds'

interface Props {
  readonly card: CardReturn
  readonly action: FormAction
  readonly kind: string | undefined
  readonly byChoice: FormAction
  readonly hasMatches: boolean
  readonly reading: Reading
}

/** First by what was wrong, with the answers of the Rules; then every ruling there is. The reason is never left out. */
export function RuleForm({ card, action, kind: asked, byChoice, hasMatches, reading }: Props) {
  const details = useRef<HTMLDetailsElement>(null)
  useEffect(() => {
    if (asked === undefined) return
    if (details.current) details.current.open = true
    details.current?.scrollIntoView({ block: 'start' })
  }, [asked])
  return (
    <details ref={details} id="rule" className="rule-all" open={asked !== undefined}>
      <summary>Rule on this card</summary>
      <ChooseRuling card={card} action={byChoice} hasMatches={hasMatches} reading={reading} />
      <h3>The committee’s own decision</h3>
      <StartsAgain key={asked}>
        <OwnDecision card={card} action={action} kind={asked} />
      </StartsAgain>
    </details>
  )
}

function OwnDecision({ card, action, kind: asked }: Pick<Props, 'card' | 'action' | 'kind'>) {
  const [kind, setKind] = useState(asked)
  const standing = card.rulings.filter((ruling) => ruling.replacedBy === null)
  const kinds = KINDS_OF_RULING.filter(
    (one) => fitsCard(one.kind, card.isSide) && (one.kind !== 'withdrawn-ruling' || standing.length > 0),
  )
  const chosen = kinds.find((one) => one.kind === kind)
  return (
    <ActForm action={action} label={`Rule on the card of ${card.name}`} clears>
      <input type="hidden" name="cardId" value={card.cardId} />
      <fieldset className="kinds">
        <legend>What is ruled</legend>
        {kinds.map((one) => (
          <label key={one.kind} className="choice">
            <input
              type="radio"
              name="kind"
              value={one.kind}
              checked={kind === one.kind}
              onChange={() => setKind(one.kind)}
              required
            />
            <span>
              <b>{one.label}.</b> {one.consequence}
            </span>
          </label>
        ))}
      </fieldset>
      {chosen ? (
        <div className="fields" key={chosen.kind}>
          {chosen.needs.includes('hole') ? (
            <SelectField
              name="hole"
              label="Hole"
              options={card.holes.map(({ hole, par }) => ({ value: String(hole), label: `${hole}, par ${par}` }))}
            />
          ) : null}
          {chosen.needs.includes('value') ? (
            <Field
              name="value"
              label={chosen.valueLabel}
              hint={chosen.valueHint}
              inputMode="numeric"
              pattern="[\-−]?\d{1,2}"
              required={chosen.kind !== 'hole-score'}
            />
          ) : null}
          {chosen.needs.includes('index') ? (
            <Field name="value" label={chosen.valueLabel} hint={chosen.valueHint} inputMode="decimal" required />
          ) : null}
          {chosen.needs.includes('replaces') ? (
            <SelectField
              name="replaces"
              label="Which ruling"
              options={standing.map((ruling) => ({
                value: String(ruling.number),
                label: `${ruling.number}: ${ruling.sentence}`,
              }))}
            />
          ) : null}
          <Field name="clause" label="Rule it rests on" initial={chosen.clause} maxLength={120} />
          <Field
            className="wide"
            name="reason"
            label="Reason, kept with the card"
            required
            minLength={3}
            maxLength={400}
          />
          <p className="acts">
            <Send kind={chosen.grave ? 'grave' : undefined}>
              {chosen.grave ? `Rule: ${chosen.label.toLowerCase()}` : 'Rule it'}
            </Send>
          </p>
        </div>
      ) : null}
    </ActForm>
  )
}
