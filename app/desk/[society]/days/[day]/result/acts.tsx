import Link from '@/app/_parts/link'
import { Notice } from '@/app/_parts/notice'
import { ActForm } from '@/app/desk/_form/act-form'
import type { DayAddress } from '@/app/desk/_form/answer-for-day'
import { Field, Send } from '@/app/desk/_form/field'
import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import { count, list } from '@/app/desk/_frame/words'
import { drivesShort } from '@/lib/boards/drives-short'
import type { EmptyCompetition } from '@/lib/boards/empty-competitions'
import { namesOf } from '@/lib/boards/entrant-names'
import type { ReturnsView } from '@/lib/boards/returns-view'
import { countingAlone } from '@/lib/boards/short-of-partner'
import type { DayRecord } from '@/lib/facts/day-record'
import { closeTheDay, publishTheResult, reopenTheDay } from './actions'

interface Props {
  readonly record: DayRecord
  readonly where: DayAddress
}

const Seen = ({ record }: { readonly record: DayRecord }) => (
  <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
)

/** What still keeps the day open, and the button that closes it. */
export function CloseDay({
  record,
  where,
  view,
  at,
  isAhead,
}: Props & { readonly view: ReturnsView; readonly at: string; readonly isAhead: boolean }) {
  const { inTheWay } = view
  const out = inTheWay.filter((card) => card.isOut)
  // What it means for partners and teams, by name.
  const alone = countingAlone(
    record,
    out.map((card) => card.entryId),
    namesOf(record),
  )
  const drives = drivesShort(record)
  const whyNever = isAhead ? 'the day has not come yet' : view.cards === 0 && 'no card is made out'
  const whyNot = whyNever || (inTheWay.length > 0 && `${inTheWay.length} in the way`)
  return (
    <section aria-labelledby="close-h" className="close-day">
      <h2 id="close-h">Close the day</h2>
      {inTheWay.length > 0 ? (
        <Notice
          kind="waits"
          word={`${inTheWay.length} in the way`}
          acts={
            <Link className="btn" href={`${at}/returns`}>
              To the returns
            </Link>
          }
        >
          <ul>
            {gathered(inTheWay).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </Notice>
      ) : view.cards === 0 ? (
        <p>
          No card is made out yet: they come with the start sheet. If the day is not played,{' '}
          <Link href={`${at}#call-off`}>call it off</Link>.
        </p>
      ) : (
        <p>
          {view.takenIn} of {view.cards} cards are accepted
          {view.notReturned.length > 0 ? `, not returned: ${list(view.notReturned)}` : ' and nothing is open'}. Closing
          breaks the ties and settles the prizes.
        </p>
      )}
      {drives.length > 0 && !whyNever ? (
        <Notice
          kind="waits"
          word="Too few drives"
          acts={
            <Link className="btn" href={`${at}/returns`}>
              Rule on a card
            </Link>
          }
        >
          <ul>
            {drives.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <p>
            The terms leave it to the committee: until it rules, by a penalty or a disqualification on the card, the
            side keeps its place. Drives from the paper cards are entered under Sides and matches.
          </p>
        </Notice>
      ) : null}
      <ActForm action={closeTheDay.bind(null, where)} label="Close the day">
        <Seen record={record} />
        <p className="acts">
          <Send kind="first" why={whyNot}>
            Close the day
          </Send>
        </p>
      </ActForm>
      {out.length > 0 && out.length === inTheWay.length && !whyNever ? (
        <details className="rule-all">
          <summary>Close it without {out.length === 1 ? 'that card' : 'those cards'}</summary>
          <ActForm action={closeTheDay.bind(null, where)} label="Close without the cards that are out">
            <Seen record={record} />
            <input type="hidden" name="notReturned" value={out.length} />
            <p>
              <b>{list(out.map((card) => card.place))}</b> {out.length === 1 ? 'takes' : 'take'} no place:{' '}
              {out.length === 1 ? 'the card counts' : `the ${out.length} cards count`} as not returned, as a ruling of
              the committee with its number (Rule 3.3b). It is taken back by opening the day again and accepting the
              card.
            </p>
            {alone.length > 0 ? (
              <ul>
                {alone.map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
            ) : null}
            <p className="acts">
              <Send kind="grave">Close the day: {count(out.length, 'card')} not returned</Send>
            </p>
          </ActForm>
        </details>
      ) : null}
    </section>
  )
}

/** Twelve cards with the same thing in the way are one line with twelve names. */
function gathered(inTheWay: ReturnsView['inTheWay']): readonly string[] {
  const names = new Map<string, string[]>()
  for (const { place, sentence } of inTheWay) {
    const wants = sentence.replace(`${place}: `, '')
    names.set(wants, [...(names.get(wants) ?? []), place])
  }
  return [...names].map(([wants, who]) => `${list(who)}: ${wants}`)
}

/**
 * The first sheet is published as it is; the next one only when it would say something else, and with its reason. Opening
 * the day again is the way to a correction.
 */
export function Publish({ record, where, differs, empty }: Props & NextProps) {
  const last = record.publications.at(-1)
  return (
    <section aria-labelledby="publish-h">
      <h2 id="publish-h">{last ? `Sheet ${last.number} is published` : 'Publish the result'}</h2>
      {last && differs.length === 0 ? (
        <p>
          Nothing differs from sheet {last.number}: there is nothing to publish. A score is corrected by opening the day
          first.
        </p>
      ) : (
        <PublishNext record={record} where={where} differs={differs} empty={empty} />
      )}
      <details className="rule-all">
        <summary>Open the day again</summary>
        <ActForm action={reopenTheDay.bind(null, where)} label="Open the day again">
          <Seen record={record} />
          <p>Cards can then be ruled on again. What is published stays as it is until the next sheet.</p>
          <Field name="reason" label="Reason" required minLength={3} maxLength={400} />
          <p className="acts">
            <Send kind="grave">Open the day again</Send>
          </p>
        </ActForm>
      </details>
    </section>
  )
}

interface NextProps {
  readonly differs: readonly string[]
  /** Competitions in which nobody has a result. */
  readonly empty: readonly EmptyCompetition[]
}

function PublishNext({ record, where, differs, empty }: Props & NextProps) {
  const last = record.publications.at(-1)
  const next = (last?.number ?? 0) + 1
  return (
    <>
      {last ? (
        <Notice kind="differs" word={`What sheet ${next} says otherwise`}>
          <ul>
            {differs.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </Notice>
      ) : null}
      <ActForm action={publishTheResult.bind(null, where)} label={`Publish sheet ${next}`} clears>
        <Seen record={record} />
        {empty.length > 0 ? (
          <>
            <Notice kind="differs" word="No result">
              {empty.map(({ sentence }) => (
                <p key={sentence}>{sentence}</p>
              ))}
              <p>Open the day again to put it right, or publish the sheet without it and say why.</p>
            </Notice>
            <Field
              name="without"
              label={`Published without a result in ${list(empty.map(({ name }) => name))}, because`}
              hint="Stands at the head of the sheet and in the record of acts."
              required
              minLength={3}
              maxLength={400}
            />
          </>
        ) : null}
        {last ? (
          <Field
            name="reason"
            label={`Reason for sheet ${next}`}
            hint="Stands at the head of the sheet. The old sheets stay."
            required
            minLength={3}
            maxLength={400}
          />
        ) : (
          <p>
            Look at the prizes below first. The sheet is numbered and stays as it is; a correction is the next sheet.
            Everybody can read it.
          </p>
        )}
        <p className="acts">
          <Send kind={empty.length > 0 ? 'grave' : 'first'}>
            Publish sheet {next}
            {empty.length > 0 ? ' without it' : null}
          </Send>
        </p>
      </ActForm>
    </>
  )
}
