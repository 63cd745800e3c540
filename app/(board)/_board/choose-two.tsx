// A plain form: two lists, two more for partners, and a button, so that the address of a match can be written by hand
// and sent to a friend.

import { Act } from '@/app/_parts/act'
import { Select } from '@/app/_parts/field'
import type { EntryId } from '@/lib/facts/ids'
import { matchAt } from './addresses'

export interface TwoOf {
  readonly societySlug: string
  readonly daySlug: string
  readonly players: readonly { readonly entryId: EntryId; readonly name: string }[]
  readonly a?: string
  readonly b?: string
  /** Partners, for four cards as a four-ball. */
  readonly a2?: string
  readonly b2?: string
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
      <details className="match-partners" open={sheet.a2 !== undefined || sheet.b2 !== undefined}>
        <summary>With partners, as a four-ball</summary>
        <div className="match-choose">
          <Select label="Partner of the one" name="a2" defaultValue={sheet.a2 ?? ''}>
            <option value="">Nobody</option>
            {options}
          </Select>
          <Select label="Partner of the other" name="b2" defaultValue={sheet.b2 ?? ''}>
            <option value="">Nobody</option>
            {options}
          </Select>
        </div>
      </details>
      <Act kind="first">See the match</Act>
    </form>
  )
}
