'use client'

import { type ReactNode, useState } from 'react'
import { Notice } from '@/app/_parts/notice'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, SelectField, Send } from '@/app/desk/_form/field'
import { StartsAgain } from '@/app/desk/_form/unsaved'
import type { CallDay } from '@/lib/facts/commands'
import { draftOf, intervalAdvice, newPrize } from './drafts'
import { PrizeFields } from './prize-fields'

interface Props {
  readonly action: FormAction
  readonly label: string
  readonly day: CallDay
  readonly send: string
  /** When the handicaps were frozen, in words. */
  readonly frozen: string
  /** What stays, read back: the course and the tees, then one line a competition. */
  readonly stays: readonly string[]
  readonly children?: ReactNode
}

export const FrozenDayForm = (props: Props) => (
  <StartsAgain>
    <FrozenFields {...props} />
  </StartsAgain>
)

/** A day whose handicaps are frozen: what may still be changed has a field, and what stays is said before anybody types. */
function FrozenFields({ action, label, day, send, frozen, stays, children }: Props) {
  const [start, setStart] = useState({ kind: day.startKind ?? 'tee-times', minutes: day.intervalMinutes })
  const [drafts, setDrafts] = useState(() => day.competitions.map(draftOf))
  return (
    <ActForm action={action} label={label} className="day-form" saves>
      <input type="hidden" name="seasonId" value={day.seasonId} />
      {children}
      <Notice kind="waits" word="Handicaps are frozen">
        <p>
          They were frozen {frozen}. <b>You can change</b> the date, the times, the places, the names and the prizes.{' '}
          <b>These stay as they are</b>, whatever the size of the field:
        </p>
        <ul>
          {stays.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </Notice>
      <section aria-labelledby="when-h">
        <h2 id="when-h">When</h2>
        <div className="fields">
          <Field name="name" label="Name of the day" initial={day.name} required maxLength={80} />
          <Field name="date" label="Date" type="date" initial={day.date} required />
          <Field name="entriesCloseOn" label="Entries close on" type="date" initial={day.entriesCloseOn} />
          <Field
            name="places"
            label="Places"
            type="number"
            min={2}
            max={200}
            initial={day.places}
            hint="Whoever enters after that waits. Empty: as many as come."
          />
        </div>
      </section>
      <section aria-labelledby="start-h">
        <h2 id="start-h">The start</h2>
        <div className="fields">
          <SelectField
            name="startKind"
            label="Start"
            value={start.kind}
            onChange={(kind) => setStart({ ...start, kind: kind === 'shotgun' ? 'shotgun' : 'tee-times' })}
            options={[
              { value: 'tee-times', label: 'Tee times from the first tee' },
              { value: 'shotgun', label: 'Shotgun: all at once, on different holes' },
            ]}
          />
          <Field name="firstTee" label="First tee" type="time" initial={day.firstTee} required />
          <Field
            name="intervalMinutes"
            label="Minutes between groups"
            type="number"
            min={5}
            max={30}
            value={start.minutes}
            onChange={(event) => setStart({ ...start, minutes: Number(event.target.value) })}
            hint={
              intervalAdvice(start.minutes, start.kind) ??
              'Published advice: at least 8 for two-balls, 10 for threes, 11 for fours.'
            }
            required
          />
        </div>
      </section>
      <section aria-labelledby="comps-h">
        <h2 id="comps-h">Names and prizes</h2>
        {drafts.map((draft, place) => {
          const at = `competitions[${place}]`
          const put = (prizes: typeof draft.prizes) => setDrafts(drafts.with(place, { ...draft, prizes }))
          return (
            <section key={draft.key} className="competition" aria-label={draft.name}>
              <div className="fields">
                <Field
                  name={`${at}.name`}
                  label="Name of the competition"
                  initial={draft.name}
                  required
                  maxLength={80}
                />
              </div>
              <PrizeFields
                at={at}
                prizes={draft.prizes}
                divisions={draft.more.divisions}
                onChange={put}
                onAdd={() => put([...draft.prizes, newPrize(draft.prizes.length + 1)])}
              />
            </section>
          )
        })}
      </section>
      <p className="acts">
        <Send kind="first">{send}</Send>
      </p>
    </ActForm>
  )
}
