'use client'

import type { CourseImportTee } from '@/lib/boards/desk-views'
import type { CourseImportChoices } from '@/lib/facts/course-import'

type Said = CourseImportChoices['tees'][string]

const WHAT: Readonly<Record<CourseImportTee['what'], string>> = {
  new: 'New.',
  changed: 'Takes the place of the set there now.',
  unchanged: 'As it is now.',
  look: '',
  'left-out': 'Left out.',
}

/** One set of tees as the file has it. What is typed is checked when the field is left. */
export function TeeAsked({ tee, onSay }: { readonly tee: CourseImportTee; readonly onSay: (said: Said) => void }) {
  const called = `${tee.name}, ${tee.gender ?? 'men or women'}`
  const out = tee.what === 'left-out'
  return (
    <li className={tee.what}>
      <fieldset>
        <legend>
          <b>{called}</b>{' '}
          <span className="second small">
            {tee.place}, {tee.holes} holes{tee.par === null ? '' : `, par ${tee.par}`}
            {tee.yards === null ? '' : `, ${tee.yards} yards`}
          </span>
        </legend>
        {out ? null : (
          <div className="fields">
            <Typed label="Tees" of={called} value={tee.name} onSay={(name) => onSay({ name })} />
            <label className="field">
              Rated for
              <select
                aria-label={`Rated for, ${called}`}
                value={tee.gender ?? ''}
                onChange={(event) => onSay({ gender: event.target.value === 'women' ? 'women' : 'men' })}
              >
                {tee.gender === null ? <option value="">choose</option> : null}
                <option value="men">men</option>
                <option value="women">women</option>
              </select>
            </label>
            <Typed
              label="Course rating"
              of={called}
              value={tee.courseRating}
              onSay={(courseRating) => onSay({ courseRating })}
            />
            <Typed
              label="Slope rating"
              of={called}
              value={tee.slopeRating}
              onSay={(slopeRating) => onSay({ slopeRating })}
            />
          </div>
        )}
        {tee.sentences.map((sentence) => (
          <p key={sentence} className="why">
            {sentence}
          </p>
        ))}
        <p>
          {WHAT[tee.what]}{' '}
          <button type="button" className="btn plain" onClick={() => onSay({ leftOut: !out })}>
            {out ? `Bring in ${called}` : `Leave ${called} out`}
          </button>
        </p>
      </fieldset>
    </li>
  )
}

function Typed(props: {
  readonly label: string
  readonly of: string
  readonly value: string
  readonly onSay: (typed: string) => void
}) {
  const { label, of, value, onSay } = props
  return (
    <label className="field">
      {label}
      <input
        defaultValue={value}
        aria-label={`${label}, ${of}`}
        maxLength={80}
        onBlur={(event) => {
          if (event.target.value !== value) onSay(event.target.value)
        }}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur()
        }}
      />
    </label>
  )
}
