import type { ReactNode } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, SelectField, Send } from '@/app/desk/_form/field'
import type { PlayerAtDesk } from '@/lib/boards/desk-matches-view'
import type { EntryId } from '@/lib/facts/ids'

interface Props {
  readonly action: FormAction
  readonly players: readonly PlayerAtDesk[]
  readonly teams: readonly { readonly name: string; readonly entryIds: readonly EntryId[] }[]
  readonly children: ReactNode
}

/** Two teams at least; a third and a fourth where the society has them. */
export function TeamsForm({ action, players, teams, children }: Props) {
  const names = [...teams.map((team) => team.name), '', '', '', ''].slice(0, Math.max(2, Math.min(8, teams.length + 1)))
  const options = [
    { value: '', label: 'in no team' },
    ...names.map((name, at) => ({ value: String(at + 1), label: name || `team ${at + 1}` })),
  ]
  return (
    <ActForm action={action} label="Teams" saves>
      {children}
      <div className="fields">
        {names.map((name, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a team is its place in the order until it has a name
          <Field key={at} name="team" label={`Team ${at + 1}`} initial={name} maxLength={60} />
        ))}
      </div>
      <div className="fields">
        {players.map(({ entryId, name, handicap }) => (
          <SelectField
            key={entryId}
            name={`in-team-${entryId}`}
            label={`${name}, ${handicap}`}
            initial={String(teams.findIndex((team) => team.entryIds.includes(entryId)) + 1 || '')}
            options={options}
          />
        ))}
      </div>
      <div className="fields">
        <Field name="seed" label="Number of the lot" hint="Empty: a new one." inputMode="numeric" />
      </div>
      <p className="acts">
        <Send saves>Keep the teams</Send>
        <Send name="then" value="make">
          Share the field out by handicap
        </Send>
      </p>
    </ActForm>
  )
}
