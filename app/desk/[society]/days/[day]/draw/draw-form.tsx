'use client'

import type { ReactNode } from 'react'
import { Choices } from '@/app/_parts/choice'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Choice, Field, SelectField, Send } from '@/app/desk/_form/field'

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
  readonly children: ReactNode
}

export function DrawForm({ action, players, drawn, children }: Props) {
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
          initial="4"
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
      <p className="acts">
        <Send kind={drawn ? undefined : 'first'} why={players < 2 && 'two players are needed'}>
          {drawn ? `Draw all ${players} again` : `Draw ${players} players`}
        </Send>
      </p>
    </ActForm>
  )
}
