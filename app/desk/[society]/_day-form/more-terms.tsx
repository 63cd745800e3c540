'use client'

import { use, useEffect, useState } from 'react'
import { useFormNow } from '@/app/desk/_form/act-form'
import { Field, SelectField } from '@/app/desk/_form/field'
import { termSentences } from '@/lib/boards/terms-in-words'
import { tieRuleInWords } from '@/lib/boards/tie-sentences'
import { type CompetitionTerms, rarerTermsSchema } from '@/lib/facts/terms'
import { termFits } from '@/lib/facts/terms-that-fit'
import { editionOf } from '@/lib/rules/editions/editions'
import type { Format } from '@/lib/rules/formats/format'
import { DivisionFields } from './division-fields'
import type { CompetitionDraft } from './drafts'
import { FieldOfDay } from './field-of-day'
import { GroupsAndParts } from './groups-and-parts'
import { type MoreDraft, type MoreField, newLot, termsOfMore } from './more-draft'
import { TieSteps } from './tie-steps'

interface Props {
  readonly at: string
  readonly draft: CompetitionDraft
  readonly format: Format
  readonly edition: string
  readonly words: readonly string[]
  readonly onChange: (draft: CompetitionDraft) => void
}

/** Everything a competition may say beyond the usual, folded away; what is set is read back in the fold's head. */
export function MoreTerms({ at, draft, format, edition, words, onChange }: Props) {
  const { refused } = useFormNow()
  const { more } = draft
  const entered = use(FieldOfDay)
  const oneBall = format.ball === 'one'
  const put = (changed: Partial<MoreDraft>) => onChange({ ...draft, more: { ...more, ...changed } })
  const said = sentencesOf(more, format)
  const own = (name: MoreField) => ({
    name: `${at}.terms.${name}`,
    value: more[name],
    onChange: (value: string) => put({ [name]: value }),
  })
  const typed = (name: MoreField) => {
    const { onChange: change, ...field } = own(name)
    return { ...field, onChange: (event: { target: { value: string } }) => change(event.target.value) }
  }
  const wrong = (place: string) =>
    refused?.faults.find((fault) => fault.place === place || fault.place.startsWith(`${place}.`))?.sentence
  const isWrong = refused?.faults.some((fault) => fault.place.startsWith(`${at}.terms.`)) ?? false
  const hasLimit = draft.limit.men !== undefined || draft.limit.women !== undefined
  const [open, setOpen] = useState(said.length > 0 || hasLimit)
  useEffect(() => {
    if (isWrong) setOpen(true)
  }, [isWrong])
  const limit = `Highest ${oneBall ? 'course' : 'playing'} handicap that counts. Empty: no limit.`
  return (
    <details className="rule-all more-terms" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>More terms{said.length > 0 ? `: ${said.length} set` : ''}</summary>
      <div className="more-parts">
        {said.length > 0 ? (
          <ul className="terms-said" aria-label="The terms that are set">
            {said.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        ) : null}
        {termFits('divisions', format) ? (
          <DivisionFields
            at={at}
            divisions={more.divisions}
            words={words}
            field={format.sideSize === 1 ? (entered[draft.name] ?? []) : []}
            onChange={(divisions) => put({ divisions })}
          />
        ) : null}
        <div className="fields">
          {termFits('handicapLimit', format) ? (
            <>
              <Field
                name={`${at}.terms.handicapLimit.men`}
                label="Handicap limit, men"
                type="number"
                min={0}
                max={99}
                initial={draft.limit.men}
                hint={limit}
              />
              <Field
                name={`${at}.terms.handicapLimit.women`}
                label="Handicap limit, women"
                type="number"
                min={0}
                max={99}
                initial={draft.limit.women}
                hint={limit}
              />
            </>
          ) : null}
          {termFits('dividedBy', format) ? (
            <Field
              {...typed('dividedBy')}
              label="Combined handicap divided by"
              type="number"
              min={1}
              max={20}
              hint="A house variant in place of the allowance: course handicaps added up and divided. Empty: the allowance counts."
            />
          ) : null}
          {termFits('countedHoles', format) ? (
            <Field
              {...typed('countedHoles')}
              label="Only these holes count"
              hint="Their numbers on the flags, such as 1-9, 12. Empty: all of them."
            />
          ) : null}
          {termFits('matchDifference', format) ? (
            <SelectField
              {...own('matchDifference')}
              label="Difference of handicaps"
              hint={`Rules of Handicapping, Appendix C: who receives strokes, and how many.`}
              options={[
                {
                  value: '',
                  label: `As the edition has it: ${usualDifference(edition, oneBall || format.sideSize > 1)}`,
                },
                { value: 'rounded', label: 'Of the rounded playing handicaps' },
                { value: 'unrounded', label: 'Of the course handicaps in full' },
              ]}
            />
          ) : null}
          {termFits('extraHoleStrokes', format) ? (
            <SelectField
              {...own('extraHoleStrokes')}
              label="Strokes on extra holes"
              hint="Appendix C asks that the terms say it."
              options={[
                { value: '', label: 'As on the card' },
                { value: 'as-on-the-card', label: 'As on the card, said on the sheet' },
                { value: 'none', label: 'None' },
              ]}
            />
          ) : null}
          <SelectField
            {...own('notPlayed')}
            label="Holes that could not be played"
            hint="When the day is closed before everybody is round."
            options={[
              { value: '', label: 'No score' },
              { value: 'no-score', label: 'No score, said on the sheet' },
              { value: 'level', label: 'Level: net par, two points, halved' },
            ]}
          />
          {termFits('missing', format) ? (
            <Missing more={more} put={put} own={own} typed={typed} oneBall={oneBall} />
          ) : null}
          {termFits('minimumDrives', format) ? (
            <Field
              {...typed('minimumDrives')}
              label="Drives of each player, at least"
              type="number"
              min={0}
              max={18}
              hint="Whose drive was taken is written on the card. Empty: no minimum."
            />
          ) : null}
          <GroupsAndParts more={more} format={format} own={own} />
          {termFits('ballLost', format) ? (
            <SelectField
              {...own('ballLost')}
              label="When the named ball is lost"
              options={[
                { value: '', label: 'As the form of play has it' },
                {
                  value: 'counts-once',
                  label: `The player in turn ${format.count.kind === 'named-player' && format.count.times > 1 ? 'still counts, but once' : 'still counts, as if never lost'}`,
                },
                { value: 'named-score-nothing', label: 'The player in turn counts nothing' },
                { value: 'side-out', label: 'The side is out' },
              ]}
            />
          ) : null}
        </div>
        {format.isMatch ? null : (
          <>
            <TieSteps at={at} ties={draft.ties} onChange={(ties) => onChange({ ...draft, ties })} wrong={wrong} />
            <div className="fields">
              <SelectField
                name={`${at}.ties.fractions`}
                label="Shares of the handicap in a countback"
                value={draft.ties.fractions}
                onChange={(fractions) =>
                  onChange({
                    ...draft,
                    ties: { ...draft.ties, fractions: fractions === 'rounded' ? 'rounded' : 'kept' },
                  })
                }
                hint="Net stroke play: a half for nine holes, a third for six, a sixth for three, an eighteenth for one."
                options={[
                  { value: 'kept', label: 'Kept as fractions' },
                  { value: 'rounded', label: 'Rounded, a half upwards' },
                ]}
              />
            </div>
            <p className="small">{tieRuleInWords(draft.ties)}</p>
          </>
        )}
      </div>
    </details>
  )
}

interface MissingProps {
  readonly put: (changed: Partial<MoreDraft>) => void
  readonly more: MoreDraft
  readonly oneBall: boolean
  readonly own: (name: MoreField) => { name: string; value: string; onChange: (value: string) => void }
  readonly typed: (name: MoreField) => {
    name: string
    value: string
    onChange: (event: { target: { value: string } }) => void
  }
}

/** What a short side's missing player counts as: society custom, so the terms say it. */
function Missing({ more, put, oneBall, own, typed }: MissingProps) {
  const kind = own('missing')
  return (
    <>
      <SelectField
        {...kind}
        onChange={(chosen) =>
          put({
            missing: chosen,
            ...(chosen === 'drawn' && more['missing.seed'] === '' ? { 'missing.seed': String(newLot()) } : {}),
          })
        }
        label="A player missing from a side"
        options={[
          { value: '', label: 'Counts nothing' },
          { value: 'nothing', label: 'Counts nothing, said on the sheet' },
          { value: 'ghost', label: 'A ghost' },
          { value: 'lowest-again', label: oneBall ? 'The lowest handicap twice' : 'The best of the others again' },
          ...(oneBall ? [] : [{ value: 'drawn', label: 'A card drawn by lot' }]),
        ]}
      />
      {more.missing === 'ghost' && !oneBall ? (
        <Field {...typed('missing.overPar')} label="The ghost, strokes over net par" type="number" min={-2} max={5} />
      ) : null}
      {more.missing === 'ghost' && oneBall ? (
        <input type="hidden" name={own('missing.overPar').name} value={more['missing.overPar']} />
      ) : null}
      {more.missing === 'ghost' ? (
        <Field
          {...typed('missing.courseHandicap')}
          label="Course handicap of the ghost"
          type="number"
          min={-15}
          max={77}
          hint={oneBall ? undefined : 'Counts where the handicaps of the side are added up.'}
        />
      ) : null}
      {more.missing === 'drawn' ? (
        <Field
          {...typed('missing.seed')}
          label="Number of the lot"
          type="number"
          hint="Kept with the terms: the same number draws the same cards again."
        />
      ) : null}
    </>
  )
}

const usualDifference = (edition: string, sides: boolean) => {
  const { title, matchDifference } = editionOf(edition)
  const usual = sides ? matchDifference.sides : matchDifference.players
  return `${usual === 'rounded' ? 'rounded' : 'in full'} (${title})`
}

/** What is set, as the sheets will say it; nothing from what cannot be read yet. */
function sentencesOf(more: MoreDraft, format: Format): readonly string[] {
  const known = Object.entries(termsOfMore(more, format)).flatMap(([term, value]) => {
    const read = rarerTermsSchema.safeParse({ [term]: value })
    return read.success ? Object.entries(read.data) : []
  })
  return termSentences(Object.fromEntries(known) as Partial<CompetitionTerms>, format)
}
