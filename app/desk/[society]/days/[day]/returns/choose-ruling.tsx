'use client'

import { useState } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, SelectField, Send } from '@/app/desk/_form/field'
import type { CardReturn } from '@/lib/boards/returns-view'
import { type CardFaultOffer, faultsOffered, SETTLED_IN_WORDS } from '@/lib/boards/ruling-acts'

interface Props {
  readonly card: CardReturn
  readonly action: FormAction
  readonly hasMatches: boolean
}

/** What was wrong with the card, and the answers to it: the one of the Rules first, each with clause and consequence. */
export function ChooseRuling({ card, action, hasMatches }: Props) {
  const offers = faultsOffered(hasMatches)
  const [fault, setFault] = useState('')
  const offer = offers.find((one) => one.fault === fault)
  return (
    <ActForm action={action} label={`Rule on the card of ${card.name} by choice`} clears>
      <input type="hidden" name="cardId" value={card.cardId} />
      <div className="fields">
        <SelectField
          name="fault"
          label="What was wrong with the card"
          value={fault}
          onChange={setFault}
          hint={offer?.sentence ?? SETTLED_IN_WORDS}
          options={[{ value: '', label: 'Choose' }, ...offers.map((one) => ({ value: one.fault, label: one.name }))]}
        />
      </div>
      {offer ? <Answers key={offer.fault} offer={offer} card={card} /> : null}
    </ActForm>
  )
}

function Answers({ offer, card }: { readonly offer: CardFaultOffer; readonly card: CardReturn }) {
  const usual = offer.choices.find((one) => one.isDefault) ?? offer.choices[0]
  const [id, setId] = useState(usual?.id)
  const choice = offer.choices.find((one) => one.id === id)
  if (!choice) return null
  const grave = choice.consequence.kind === 'disqualified' || choice.consequence.kind === 'no-return'
  const needs = (what: (typeof choice.needs)[number]) => choice.needs.includes(what)
  const writers = new Map(card.holes.flatMap((hole) => hole.written).map((one) => [one.writer, one.name]))
  const holes = card.holes.map(({ hole, par }) => ({ value: String(hole), label: `${hole}, par ${par}` }))
  return (
    <>
      <fieldset className="kinds">
        <legend>What follows</legend>
        {offer.choices.map((one) => (
          <label key={one.id} className="choice">
            <input
              type="radio"
              name="choice"
              value={one.id}
              checked={one.id === id}
              onChange={() => setId(one.id)}
              required
            />
            <span>
              <b>{one.name}.</b> {one.sentence}{' '}
              <span className="second">
                {one.clause}
                {one.isDefault ? ', the answer of the Rules' : ''}
              </span>
            </span>
          </label>
        ))}
      </fieldset>
      <div className="fields" key={choice.id}>
        {needs('hole') ? <SelectField name="hole" label="On hole" options={holes} /> : null}
        {needs('first-hole') ? (
          <SelectField name="hole" label="The player began with hole" options={holes} initial={holes[1]?.value} />
        ) : null}
        {needs('strokes') ? (
          <Field
            name="value"
            label="Penalty strokes left out"
            type="number"
            min={1}
            max={20}
            initial={choice.consequence.kind === 'penalty-strokes' ? choice.consequence.strokes : 2}
            required
          />
        ) : null}
        {needs('handicap') ? (
          <Field
            name="value"
            label="Playing handicap that counts"
            inputMode="numeric"
            pattern="[-−]?\d{1,2}"
            initial={card.playingHandicap}
            hint="Plus two is written -2."
            required
          />
        ) : null}
        {needs('writer') ? (
          <SelectField
            name="writer"
            label="Which version counts"
            options={[...writers].map(([value, label]) => ({ value, label: `As ${label} wrote it` }))}
          />
        ) : null}
        <Field
          className="wide"
          name="reason"
          label="Reason, kept with the card"
          required
          minLength={3}
          maxLength={360}
        />
        <p className="acts">
          <Send kind={grave ? 'grave' : undefined}>{grave ? `Rule: ${choice.name.toLowerCase()}` : 'Rule it'}</Send>
        </p>
      </div>
    </>
  )
}
