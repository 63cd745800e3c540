import { formatIn } from '@/lib/boards/format-of-competition'
import { rarerTermsInWords } from '@/lib/boards/terms-in-words'
import type { DayRecord } from '@/lib/facts/day-record'
import { editionOf } from '@/lib/rules/editions/editions'
import { inWords } from '@/lib/rules/formats/catalogue'
import { TIE_CHOICES, tieChoiceOf } from '../../_day-form/tie-rules'

function tiesOf(terms: DayRecord['competitions'][number]['terms']): string {
  const choice = TIE_CHOICES.find((one) => one.id === tieChoiceOf(terms.ties))
  const words = choice ? choice.label.charAt(0).toLowerCase() + choice.label.slice(1) : 'by a rule of its own'
  return `Ties: ${words}${terms.ties.holesCount === 'as-played' ? ', holes as each group played them' : ''}.`
}

/** The readings of the day's cards, each with its allowance and where that comes from. */
export function Competitions({ record }: { readonly record: DayRecord }) {
  const clause = editionOf(record.edition).allowanceClause
  return (
    <ul className="comps">
      {record.competitions.map((competition) => {
        const { terms } = competition
        const format = formatIn(competition)
        return (
          <li key={competition.id}>
            <p className="comp-n">
              <b>{competition.name}</b>, {format?.name ?? competition.format}
            </p>
            <p className="comp-a">
              {format?.strokes.kind === 'none' ? null : <span className="fig">{inWords(terms.allowance)}</span>}
            </p>
            <p className="small second">
              {terms.allowanceFrom === 'published'
                ? `Allowance from the ${clause}.`
                : `House choice: ${terms.allowanceReason ?? 'no reason given'}`}{' '}
              {tiesOf(terms)} {rarerTermsInWords(competition).join(' ')}
            </p>
          </li>
        )
      })}
    </ul>
  )
}
