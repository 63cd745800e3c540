'use client'

import { useState } from 'react'
import type { MemberRowToLookAt } from '@/lib/boards/desk-views'
import { type Mendable, SOMEBODY_NEW } from '@/lib/facts/member-import'
import type { PartProps } from './part-props'

const CELL: Readonly<Record<Mendable, string>> = {
  firstName: 'First name',
  familyName: 'Family name',
  knownAs: 'Told apart by',
  gender: 'Men or women',
  figure: 'Handicap',
  email: 'E-mail',
  phone: 'Telephone',
  memberSince: 'Member since',
  membershipNumber: 'Membership number',
  homeClub: 'Home club',
  labels: 'Tags',
}
/** What a member can be imported without. */
const MAY_BE_EMPTY: readonly Mendable[] = [
  'figure',
  'email',
  'phone',
  'memberSince',
  'membershipNumber',
  'homeClub',
  'labels',
]

/** Rows that cannot be imported as they are: put right in place, or left out. */
export function RowsToLookAt({ preview, choices, onChange }: PartProps) {
  const { look } = preview
  if (look.length === 0) return null
  const leaveOut = (rows: readonly number[]) => onChange({ leftOut: [...choices.leftOut, ...rows] })
  const mend = (row: number, cells: Partial<Record<Mendable, string>>) =>
    onChange({ mended: { ...choices.mended, [row]: { ...choices.mended[row], ...cells } } })
  return (
    <section aria-labelledby="look-h">
      <h3 id="look-h">{look.length === 1 ? 'One row needs a look' : `${look.length} rows need a look`}</h3>
      <ul className="rows-to-look">
        {look.map((row) => (
          <li key={`${row.row} ${row.cells.map((one) => one.cell).join()}`}>
            <p className="row-number fig">
              <span className="unseen">Row </span>
              {row.row}
            </p>
            <div>
              <p>
                <b>{row.name}</b>
              </p>
              {row.sentences.map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
              <Mend row={row} onMend={(cells) => mend(row.row, cells)} />
              {row.who ? (
                <Who row={row} onWho={(who) => onChange({ who: { ...choices.who, [row.row]: who } })} />
              ) : null}
            </div>
            <button type="button" className="btn plain" onClick={() => leaveOut([row.row])}>
              Leave row {row.row} out
            </button>
          </li>
        ))}
      </ul>
      {look.length > 1 ? (
        <p className="acts">
          <button type="button" className="btn" onClick={() => leaveOut(look.map((one) => one.row))}>
            Leave all {look.length} out
          </button>
        </p>
      ) : null}
    </section>
  )
}

function Mend(props: {
  readonly row: MemberRowToLookAt
  readonly onMend: (cells: Partial<Record<Mendable, string>>) => void
}) {
  const { row, onMend } = props
  const [typed, setTyped] = useState<Partial<Record<Mendable, string>>>({})
  if (row.cells.length === 0) return null
  const empty = row.cells.filter(({ cell }) => MAY_BE_EMPTY.includes(cell))
  const onlyGender = row.cells.length === 1 && row.cells[0]?.cell === 'gender'
  return (
    <form
      className="mend"
      onSubmit={(event) => {
        event.preventDefault()
        onMend(Object.fromEntries(row.cells.map(({ cell, written }) => [cell, typed[cell] ?? written])))
      }}
    >
      {row.cells.map(({ cell, written }) =>
        cell === 'gender' ? (
          <label key={cell}>
            {CELL[cell]}
            <select
              className="cell"
              value={typed.gender ?? ''}
              aria-label={`${CELL[cell]}, row ${row.row}`}
              onChange={(event) => {
                setTyped({ ...typed, gender: event.target.value })
                if (onlyGender) onMend({ gender: event.target.value })
              }}
            >
              <option value="">choose</option>
              <option value="men">men</option>
              <option value="women">women</option>
            </select>
          </label>
        ) : (
          <label key={cell}>
            {CELL[cell]}
            <input
              className="cell"
              value={typed[cell] ?? written}
              aria-label={`${CELL[cell]}, row ${row.row}`}
              maxLength={200}
              onChange={(event) => setTyped({ ...typed, [cell]: event.target.value })}
            />
          </label>
        ),
      )}
      {onlyGender ? null : (
        <button type="submit" className="btn">
          Put right
        </button>
      )}
      {empty.length === row.cells.length ? (
        <button
          type="button"
          className="btn plain"
          onClick={() => onMend(Object.fromEntries(row.cells.map(({ cell }) => [cell, ''])))}
        >
          Import without {row.cells.map(({ cell }) => CELL[cell].toLowerCase()).join(' and ')}
        </button>
      ) : null}
    </form>
  )
}

function Who({ row, onWho }: { readonly row: MemberRowToLookAt; readonly onWho: (who: string) => void }) {
  const people = row.who ?? []
  return (
    <p className="acts">
      {people.map((one) => (
        <button key={one.personId} type="button" className="btn" onClick={() => onWho(one.personId)}>
          {people.length === 1 ? 'The same person' : 'This one'}: {one.said}
        </button>
      ))}
      <button type="button" className="btn" onClick={() => onWho(SOMEBODY_NEW)}>
        {people.length === 0 ? 'Two people' : 'Somebody else of that name'}
      </button>
    </p>
  )
}
