'use client'

import { Notice } from '@/app/_parts/notice'
import { Field, SelectField } from '@/app/desk/_form/field'
import { contradictions } from '@/lib/facts/format-choices'
import { whyNotYet } from '@/lib/facts/formats-offered'
import { formatFrom } from '@/lib/rules/formats/format'
import { knownAs, readBack } from '@/lib/rules/formats/read-back'
import { choicesOf, FIVE, LABELS, type OwnFormat, optionsFor } from './own-format'

interface Props {
  readonly at: string
  readonly own: OwnFormat
  readonly allowance: number | readonly number[] | null
  readonly onChange: (own: OwnFormat) => void
}

/** Five choices, read back as one sentence while they are made, with what is wrong with them. */
export function OwnFormatFields({ at, own, allowance, onChange }: Props) {
  return (
    <>
      <div className="fields">
        <Field
          name={`${at}.format`}
          label="What you call it"
          value={own.name}
          onChange={(event) => onChange({ ...own, name: event.target.value })}
          required
          maxLength={60}
        />
        {FIVE.map((choice) => (
          <SelectField
            key={choice}
            name={`${at}.terms.custom.${choice}`}
            label={LABELS[choice]}
            value={own.chosen[choice]}
            onChange={(id) => onChange({ ...own, chosen: { ...own.chosen, [choice]: id } })}
            options={optionsFor(choice, own)}
          />
        ))}
      </div>
      <input type="hidden" name={`${at}.terms.custom.before`} value={JSON.stringify(own.before)} />
      <ReadBack own={own} allowance={allowance} />
    </>
  )
}

function ReadBack({ own, allowance }: Pick<Props, 'own' | 'allowance'>) {
  const choices = choicesOf(own)
  if (choices === null) return null
  const wrong = wrongWith(choices)
  const known = knownAs(choices)
  return (
    <div aria-live="polite">
      {wrong.length > 0 ? (
        <Notice kind="differs" word="These do not go together">
          {wrong.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </Notice>
      ) : (
        <p>
          {readBack(choices, allowance ?? undefined)}
          {known ? ` That is ${known.name} under another name.` : ''}
        </p>
      )}
    </div>
  )
}

function wrongWith(choices: NonNullable<ReturnType<typeof choicesOf>>): readonly string[] {
  const against = contradictions(choices).map((one) => one.sentence)
  if (against.length > 0) return against
  const notYet = whyNotYet(
    formatFrom({
      ...choices,
      id: '',
      name: '',
      sentence: '',
      family: 'singles',
      allowance: { house: 100, why: '' },
      clause: '',
    }),
  )
  return notYet === null ? [] : [notYet]
}
