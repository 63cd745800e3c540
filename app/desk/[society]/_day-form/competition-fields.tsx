'use client'

import { Notice } from '@/app/_parts/notice'
import { Choice, Field, SelectField } from '@/app/desk/_form/field'
import { isPublishedFor, proposedFor } from '@/lib/boards/format-of-competition'
import { prizesNobodyWins } from '@/lib/boards/prizes-nobody-wins'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { ballValueOf } from '@/lib/rules/formats/format'
import { formatOfCompetition } from '@/lib/rules/score/terms-in-force'
import { type CompetitionDraft, newPrize, playOf, withFormat, withOwn } from './drafts'
import { FormatSelect } from './format-select'
import { MaximumFields } from './maximum-fields'
import { MoreTerms } from './more-terms'
import { OwnFormatFields } from './own-format-fields'
import { PrizeFields } from './prize-fields'
import { readAllowance } from './read-day-form'
import { KEPT_AS_IT_IS, TIE_CHOICES, tieChoiceOf } from './tie-rules'

interface Props {
  readonly draft: CompetitionDraft
  readonly place: number
  readonly expected: number
  readonly edition: string
  readonly holes: number
  readonly only: boolean
  readonly words: readonly string[]
  readonly onChange: (draft: CompetitionDraft) => void
  readonly onLeaveOut: () => void
}

/** One competition on the day's cards: its format, its allowance with where it comes from, its ties and its prizes. */
export function CompetitionFields(props: Props) {
  const { draft, place, expected, edition, holes, only, words, onChange, onLeaveOut } = props
  const at = `competitions[${place}]`
  const play = playOf(draft)
  const format = formatOfCompetition({ id: at, ...play }, FORMATS)
  const allowance = readAllowance(draft.allowance)
  const proposed = proposedFor(play, expected, edition)
  const same = isPublishedFor(play, allowance, edition)
  const kept = tieChoiceOf(draft.ties)
  const nobodyWins = prizesNobodyWins({ format, ranking: draft.more.ranking || undefined, prizes: draft.prizes })
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
          onChange={(event) => onChange({ ...draft, name: event.target.value, nameTyped: event.target.value !== '' })}
          required
          maxLength={80}
        />
        <FormatSelect
          name={`${at}.format`}
          value={draft.format}
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
        {format && ballValueOf(format.value).kind === 'maximum' ? (
          <MaximumFields at={at} initial={draft.maximum} />
        ) : null}
        {format?.namedHolesTimes === undefined ? null : (
          <Field
            name={`${at}.terms.namedHoles`}
            label="Holes that count double"
            initial={draft.namedHoles}
            hint="Their numbers on the card: 3, 7, 18."
            required
          />
        )}
        <SelectField
          name={`${at}.ties`}
          label="Ties"
          value={kept}
          onChange={(id) => {
            const chosen = TIE_CHOICES.find((one) => one.id === id)
            if (chosen) onChange({ ...draft, ties: { ...draft.ties, steps: [...chosen.steps] } })
          }}
          hint={kept === 'countback' ? 'Committee Procedures 5A(6)' : 'Step by step under More terms.'}
          options={[
            ...TIE_CHOICES.map((one) => ({ value: one.id, label: one.label })),
            ...(kept === KEPT_AS_IT_IS ? [{ value: KEPT_AS_IT_IS, label: 'Steps of your own, below' }] : []),
          ]}
        />
        {kept === KEPT_AS_IT_IS ? (
          <input type="hidden" name={`${at}.ties.kept`} value={JSON.stringify(draft.ties)} />
        ) : null}
        <SelectField
          name={`${at}.ties.holesCount`}
          label={holes === 9 ? 'Which holes are the last of the round' : 'Which holes are the last nine'}
          value={draft.ties.holesCount}
          onChange={(holesCount) =>
            onChange({
              ...draft,
              ties: { ...draft.ties, holesCount: holesCount === 'as-played' ? 'as-played' : 'by-number' },
            })
          }
          options={[
            {
              value: 'by-number',
              label: `${holes === 9 ? 'The highest numbers' : 'Holes 10 to 18'}, wherever a group began`,
            },
            {
              value: 'as-played',
              label: `${holes === 9 ? 'The last' : 'The last nine'} as each group played them`,
            },
          ]}
        />
      </div>
      {draft.dropped ? (
        <Notice kind="waits" word="Please check" announced>
          <p>{draft.dropped}</p>
        </Notice>
      ) : null}
      {draft.own ? (
        <OwnFormatFields
          at={at}
          own={draft.own}
          allowance={allowance}
          onChange={(own) => onChange(withOwn(draft, own, expected, edition))}
        />
      ) : (
        <p className="small second">{format?.sentence}</p>
      )}
      <PrizeFields
        at={at}
        prizes={draft.prizes}
        divisions={draft.more.divisions}
        onChange={(prizes) => onChange({ ...draft, prizes })}
        onAdd={() => onChange({ ...draft, prizes: [...draft.prizes, newPrize(draft.prizes.length + 1)] })}
      />
      {nobodyWins ? (
        <Notice kind="waits" word="Nobody can win">
          <p>{nobodyWins}</p>
        </Notice>
      ) : null}
      <Choice type="checkbox" name={`${at}.guestPrizes`} initial={draft.guestPrizes}>
        Guests may win every prize of this competition
      </Choice>
      {format ? (
        <MoreTerms at={at} draft={draft} format={format} edition={edition} words={words} onChange={onChange} />
      ) : null}
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
