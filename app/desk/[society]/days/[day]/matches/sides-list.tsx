import type { ReactNode } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, SelectField, Send } from '@/app/desk/_form/field'
import type { PlayerAtDesk } from '@/lib/boards/desk-matches-view'

interface Props {
  readonly action: FormAction
  readonly competition: { readonly id: string; readonly name: string; readonly size: number }
  readonly players: readonly PlayerAtDesk[]
  readonly sides: readonly (readonly string[])[]
  /** What the sides are called; null where they go by their players. */
  readonly names: readonly (string | null)[]
  readonly children: ReactNode
}

/** Every player with the number of the side: any size, and across as many groups as it takes. */
export function SidesList({ action, competition, players, sides, names, children }: Props) {
  const most = Math.max(sides.length, Math.ceil(players.length / competition.size)) + 1
  const options = [
    { value: '', label: 'in no side' },
    ...Array.from({ length: most }, (_, at) => ({ value: String(at + 1), label: `side ${at + 1}` })),
  ]
  const short = sides.filter((side) => side.length < competition.size).length
  return (
    <ActForm action={action} label={`Sides of ${competition.name}`} saves>
      {children}
      <input type="hidden" name="competitionId" value={competition.id} />
      <p className="small second">
        Sides of {competition.size}.{' '}
        {short > 0
          ? `${short === 1 ? 'One of them is' : `${short} of them are`} short; the terms say what a missing player counts as. `
          : ''}
        The order inside a side is the order of this list.
      </p>
      <div className="fields">
        {players.map(({ entryId, name, handicap, group }) => (
          <SelectField
            key={entryId}
            name={`side-${entryId}`}
            label={group === null ? `${name}, ${handicap}` : `${name}, ${handicap}, group ${group}`}
            initial={String(sides.findIndex((side) => side.includes(entryId)) + 1 || '')}
            options={options}
          />
        ))}
      </div>
      {sides.length > 0 ? (
        <div className="fields">
          {sides.map((side, at) => (
            <Field
              key={side.join(' ')}
              name={`name-${at + 1}`}
              label={`Name of side ${at + 1}`}
              initial={names[at] ?? ''}
              hint={at === 0 ? 'Empty: by the names of the players.' : undefined}
              maxLength={40}
            />
          ))}
        </div>
      ) : null}
      <div className="fields">
        <Field name="seed" label="Number of the lot" hint="Empty: a new one." inputMode="numeric" />
      </div>
      <p className="acts">
        <Send saves>Keep the sides of {competition.name}</Send>
        <Send name="then" value="make">
          Make them even by handicap
        </Send>
      </p>
    </ActForm>
  )
}
