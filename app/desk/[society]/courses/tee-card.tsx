'use client'

import type { ClipboardEvent, KeyboardEvent } from 'react'
import { useFormNow } from '@/app/desk/_form/act-form'
import { Field, SelectField } from '@/app/desk/_form/field'
import { cellFault, type HoleDraft, indexAdvice, spread, type TeeDraft } from './card-draft'

interface Props {
  readonly tee: TeeDraft
  readonly place: number
  readonly only: boolean
  readonly onChange: (tee: TeeDraft) => void
  readonly onLeaveOut: () => void
  readonly onNine: (nine: 1 | 10) => void
  readonly onTwice: () => void
}

const ROWS = [
  { cell: 'par', label: 'Par', most: 1 },
  { cell: 'strokeIndex', label: 'Stroke index', most: 2 },
  { cell: 'yards', label: 'Yards', most: 3 },
] as const

/** One set of tees. Enter goes to the next hole, arrows go about, a pasted row fills the row. */
export function TeeCard({ tee, place, only, onChange, onLeaveOut, onNine, onTwice }: Props) {
  const { refused } = useFormNow()
  const first = tee.nine ?? 1
  const at = `tees[${place}]`
  const faultAt = (where: string) => refused?.faults.find((one) => one.place === where)?.sentence ?? null
  const put = (index: number, cell: keyof HoleDraft, text: string) =>
    onChange({ ...tee, holes: tee.holes.map((hole, one) => (one === index ? { ...hole, [cell]: text } : hole)) })

  function onPaste(event: ClipboardEvent, index: number, cell: keyof HoleDraft) {
    const cells = spread(event.clipboardData.getData('text'))
    if (!cells) return
    event.preventDefault()
    onChange({
      ...tee,
      holes: tee.holes.map((hole, one) => {
        const text = one >= index ? cells[one - index] : undefined
        return text === undefined ? hole : { ...hole, [cell]: text }
      }),
    })
  }

  function onKeyDown(event: KeyboardEvent<HTMLInputElement>, index: number, row: number) {
    const ways: Record<string, readonly [number, number]> = {
      Enter: [1, 0],
      ArrowRight: [1, 0],
      ArrowLeft: [-1, 0],
      ArrowUp: [0, -1],
      ArrowDown: [0, 1],
    }
    const way = ways[event.key]
    const field = event.currentTarget
    // Inside a longer figure the arrows still walk through its digits.
    const inside =
      (event.key === 'ArrowLeft' && (field.selectionEnd ?? 0) > 0 && field.selectionStart !== 0) ||
      (event.key === 'ArrowRight' &&
        (field.selectionStart ?? 0) < field.value.length &&
        field.selectionEnd !== field.value.length)
    if (!way || inside) return
    const next = document.getElementById(cellId(place, index + way[0], row + way[1]))
    if (event.key === 'Enter') event.preventDefault()
    if (!(next instanceof HTMLInputElement)) return
    event.preventDefault()
    next.focus()
    next.select()
  }

  const faults = tee.holes.flatMap((_hole, index) =>
    ROWS.flatMap(({ cell }) => {
      const sentence = cellFault(tee, index, cell) ?? faultAt(`${at}.holes[${index}].${cell}`)
      return sentence ? [{ key: `${index} ${cell}`, sentence: `Hole ${index + first}: ${sentence}` }] : []
    }),
  )
  const advice = indexAdvice(tee)
  const halves = tee.holes.length > 9 ? [0, 9] : [0]
  const sum = (from: number, cell: 'par' | 'yards') =>
    tee.holes.slice(from, from + 9).reduce((all, hole) => all + (Number(hole[cell]) || 0), 0)
  return (
    <fieldset className="tee-card">
      <legend>
        <span className="sc second">{tee.name ? `${tee.name}, ${tee.gender}` : `Tees ${place + 1}`}</span>
      </legend>
      <div className="fields">
        <Field
          name={`${at}.name`}
          label="Tees"
          value={tee.name}
          onChange={(event) => onChange({ ...tee, name: event.target.value })}
          required
          maxLength={80}
        />
        <SelectField
          name={`${at}.gender`}
          label="Rated for"
          value={tee.gender}
          onChange={(gender) => onChange({ ...tee, gender: gender === 'women' ? 'women' : 'men' })}
          options={[
            { value: 'men', label: 'men' },
            { value: 'women', label: 'women' },
          ]}
        />
        <Field
          name={`${at}.courseRatingTenths`}
          label="Course rating"
          value={tee.courseRating}
          inputMode="decimal"
          hint={tee.holes.length === 9 ? 'Such as 34.6, for nine holes.' : 'Such as 69.2, for eighteen holes.'}
          onChange={(event) => onChange({ ...tee, courseRating: event.target.value })}
          required
        />
        <Field
          name={`${at}.slopeRating`}
          label="Slope rating"
          value={tee.slopeRating}
          inputMode="numeric"
          hint="55 to 155"
          onChange={(event) => onChange({ ...tee, slopeRating: event.target.value })}
          required
        />
      </div>
      {halves.map((from) => (
        <div key={from} className="scroll" role="group" aria-label={`Holes ${from + first} to ${from + first + 8}`}>
          <table className="keyed card-cells">
            <caption className="unseen">
              {tee.name}, {tee.gender}, holes {from + first} to {from + first + 8}
            </caption>
            <thead>
              <tr>
                <th scope="row" className="lead-col">
                  Hole
                </th>
                {Array.from({ length: 9 }, (_one, index) => from + index + first).map((hole) => (
                  <th key={hole} scope="col" className="fig">
                    {hole}
                  </th>
                ))}
                <th scope="col" className="tot">
                  {from + first === 1 ? 'Out' : 'In'}
                </th>
              </tr>
            </thead>
            <tbody>
              {ROWS.map(({ cell, label, most }, row) => (
                <tr key={cell}>
                  <th scope="row" className="lead-col">
                    {label}
                  </th>
                  {tee.holes.slice(from, from + 9).map((hole, one) => {
                    const index = from + one
                    const wrong = cellFault(tee, index, cell) ?? faultAt(`${at}.holes[${index}].${cell}`)
                    return (
                      <td key={`${cell} ${index}`}>
                        <input
                          id={cellId(place, index, row)}
                          name={`${at}.holes[${index}].${cell}`}
                          className={wrong ? 'cell fig wrong' : 'cell fig'}
                          inputMode="numeric"
                          maxLength={most}
                          autoComplete="off"
                          value={hole[cell]}
                          aria-label={`${label}, hole ${index + first}`}
                          aria-invalid={wrong ? true : undefined}
                          title={wrong ?? undefined}
                          onChange={(event) => put(index, cell, event.target.value)}
                          onPaste={(event) => onPaste(event, index, cell)}
                          onKeyDown={(event) => onKeyDown(event, index, row)}
                        />
                      </td>
                    )
                  })}
                  <td className="tot fig">{cell === 'strokeIndex' ? '' : sum(from, cell) || ''}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      ))}
      {faults.length > 0 ? (
        <ul className="cell-faults" aria-live="polite">
          {faults.map((fault) => (
            <li key={fault.key}>{fault.sentence}</li>
          ))}
        </ul>
      ) : null}
      {advice ? <p className="small second">{advice}</p> : null}
      {tee.nine !== undefined ? (
        <p className="small second">
          Only for days of nine holes. Its course and slope rating are those of these nine holes, from the card of the
          club: they cannot be worked out from those of eighteen. Rules of Handicapping 6.1b
        </p>
      ) : null}
      {tee.holes.length === 9 && tee.nine === undefined ? (
        <>
          <p className="small second">
            A golf day can have these nine holes once or twice. Twice, the course rating is doubled and the slope kept:
            house rule, common practice. If the card prints a rating for eighteen holes, add it.
          </p>
          <p className="acts">
            <button type="button" className="btn plain" onClick={onTwice}>
              Add the printed rating for eighteen holes
            </button>
          </p>
        </>
      ) : null}
      {tee.holes.length === 18 ? (
        <p className="acts">
          <button type="button" className="btn plain" onClick={() => onNine(1)}>
            Rate the front nine by itself
          </button>
          <button type="button" className="btn plain" onClick={() => onNine(10)}>
            Rate the back nine by itself
          </button>
        </p>
      ) : null}
      {only ? null : (
        <p className="acts">
          <button type="button" className="btn plain" onClick={onLeaveOut}>
            Leave out {tee.name || 'these tees'}
          </button>
        </p>
      )}
    </fieldset>
  )
}

const cellId = (tee: number, hole: number, row: number) => `cell-${tee}-${hole}-${row}`
