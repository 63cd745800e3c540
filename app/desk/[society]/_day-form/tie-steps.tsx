'use client'

import { useEffect, useRef, useState } from 'react'
import { capital } from '@/lib/boards/in-words'
import type { CompetitionTerms } from '@/lib/facts/terms'
import { stepInWords } from '@/lib/rules/ties/windows'
import { newLot } from './more-draft'

type Ties = CompetitionTerms['ties']
type Step = Ties['steps'][number]

interface Props {
  readonly at: string
  readonly ties: Ties
  readonly onChange: (ties: Ties) => void
  readonly wrong: (place: string) => string | undefined
}

/** The tie rule as a list that is tried from the top; steps move by their buttons, or with Alt and the arrow keys. */
export function TieSteps({ at, ties, onChange, wrong }: Props) {
  const { steps } = ties
  const list = useRef<HTMLOListElement>(null)
  // Moving a row takes the focus from it; it goes back to the row, wherever that is now.
  const [focus, setFocus] = useState<{ row: number; way: string } | null>(null)
  const [said, setSaid] = useState('')
  useEffect(() => {
    if (focus === null) return
    const row = list.current?.children[focus.row]
    const button = row?.querySelector<HTMLButtonElement>(`[data-way="${focus.way}"]:not([aria-disabled])`)
    ;(button ?? row?.querySelector('button'))?.focus()
    setFocus(null)
  }, [focus])

  const put = (changed: readonly Step[]) => onChange({ ...ties, steps: [...changed] })
  const move = (row: number, to: number, way: string) => {
    const step = steps[row]
    if (!step || to < 0 || to >= steps.length) return
    const rest = steps.filter((_, index) => index !== row)
    put([...rest.slice(0, to), step, ...rest.slice(to)])
    setFocus({ row: to, way })
    setSaid(`${capital(stepInWords(step))} is step ${to + 1} of ${steps.length}.`)
  }
  return (
    <div className="tie-steps">
      <h3>Ties, step by step</h3>
      <p className="small second">
        Tried from the top until somebody is ahead. Move a step with its buttons, or with Alt and the arrow keys.
      </p>
      <ol ref={list}>
        {steps.map((step, row) => {
          const name = stepInWords(step)
          const fault = wrong(`${at}.terms.ties.steps[${row}]`)
          return (
            <li
              // biome-ignore lint/suspicious/noArrayIndexKey: two steps may be the same, and their order is all there is to them
              key={row}
              onKeyDown={(event) => {
                const by = event.altKey ? { ArrowUp: -1, ArrowDown: 1 }[event.key] : undefined
                if (by === undefined) return
                event.preventDefault()
                move(row, row + by, by < 0 ? 'up' : 'down')
              }}
            >
              <span className="step-name">
                {capital(name)}
                {step.kind === 'lot' ? <span className="second"> number {step.seed}, kept with the terms</span> : null}
                {step.kind === 'play-off' ? (
                  <span className="second"> the result is entered after the day, under Result</span>
                ) : null}
                {fault ? <span className="why"> {fault}</span> : null}
              </span>
              <span className="step-acts">
                <button
                  type="button"
                  className="btn plain"
                  data-way="up"
                  aria-label={`Move ${name} up`}
                  aria-disabled={row === 0 || undefined}
                  onClick={() => move(row, row - 1, 'up')}
                >
                  Up
                </button>
                <button
                  type="button"
                  className="btn plain"
                  data-way="down"
                  aria-label={`Move ${name} down`}
                  aria-disabled={row === steps.length - 1 || undefined}
                  onClick={() => move(row, row + 1, 'down')}
                >
                  Down
                </button>
                <button
                  type="button"
                  className="btn plain"
                  data-way="out"
                  aria-label={`Take ${name} out`}
                  onClick={() => {
                    put(steps.filter((_, index) => index !== row))
                    setFocus({ row: Math.max(0, Math.min(row, steps.length - 2)), way: 'out' })
                    setSaid(`${capital(name)} is taken out.`)
                  }}
                >
                  Take out
                </button>
              </span>
            </li>
          )
        })}
      </ol>
      <p className="small second">
        {steps.length === 0
          ? 'No steps: whoever is level shares the place.'
          : steps.some((step) => step.kind === 'lot')
            ? null
            : 'Still level after that: the place is shared.'}
      </p>
      <AddStep
        at={at}
        onAdd={(step) => {
          put([...steps, step])
          setSaid(`${capital(stepInWords(step))} is step ${steps.length + 1}.`)
        }}
      />
      <p role="status" className="unseen">
        {said}
      </p>
    </div>
  )
}

export const STEP_KINDS: readonly { readonly kind: Step['kind']; readonly label: string }[] = [
  { kind: 'last', label: 'Last … holes of the round' },
  { kind: 'first-nine-last', label: 'Last … holes of the first nine' },
  { kind: 'holes', label: 'Holes by number, from … to …' },
  { kind: 'lower-handicap', label: 'Lower handicap' },
  { kind: 'higher-handicap', label: 'Higher handicap' },
  { kind: 'play-off', label: 'Play-off, result entered afterwards' },
  { kind: 'lot', label: 'Lot, with a number anybody can draw again' },
]

function AddStep({ at, onAdd }: { readonly at: string; readonly onAdd: (step: Step) => void }) {
  const [kind, setKind] = useState<Step['kind']>('last')
  const [holes, setHoles] = useState(9)
  const [from, setFrom] = useState(10)
  const [to, setTo] = useState(18)
  const step = (): Step => {
    switch (kind) {
      case 'last':
      case 'first-nine-last':
        return { kind, holes }
      case 'holes':
        return { kind, from, to }
      case 'lot':
        return { kind, seed: newLot() }
      case 'play-off':
        return { kind, order: [] }
      default:
        return { kind }
    }
  }
  const counted = kind === 'last' || kind === 'first-nine-last'
  const most = kind === 'first-nine-last' ? 9 : 18
  const fits = counted ? holes >= 1 && holes <= most : kind !== 'holes' || (from >= 1 && to <= 18 && from <= to)
  const id = `${at}.new-step`
  return (
    <div className="add-step">
      <label htmlFor={id}>Another step</label>
      <select id={id} className="cell" value={kind} onChange={(event) => setKind(event.target.value as Step['kind'])}>
        {STEP_KINDS.map((one) => (
          <option key={one.kind} value={one.kind}>
            {one.label}
          </option>
        ))}
      </select>
      {counted ? <HoleNumber label="How many holes" value={holes} most={most} onChange={setHoles} /> : null}
      {kind === 'holes' ? (
        <>
          <HoleNumber label="From hole" value={from} most={18} onChange={setFrom} />
          <HoleNumber label="To hole" value={to} most={18} onChange={setTo} />
        </>
      ) : null}
      <button type="button" className="btn" aria-disabled={!fits || undefined} onClick={() => fits && onAdd(step())}>
        Add the step
      </button>
    </div>
  )
}

function HoleNumber({
  label,
  value,
  most,
  onChange,
}: {
  readonly label: string
  readonly value: number
  readonly most: number
  readonly onChange: (value: number) => void
}) {
  return (
    <label className="small-number">
      {label}
      <input
        className="cell fig"
        type="number"
        min={1}
        max={most}
        value={value}
        onChange={(event) => onChange(Number(event.target.value))}
      />
    </label>
  )
}
