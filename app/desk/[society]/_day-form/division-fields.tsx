'use client'

import { useFormNow } from '@/app/desk/_form/act-form'
import { divisionInWords } from '@/lib/boards/divisions'
import type { Division } from '@/lib/rules/day'
import { proposedDivisions, USUAL_SWITCHES } from '@/lib/rules/score/field-divisions'
import { DIVISION_SETS, type DivisionDraft, divisionOf, divisionsOf, newDivision } from './more-draft'

interface Props {
  readonly at: string
  readonly divisions: readonly DivisionDraft[]
  /** Words on the members' pages, offered while typing. */
  readonly words: readonly string[]
  /** Playing handicaps of those entered so far. */
  readonly field: readonly number[]
  readonly onChange: (divisions: readonly DivisionDraft[]) => void
}

const COUNT: Readonly<Record<number, string>> = { 2: 'Two', 3: 'Three' }

const draftOf = ({ name, handicapFrom, handicapTo }: Division) => ({
  name,
  handicapFrom: handicapFrom === undefined ? '' : String(handicapFrom),
  handicapTo: handicapTo === undefined ? '' : String(handicapTo),
})

/** Parts of the field with places of their own. Each row reads itself back; every condition that is set must hold. */
export function DivisionFields({ at, divisions, words, field, onChange }: Props) {
  const { refused } = useFormNow()
  const proposed = proposedDivisions(field)
  const list = `${at}.words`
  return (
    <fieldset className="divisions">
      <legend>Divisions</legend>
      <p className="small second">
        Parts of the field with places and prizes of their own. Publish their limits before play.
      </p>
      {divisions.length > 0 ? (
        <datalist id={list}>
          {words.map((word) => (
            <option key={word} value={word} />
          ))}
        </datalist>
      ) : null}
      {divisions.map((one, place) => {
        const put = (changed: Partial<DivisionDraft>) => onChange(divisions.with(place, { ...one, ...changed }))
        const name = `${at}.terms.divisions[${place}]`
        const wrong = refused?.faults.filter((fault) => fault.place.startsWith(name)) ?? []
        return (
          <div key={one.key} className="division">
            <input type="hidden" name={`${name}.id`} value={one.id} />
            <label>
              Name
              <input
                className="cell"
                name={`${name}.name`}
                value={one.name}
                maxLength={60}
                required
                onChange={(event) => put({ name: event.target.value })}
              />
            </label>
            <label>
              Handicap from
              <input
                className="cell fig"
                name={`${name}.handicapFrom`}
                type="number"
                min={-30}
                max={200}
                value={one.handicapFrom}
                onChange={(event) => put({ handicapFrom: event.target.value })}
              />
            </label>
            <label>
              to
              <input
                className="cell fig"
                name={`${name}.handicapTo`}
                type="number"
                min={-30}
                max={200}
                value={one.handicapTo}
                onChange={(event) => put({ handicapTo: event.target.value })}
              />
            </label>
            <label>
              Gender
              <select
                className="cell"
                name={`${name}.gender`}
                value={one.gender}
                onChange={(event) => put({ gender: event.target.value })}
              >
                <option value="">men and women</option>
                <option value="men">men</option>
                <option value="women">women</option>
              </select>
            </label>
            <label>
              Guests
              <select
                className="cell"
                name={`${name}.guests`}
                value={one.guests}
                onChange={(event) => put({ guests: event.target.value })}
              >
                <option value="">with guests</option>
                <option value="none">without guests</option>
                <option value="only">guests only</option>
              </select>
            </label>
            <label>
              Marked with the word
              <input
                className="cell"
                name={`${name}.group`}
                list={list}
                value={one.group}
                maxLength={30}
                placeholder="senior"
                onChange={(event) => put({ group: event.target.value })}
              />
            </label>
            <p className="small second division-says">{divisionInWords(divisionOf(one))}</p>
            {wrong.map((fault) => (
              <p key={fault.place} className="why">
                {fault.sentence}
              </p>
            ))}
            <button
              type="button"
              className="btn plain"
              aria-label={`Leave out the division ${one.name}`}
              onClick={() => onChange(divisions.filter((other) => other !== one))}
            >
              Leave out
            </button>
          </div>
        )
      })}
      <p className="acts">
        {divisions.length === 0
          ? DIVISION_SETS.map((set) => (
              <button
                key={set.label}
                type="button"
                className="btn plain"
                onClick={() => onChange(divisionsOf(set.divisions))}
              >
                {set.label}
              </button>
            ))
          : null}
        {divisions.length === 0 && proposed.length > 0 ? (
          <button type="button" className="btn plain" onClick={() => onChange(divisionsOf(proposed.map(draftOf)))}>
            {COUNT[proposed.length] ?? proposed.length} about equal ({field.length} entered)
          </button>
        ) : null}
        <button
          type="button"
          className="btn plain"
          onClick={() => onChange([...divisions, newDivision(divisions, { name: `Division ${divisions.length + 1}` })])}
        >
          Add a division
        </button>
      </p>
      {divisions.length === 0 && field.length > 0 && proposed.length === 0 ? (
        <p className="small second">
          {field.length} are entered: one division is usual below {USUAL_SWITCHES[0]} (common practice, no source).
        </p>
      ) : null}
      <p className="small second">
        For seniors, juniors of the society or first-timers, mark the members with a word on their pages and name it
        here. The handicap is the playing handicap; of a side it is the sum.
      </p>
    </fieldset>
  )
}
