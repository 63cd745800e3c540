import type { ReactNode } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, SelectField, Send } from '@/app/desk/_form/field'
import type { CompetitionId } from '@/lib/facts/ids'
import type { MatchEnding } from '@/lib/facts/match-ending'

interface Props {
  readonly action: FormAction
  readonly competitionId: CompetitionId
  readonly match: { readonly id: string; readonly a: string; readonly b: string; readonly ending: MatchEnding }
  readonly withExtraHoles: boolean
  readonly children: ReactNode
}

const holesTo = ({ concededHoles = [] }: MatchEnding, end: 'a' | 'b') =>
  concededHoles
    .filter((one) => one.to === end)
    .map((one) => one.hole)
    .join(', ')

const extraOf = ({ extraHoles = [] }: MatchEnding, end: 'a' | 'b') => extraHoles.map((one) => one[end]).join(' ')

function howOf({ concededBy, walkover, result, abandoned }: MatchEnding): string {
  if (result) return result.winner === null ? 'halved' : `won ${result.winner}`
  if (concededBy) return `conceded ${concededBy}`
  if (walkover) return `walkover ${walkover}`
  return abandoned ? 'abandoned' : ''
}

const resultOf = ({ result }: MatchEnding) =>
  !result || result.winner === null ? '' : result.left === 0 ? `${result.up} up` : `${result.up} and ${result.left}`

/** How a match ended other than on the course. Rules of Golf 3.2b. */
export function EndingForm({ action, competitionId, match, withExtraHoles, children }: Props) {
  const { a, b, ending } = match
  return (
    <ActForm action={action} label={`${a} against ${b}`} saves>
      {children}
      <input type="hidden" name="competitionId" value={competitionId} />
      <input type="hidden" name="matchId" value={match.id} />
      <input type="hidden" name="was" value={JSON.stringify(ending)} />
      <div className="fields">
        <SelectField
          name="how"
          label="How it ended"
          initial={howOf(ending)}
          options={[
            { value: '', label: 'as the holes were written' },
            { value: 'won a', label: `${a} won` },
            { value: 'won b', label: `${b} won` },
            { value: 'halved', label: 'halved' },
            { value: 'conceded a', label: `${a} conceded the match` },
            { value: 'conceded b', label: `${b} conceded the match` },
            { value: 'walkover a', label: `walkover for ${a}` },
            { value: 'walkover b', label: `walkover for ${b}` },
            { value: 'abandoned', label: 'abandoned: it stands as it was' },
          ]}
        />
        <Field name="result" label="Result, where one won" initial={resultOf(ending)} hint="3 and 2, or 1 up" />
        <Field
          name="concededToA"
          label={`Holes conceded to ${a}`}
          initial={holesTo(ending, 'a')}
          hint="Their numbers, with commas"
        />
        <Field name="concededToB" label={`Holes conceded to ${b}`} initial={holesTo(ending, 'b')} />
        {withExtraHoles ? (
          <>
            <Field
              name="extraA"
              label={`Extra holes, ${a}`}
              initial={extraOf(ending, 'a')}
              hint="Strokes in order: 4 5"
            />
            <Field name="extraB" label={`Extra holes, ${b}`} initial={extraOf(ending, 'b')} hint="x for no score" />
          </>
        ) : null}
      </div>
      <p className="acts">
        <Send>Keep how it ended</Send>
      </p>
    </ActForm>
  )
}
