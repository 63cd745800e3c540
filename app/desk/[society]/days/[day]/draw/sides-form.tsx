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
  const now = (ids: readonly string[]) =>
    sides.filter((side) => side.every((id) => ids.includes(id))).map((side) => [...side])
  const of = (id: string) => names[id] ?? '?'
  const say = (pairing: readonly (readonly string[])[], ids: readonly string[]) =>
    [
      ...pairing.map((side) => (side.length === 1 ? `${of(side[0]!)} plays alone` : side.map(of).join(' & '))),
      ...ids.filter((id) => !pairing.some((side) => side.includes(id))).map((id) => `${of(id)} has no partner`),
    ].join(', ')
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
          const choices = pairings(free, competition.size).flatMap(withAndWithoutTheLast)
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
                    key={say(pairing, free)}
                    type="radio"
                    name={`group-${group.number}`}
                    value={JSON.stringify(pairing)}
                    initial={chosen !== undefined && alike(pairing, chosen)}
                  >
                    {say(pairing, free)}
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

/** Whoever is left over has no partner and no place; or plays alone as a side, if the committee says so. */
function withAndWithoutTheLast(pairing: readonly (readonly EntryId[])[]): readonly (readonly (readonly EntryId[])[])[] {
  const sides = pairing.filter((side) => side.length > 1)
  return sides.length === pairing.length ? [pairing] : [sides, pairing]
}
