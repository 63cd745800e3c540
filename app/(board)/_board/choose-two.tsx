// A plain form: two lists and a button, so that the address of a match can be written by hand and sent to a friend.

import { Act } from '@/app/_parts/act'
import { Select } from '@/app/_parts/field'
import { matchAt } from './addresses'

export interface TwoOf {
  readonly societySlug: string
  readonly daySlug: string
  readonly players: readonly { readonly entryId: string; readonly name: string }[]
  readonly a?: string
  readonly b?: string
}

export function ChooseTwo({ sheet }: { sheet: TwoOf }) {
  const options = sheet.players.map(({ entryId, name }) => (
    <option key={entryId} value={entryId}>
      {name}
    </option>
  ))
  return (
    <form className="match-choose" action={matchAt(sheet.societySlug, sheet.daySlug)}>
      <Select label="One card" name="a" defaultValue={sheet.a ?? ''} required>
        <option value="">Choose a player</option>
        {options}
      </Select>
      <Select label="against" name="b" defaultValue={sheet.b ?? ''} required>
        <option value="">Choose a player</option>
        {options}
      </Select>
      <Act kind="first">See the match</Act>
    </form>
  )
}
