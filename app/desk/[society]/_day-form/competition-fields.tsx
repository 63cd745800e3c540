'use client'

import { Choice, Field, SelectField } from '@/app/desk/_form/field'
import { FORMATS, formatOf, proposedAllowance } from '@/lib/rules/formats/catalogue'
import { type CompetitionDraft, newPrize, withFormat } from './drafts'
import { PrizeFields } from './prize-fields'
import { isPublished, readAllowance } from './read-day-form'
import { KEPT_AS_IT_IS, TIE_CHOICES, tieChoiceOf } from './tie-rules'

interface Props {
  readonly draft: CompetitionDraft
  readonly place: number
  readonly expected: number
  readonly edition: string
  readonly only: boolean
  readonly onChange: (draft: CompetitionDraft) => void
  readonly onLeaveOut: () => void
}

const FAMILIES = ['singles', 'pairs', 'teams', 'matches', 'group games'] as const

/** One competition on the day's cards: its format, its allowance with where it comes from, its ties and its prizes. */
export function CompetitionFields({ draft, place, expected, edition, only, onChange, onLeaveOut }: Props) {
  const at = `competitions[${place}]`
  const format = formatOf(draft.format)
  const proposed = proposedAllowance(draft.format, expected, edition)
  const same = isPublished(draft.format, readAllowance(draft.allowance), edition)
  const kept = tieChoiceOf(draft.ties)
  return (
    <fieldset className="competition">
      <legend>
        <span className="sc second">Competition {place + 1}</span>
      </legend>
      <div className="fields">
        <Field
          name={`${at}.name`}
          label="Name or trophy"
          value={draft.name}
          onChange={(event) => onChange({ ...draft, name: event.target.value })}
          required
          maxLength={80}
        />
        <FormatSelect
          name={`${at}.format`}
          draft={draft}
          onChange={(id) => onChange(withFormat(draft, id, expected, edition))}
        />
        <Field
          name={`${at}.terms.allowance`}
          label="Handicap allowance, %"
          value={draft.allowance}
          inputMode="numeric"
          hint={`${proposed.sentence} ${proposed.from === 'published' ? `${proposed.clause}.` : ''}`}
          onChange={(event) => onChange({ ...draft, allowance: event.target.value, ownFigure: true })}
        />
        {same ? null : (
          <Field
            name={`${at}.terms.allowanceReason`}
            label="House choice, because"
            initial={draft.reason}
            hint="Shown on the start sheet and on the result."
            maxLength={200}
          />
        )}
        {format?.value.kind === 'maximum' ? (
          <SelectField
            name={`${at}.terms.maximum`}
            label="Most strokes on a hole"
            initial={draft.maximum?.kind ?? 'net-double-bogey'}
            options={[
              { value: 'net-double-bogey', label: 'Net double bogey' },
              { value: 'double-par', label: 'Double par' },
              { value: 'fixed', label: 'Ten strokes' },
            ]}
          />
        ) : null}
        <SelectField
          name={`${at}.ties`}
          label="Ties"
          initial={kept}
          hint={kept === 'countback' ? 'Committee Procedures 5A(6)' : undefined}
          options={[
            ...TIE_CHOICES.map((one) => ({ value: one.id, label: one.label })),
            ...(kept === KEPT_AS_IT_IS ? [{ value: KEPT_AS_IT_IS, label: 'As it was on the day before' }] : []),
          ]}
        />
        {kept === KEPT_AS_IT_IS ? (
          <input type="hidden" name={`${at}.ties.kept`} value={JSON.stringify(draft.ties)} />
        ) : null}
        <SelectField
          name={`${at}.ties.holesCount`}
          label="Which holes are the last nine"
          initial={draft.ties.holesCount}
          options={[
            { value: 'by-number', label: 'Holes 10 to 18, wherever a group began' },
            { value: 'as-played', label: 'The last nine as each group played them' },
          ]}
        />
      </div>
      {format ? <p className="small second">{format.sentence}</p> : null}
      <PrizeFields
        at={at}
        prizes={draft.prizes}
        onChange={(prizes) => onChange({ ...draft, prizes })}
        onAdd={() => onChange({ ...draft, prizes: [...draft.prizes, newPrize(draft.prizes.length + 1)] })}
      />
      <Choice type="checkbox" name={`${at}.guestPrizes`} initial={draft.guestPrizes}>
        Guests may win every prize of this competition
      </Choice>
      {only ? null : (
        <p className="acts">
          <button type="button" className="btn plain" onClick={onLeaveOut}>
            Leave {draft.name || 'this competition'} out
          </button>
        </p>
      )}
    </fieldset>
  )
}

function FormatSelect({
  name,
  draft,
  onChange,
}: {
  readonly name: string
  readonly draft: CompetitionDraft
  readonly onChange: (id: string) => void
}) {
  return (
    <div className="field">
      <label htmlFor={name}>Format</label>
      <select id={name} name={name} value={draft.format} onChange={(event) => onChange(event.target.value)}>
        {FAMILIES.map((family) => {
          const formats = FORMATS.filter((one) => one.family === family)
          return formats.length === 0 ? null : (
            <optgroup key={family} label={family.charAt(0).toUpperCase() + family.slice(1)}>
              {formats.map((one) => (
                <option key={one.id} value={one.id}>
                  {one.name}
                </option>
              ))}
            </optgroup>
          )
        })}
      </select>
    </div>
  )
}
