'use client'

import type { ReactNode } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Choice, Send } from '@/app/desk/_form/field'
import type { EntryId } from '@/lib/facts/ids'
import { pairings } from './groups'

interface Props {
  readonly action: FormAction
  readonly competition: { readonly id: string; readonly name: string; readonly size: number }
  readonly groups: readonly { readonly number: number; readonly entryIds: readonly EntryId[] }[]
  readonly sides: readonly (readonly EntryId[])[]
  readonly names: Readonly<Record<string, string>>
  readonly shut: boolean
  readonly children: ReactNode
}

/** Who plays with whom in a competition of sides, group by group. */
export function SidesForm({ action, competition, groups, sides, names, shut, children }: Props) {
  // A side made across two groups is changed in the room for sides and matches; here it is kept as it is.
  const across = sides.filter((side) => !groups.some(({ entryIds }) => side.every((id) => entryIds.includes(id))))
  const taken = new Set(across.flat())
  const now = (ids: readonly string[]) => {
    const inside = sides.filter((side) => side.every((id) => ids.includes(id))).map((side) => [...side])
    return inside.flat().length === ids.length ? inside : []
  }
  const say = (pairing: readonly (readonly string[])[]) =>
    pairing.map((side) => side.map((id) => names[id] ?? '?').join(' & ')).join(', ')
  const alike = (one: readonly (readonly string[])[], other: readonly (readonly string[])[]) =>
    JSON.stringify(one.map((side) => [...side].sort()).sort()) ===
    JSON.stringify(other.map((side) => [...side].sort()).sort())
  return (
    <ActForm action={action} label={`Sides of ${competition.name}`} className="sides-form" saves>
      {children}
      <input type="hidden" name="competitionId" value={competition.id} />
      {across.map((side) => (
        <input key={side.join()} type="hidden" name="pairing" value={JSON.stringify([side])} />
      ))}
      <ol className="side-groups">
        {groups.map((group) => {
          const free = group.entryIds.filter((id) => !taken.has(id))
          const choices = pairings(free, competition.size)
          const drawn = now(free)
          const known = choices.some((one) => alike(one, drawn))
          const all = drawn.length > 0 && !known ? [drawn, ...choices] : choices
          const chosen = drawn.length > 0 ? drawn : choices[0]
          return (
            <li key={group.number}>
              <fieldset disabled={shut}>
                <legend>Group {group.number}</legend>
                {all.map((pairing) => (
                  <Choice
                    key={say(pairing)}
                    type="radio"
                    name={`group-${group.number}`}
                    value={JSON.stringify(pairing)}
                    initial={chosen !== undefined && alike(pairing, chosen)}
                  >
                    {say(pairing)}
                  </Choice>
                ))}
              </fieldset>
            </li>
          )
        })}
      </ol>
      {shut ? null : (
        <p className="acts">
          <Send>Keep the sides of {competition.name}</Send>
        </p>
      )}
    </ActForm>
  )
}
