import type { ReactNode } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { SelectField, Send } from '@/app/desk/_form/field'

interface Props {
  readonly action: FormAction
  readonly competition: { readonly id: string; readonly name: string }
  /** Players, or sides, in the order of the draw. */
  readonly ends: readonly { readonly id: string; readonly name: string }[]
  readonly pairings: readonly { readonly a: string; readonly b: string }[]
  readonly children: ReactNode
}

/** Who plays whom, a line a match; two empty lines for more. */
export function PairingsForm({ action, competition, ends, pairings, children }: Props) {
  const options = [{ value: '', label: '–' }, ...ends.map(({ id, name }) => ({ value: id, label: name }))]
  const lines = [...pairings, { a: '', b: '' }, { a: '', b: '' }]
  const paired = new Set(pairings.flatMap(({ a, b }) => [a, b]))
  const left = ends.filter((one) => !paired.has(one.id))
  return (
    <ActForm action={action} label={`Matches of ${competition.name}`} saves>
      {children}
      <input type="hidden" name="competitionId" value={competition.id} />
      <ol className="pairing-lines">
        {lines.map(({ a, b }, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place in the order, nothing else
          <li key={at} className="fields">
            <SelectField name="a" label={`Match ${at + 1}`} initial={a} options={options} />
            <SelectField name="b" label="against" initial={b} options={options} />
          </li>
        ))}
      </ol>
      {left.length > 0 && pairings.length > 0 ? (
        <p className="small second">Without a match: {left.map((one) => one.name).join(', ')}.</p>
      ) : null}
      <p className="acts">
        <Send saves>Keep the matches</Send>
        <Send name="then" value="make">
          Pair them from the draw
        </Send>
      </p>
    </ActForm>
  )
}
