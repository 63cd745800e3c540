import { ActForm } from '@/app/desk/_form/act-form'
import type { DayAddress } from '@/app/desk/_form/answer-for-day'
import { Field, SelectField, Send } from '@/app/desk/_form/field'
import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import { momentOf } from '@/app/desk/_frame/moments'
import { CLAUSE_OF, dayRulingInWords } from '@/lib/boards/day-rulings'
import { namesOf } from '@/lib/boards/entrant-names'
import { asSentence, ordinal, scoreShort } from '@/lib/boards/in-words'
import type { CompetitionBoard } from '@/lib/boards/views'
import type { DayRecord } from '@/lib/facts/day-record'
import { dayRulingsInForce } from '@/lib/facts/day-rulings'
import { lastHoleOf } from '@/lib/rules/hole-numbers'
import { enterPlayOff, ruleAbandoned, takeDayRulingBack } from './day-actions'

interface Props {
  readonly record: DayRecord
  readonly boards: readonly CompetitionBoard[]
  readonly where: DayAddress
}

const Seen = ({ record }: { readonly record: DayRecord }) => (
  <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
)

/** Rulings on the day as a whole: play-offs that were played, a round that was abandoned; each with its reason. */
export function DayRulings({ record, boards, where }: Props) {
  const given = record.dayRulings ?? []
  const inForce = new Set(dayRulingsInForce(given).map((one) => one.number))
  const names = namesOf(record)
  const withPlayOff = record.competitions.filter((one) => one.terms.ties.steps.some((step) => step.kind === 'play-off'))
  return (
    <section aria-labelledby="day-rulings-h" className="desk-sheet">
      <h2 id="day-rulings-h">Rulings on the day</h2>
      {given.length === 0 ? <p className="second">None. Rulings on one card are given under Returns.</p> : null}
      {given.length > 0 ? (
        <ol className="ledger rulings">
          {given.toReversed().map((one) => (
            <li key={one.number} className={inForce.has(one.number) || one.kind === 'taken-back' ? '' : 'replaced'}>
              <p className="in-margin fig">{one.number}</p>
              <div>
                <p>
                  <b>{dayRulingInWords(one, names, record.round)}</b> {asSentence(one.reason)}{' '}
                  <span className="second">
                    {CLAUSE_OF[one.kind]}. Ruled by {one.byName}, {momentOf(new Date(one.ruledAt))}.
                  </span>
                </p>
                {inForce.has(one.number) ? <TakeBack record={record} where={where} number={one.number} /> : null}
              </div>
            </li>
          ))}
        </ol>
      ) : null}
      {withPlayOff.map((competition) => (
        <PlayOff
          key={competition.id}
          record={record}
          where={where}
          competition={competition}
          board={boards.find((one) => one.id === competition.id)}
        />
      ))}
      <details className="rule-all">
        <summary>The round was abandoned</summary>
        <ActForm action={ruleAbandoned.bind(null, where)} label="The round was abandoned" clears>
          <Seen record={record} />
          <div className="fields">
            <Field
              name="afterHole"
              label="After hole"
              type="number"
              min={0}
              max={lastHoleOf(record.round)}
              required
              hint="The last hole that everybody finished. 0: before play began."
            />
            <SelectField
              name="counts"
              label="What counts"
              options={[
                { value: 'first-holes', label: 'The holes up to it, for everybody' },
                { value: 'no-score', label: 'What was played; the other holes have no score' },
                { value: 'level', label: 'What was played; the other holes count as level' },
                { value: 'nothing', label: 'Nothing: no result' },
              ]}
            />
            <Field name="reason" label="Reason, on the sheet" required minLength={3} maxLength={400} />
          </div>
          <p className="small second">
            A stroke-play round that cannot be finished is usually void; what a society counts all the same is for its
            committee and belongs into the terms. Matches stand as they are. Committee Procedures 6E.
          </p>
          <p className="acts">
            <Send kind="grave">Rule the round abandoned</Send>
          </p>
        </ActForm>
      </details>
    </section>
  )
}

function PlayOff({
  record,
  where,
  competition,
  board,
}: Omit<Props, 'boards'> & {
  readonly competition: DayRecord['competitions'][number]
  readonly board: CompetitionBoard | undefined
}) {
  // Level on their score, whatever the countback made of it: the play-off stands at its own step.
  const level = (board?.rows ?? []).filter(
    (row, _, rows) => row.place !== null && rows.some((other) => other !== row && other.score === row.score),
  )
  if (!board || level.length === 0)
    return <p className="small second">A play-off in {competition.name}: nobody is level.</p>
  return (
    <details className="rule-all">
      <summary>Enter the play-off of {competition.name}</summary>
      <ActForm action={enterPlayOff.bind(null, where)} label={`Enter the play-off of ${competition.name}`} clears>
        <Seen record={record} />
        <input type="hidden" name="competitionId" value={competition.id} />
        <p className="small second">
          Write 1 for the winner, 2 for the next, and nothing for whoever was not in it. Only players who are level.
        </p>
        <div className="fields">
          {level.map((row) => (
            <Field
              key={row.entrant}
              name={`place ${row.entrant}`}
              label={`${row.name}, ${ordinal(row.place ?? 0)} with ${scoreShort(row.score ?? 0, board.unit)}`}
              type="number"
              min={1}
              max={level.length}
            />
          ))}
          <Field name="reason" label="How it was played, on the sheet" required minLength={3} maxLength={400} />
        </div>
        <p className="acts">
          <Send>Enter the play-off</Send>
        </p>
      </ActForm>
    </details>
  )
}

function TakeBack({
  record,
  where,
  number,
}: {
  readonly record: DayRecord
  readonly where: DayAddress
  readonly number: number
}) {
  return (
    <details>
      <summary className="small">Take it back</summary>
      <ActForm action={takeDayRulingBack.bind(null, where)} label={`Take ruling ${number} on the day back`}>
        <Seen record={record} />
        <input type="hidden" name="replaces" value={number} />
        <div className="fields">
          <Field name="reason" label="Reason" required minLength={3} maxLength={400} />
        </div>
        <p className="acts">
          <Send>Take ruling {number} back</Send>
        </p>
      </ActForm>
    </details>
  )
}
