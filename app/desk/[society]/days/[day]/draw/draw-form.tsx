'use client'

import { type ReactNode, useState } from 'react'
import { Choices } from '@/app/_parts/choice'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Choice, Field, SelectField, Send } from '@/app/desk/_form/field'
import { StartsAgain } from '@/app/desk/_form/unsaved'

const WAYS = [
  { value: 'random', label: 'At random', hint: 'Every player has the same chance of every group.' },
  {
    value: 'by-handicap-mixed',
    label: 'Mixed by handicap',
    hint: 'A low and a high handicap in every group, and those between; a guest goes with the host.',
  },
  {
    value: 'by-handicap-banded',
    label: 'Grouped by handicap',
    hint: 'Like with like, lowest first, so that the course clears.',
  },
  { value: 'entry-order', label: 'In the order of entry', hint: 'First to enter, first to go.' },
] as const

interface Props {
  readonly action: FormAction
  readonly players: number
  readonly drawn: boolean
  /** Players in a group, as the formats of the day need it. */
  readonly proposed: 3 | 4
  /** For each size, what this number of players gives: with partners and opponents kept together, and as even as can be. */
  readonly given: readonly {
    readonly groupSize: 2 | 3 | 4
    readonly paired: readonly string[]
    readonly even: readonly string[]
  }[]
  readonly children: ReactNode
}

export const DrawForm = (props: Props) => (
  <StartsAgain>
    <DrawFields {...props} />
  </StartsAgain>
)

function DrawFields({ action, players, drawn, proposed, given, children }: Props) {
  const [size, setSize] = useState(String(proposed))
  const [sizes, setSizes] = useState<'paired' | 'even'>('paired')
  const chosen = given.find(({ groupSize }) => String(groupSize) === size)
  const differ = chosen !== undefined && chosen.paired.join() !== chosen.even.join()
  const gives = chosen?.[differ ? sizes : 'paired'] ?? []
  return (
    <ActForm action={action} label="Make the draw" className="draw-form">
      {children}
      <Choices question="How">
        {WAYS.map((way) => (
          <Choice
            key={way.value}
            type="radio"
            name="way"
            value={way.value}
            hint={way.hint}
            initial={way.value === 'random'}
          >
            {way.label}
          </Choice>
        ))}
      </Choices>
      <div className="fields">
        <SelectField
          name="groupSize"
          label="Groups of"
          value={size}
          onChange={setSize}
          options={[
            { value: '4', label: 'four' },
            { value: '3', label: 'three' },
            { value: '2', label: 'two' },
          ]}
        />
        <SelectField
          name="threes"
          label="Smaller groups go"
          initial="last"
          options={[
            { value: 'first', label: 'first' },
            { value: 'last', label: 'last' },
          ]}
        />
        <Field
          name="seed"
          label="Number of the draw"
          inputMode="numeric"
          hint="Empty: a new one by lot."
          maxLength={9}
        />
      </div>
      {differ ? (
        <Choices question={`${players} players do not divide by four`}>
          <Choice
            type="radio"
            name="sizes"
            value="paired"
            checked={sizes === 'paired'}
            onChange={() => setSizes('paired')}
            hint={chosen.paired.join(' ')}
          >
            Keep partners and opponents together
          </Choice>
          <Choice
            type="radio"
            name="sizes"
            value="even"
            checked={sizes === 'even'}
            onChange={() => setSizes('even')}
            hint={chosen.even.join(' ')}
          >
            Groups as even as they can be
          </Choice>
        </Choices>
      ) : gives.length > 0 ? (
        <p aria-live="polite">{gives.join(' ')}</p>
      ) : null}
      <p className="acts">
        <Send kind={drawn ? undefined : 'first'} why={players < 2 && 'two players are needed'}>
          {drawn ? `Draw all ${players} again` : `Draw ${players} players`}
        </Send>
      </p>
    </ActForm>
  )
}
