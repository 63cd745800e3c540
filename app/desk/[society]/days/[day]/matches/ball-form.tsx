import type { ReactNode } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { SelectField, Send } from '@/app/desk/_form/field'
import type { EntryId } from '@/lib/facts/ids'

interface Props {
  readonly action: FormAction
  readonly side: { readonly id: string; readonly name: string }
  readonly players: readonly { readonly entryId: EntryId; readonly name: string }[]
  /** Numbers of the holes, in card order. */
  readonly holes: readonly number[]
  readonly kind: 'drives' | 'named-ball'
  readonly drives: readonly (string | null)[]
  readonly ballLostOn: number | null
  readonly children: ReactNode
}

/** What the paper card says of the side's ball. */
export function BallForm({ action, side, players, holes, kind, drives, ballLostOn, children }: Props) {
  return (
    <ActForm action={action} label={`The ball of ${side.name}`} saves>
      {children}
      <input type="hidden" name="sideId" value={side.id} />
      <div className="fields">
        {kind === 'drives' ? (
          holes.map((hole, place) => (
            <SelectField
              key={hole}
              name="drive"
              label={`Drive, hole ${hole}`}
              initial={drives[place] ?? ''}
              options={[
                { value: '', label: '–' },
                ...players.map(({ entryId, name }) => ({ value: entryId, label: name })),
              ]}
            />
          ))
        ) : (
          <SelectField
            name="ballLostOn"
            label="The yellow ball"
            initial={ballLostOn === null ? '' : String(ballLostOn)}
            options={[
              { value: '', label: 'came home' },
              ...holes.map((hole) => ({ value: String(hole), label: `lost on hole ${hole}` })),
            ]}
          />
        )}
      </div>
      <p className="acts">
        <Send>Keep it</Send>
      </p>
    </ActForm>
  )
}
