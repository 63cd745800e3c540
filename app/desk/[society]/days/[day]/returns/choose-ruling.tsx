'use client'

import { useState } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, SelectField, Send } from '@/app/desk/_form/field'
import { StartsAgain } from '@/app/desk/_form/unsaved'
import type { CardReturn, ReturnHole } from '@/lib/boards/returns-view'
import { type CardFaultOffer, faultsOffered, SETTLED_IN_WORDS } from '@/lib/boards/ruling-acts'
import { worth } from './keyed-nine'
import type { Reading } from './reading'

interface Props {
  readonly card: CardReturn
  readonly action: FormAction
  readonly hasMatches: boolean
  readonly reading: Reading
}

/** What was wrong with the card, and the answers to it: the one of the Rules first, each with clause and consequence. */
export const ChooseRuling = (props: Props) => (
  <StartsAgain>
    <RulingByFault {...props} />
  </StartsAgain>
)

function RulingByFault({ card, action, hasMatches, reading }: Props) {
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
      {offer ? <Answers key={offer.fault} offer={offer} card={card} reading={reading} /> : null}
    </ActForm>
  )
}

const MEASURES = [
  { value: 'index', label: 'the handicap index' },
  { value: 'course', label: 'the course handicap' },
] as const

/** The right index, or the right course handicap: what each competition makes of it follows from its allowance. */
function RightHandicap({ isSide }: { readonly isSide: boolean }) {
  const [measure, setMeasure] = useState<'index' | 'course'>('index')
  if (isSide)
    return (
      <>
        <input type="hidden" name="measure" value="playing" />
        <Field name="value" label="Playing handicap of the side" inputMode="numeric" pattern="[\-−]?\d{1,2}" required />
      </>
    )
  return (
    <>
      <SelectField
        name="measure"
        label="What is known is"
        value={measure}
        onChange={(value) => setMeasure(value === 'course' ? 'course' : 'index')}
        options={MEASURES}
      />
      {measure === 'course' ? (
        <Field
          key="course"
          name="value"
          label="Course handicap that counts"
          inputMode="numeric"
          pattern="[\-−]?\d{1,2}"
          hint="Plus two is written -2."
          required
        />
      ) : (
        <Field
          key="index"
          name="value"
          label="Handicap index that counts"
          inputMode="decimal"
          hint="Write 12.6, or +2.1 for a plus handicap. Each competition is counted again by its own allowance."
          required
        />
      )}
    </>
  )
}

/** Which hole and how many strokes were made, with what the hole is worth either way. */
function NoEffect({
  card,
  reading,
  holes,
}: {
  readonly card: CardReturn
  readonly reading: Reading
  readonly holes: readonly { readonly value: string; readonly label: string }[]
}) {
  const [hole, setHole] = useState(holes[0]?.value ?? '')
  const [made, setMade] = useState('')
  const line = card.holes.find((one) => String(one.hole) === hole)
  const said = line && /^\d{1,2}$/.test(made) ? eitherWay(line, Number(made), reading) : null
  return (
    <>
      <SelectField name="hole" label="On hole" value={hole} onChange={setHole} options={holes} />
      <Field
        name="value"
        label="Strokes that were made"
        inputMode="numeric"
        maxLength={2}
        onChange={(event) => setMade(event.target.value.trim())}
        required
      />
      <p className="wide" role="status">
        {said}
      </p>
    </>
  )
}

function eitherWay(line: ReturnHole, made: number, reading: Reading): string {
  const [as, then] = [worth(line, line.score, reading), worth(line, made, reading)]
  const unit = reading === 'points' ? 'points' : reading === 'par' ? 'against par' : 'net'
  const what = `Hole ${line.hole}: ${line.score === 'x' ? 'no score' : (line.score ?? 'nothing')} on the card, ${made} made`
  return as === then
    ? `${what}: ${as ?? 0} ${unit} either way.`
    : `${what}: ${as ?? 0} or ${then ?? 0} ${unit}. The hole changes, so the card is disqualified.`
}

function Answers({ offer, card, reading }: { readonly offer: CardFaultOffer } & Pick<Props, 'card' | 'reading'>) {
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
        {needs('made') ? <NoEffect card={card} reading={reading} holes={holes} /> : null}
        {needs('hole') && !needs('made') ? <SelectField name="hole" label="On hole" options={holes} /> : null}
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
        {needs('handicap') ? <RightHandicap isSide={card.isSide} /> : null}
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
