'use client'

import { type ReactNode, useState } from 'react'
import { ActForm, useFormNow } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Send } from '@/app/desk/_form/field'
import { StartsAgain } from '@/app/desk/_form/unsaved'
import { list } from '@/app/desk/_frame/words'
import { type DrawnDay, ifWithdrawn } from '@/lib/boards/withdrawal'
import type { EntryId, PersonId, RoundTeeId } from '@/lib/facts/ids'
import { fullName } from '@/lib/facts/person-name'
import type { Gender } from '@/lib/rules/day'

export interface EntryLine {
  readonly personId: PersonId
  readonly entryId: EntryId | null
  readonly firstName: string
  readonly familyName: string
  readonly knownAs: string | null
  readonly gender: Gender
  readonly regular: boolean
  readonly guestOf: string | null
  readonly figure: string
  readonly status: 'entered' | 'waiting' | 'withdrawn' | null
  readonly roundTeeId: RoundTeeId | null
}

interface Tee {
  readonly id: string
  readonly name: string
  readonly gender: Gender
  readonly isDefault: boolean
}

interface Props {
  readonly action: FormAction
  readonly lines: readonly EntryLine[]
  readonly tees: readonly Tee[]
  readonly drawn: DrawnDay
  readonly shut: string | null
  readonly children: ReactNode
}

const isIn = (line: EntryLine) => line.status === 'entered' || line.status === 'waiting'

/** The whole society with a tick for who plays. One press keeps all the changes. */
export const EntryList = (props: Props) => (
  <StartsAgain>
    <Entries {...props} />
  </StartsAgain>
)

function Entries({ action, lines, tees, drawn, shut, children }: Props) {
  const [ticked, setTicked] = useState(() => new Set(lines.filter(isIn).map((line) => line.personId)))
  const [known, setKnown] = useState(lines)
  const [search, setSearch] = useState('')
  if (known !== lines) {
    // The page was read again: what another desk changed is taken over, what was ticked here and not sent stays.
    const was = new Map(known.map((line) => [line.personId, isIn(line)]))
    const moved = lines.filter((line) => was.get(line.personId) !== isIn(line))
    setKnown(lines)
    setTicked((now) => {
      const next = new Set(now)
      for (const line of moved) isIn(line) ? next.add(line.personId) : next.delete(line.personId)
      return next
    })
  }
  const words = search.trim().toLowerCase()
  const matches = (line: EntryLine) => fullName(line).toLowerCase().includes(words)
  const fresh = lines.filter((line) => ticked.has(line.personId) && !isIn(line))
  const gone = lines.filter((line) => !ticked.has(line.personId) && isIn(line))
  const { against, sentences } = ifWithdrawn(
    drawn,
    gone.flatMap((line) => line.entryId ?? []),
  )
  const regulars = lines.filter((line) => line.regular && line.guestOf === null && line.status === null)

  const tick = (personIds: readonly PersonId[], on: boolean) =>
    setTicked((now) => {
      const next = new Set(now)
      for (const id of personIds) on ? next.add(id) : next.delete(id)
      return next
    })

  const found = lines.filter(matches)
  const toEnter = fresh.length > 0 ? `To enter: ${namesToSay(fresh)}. ` : ''
  const toWithdraw = gone.length > 0 ? `To withdraw: ${namesToSay(gone)}.` : ''
  return (
    <ActForm
      action={action}
      label="Entries"
      className="entries"
      saves
      {...(fresh.length + gone.length > 0 ? { unsaved: `${toEnter}${toWithdraw}`.trim() } : {})}
    >
      {children}
      {lines.filter(isIn).map((line) => (
        <input key={line.personId} type="hidden" name="was" value={`${line.personId} ${line.entryId}`} />
      ))}
      <div className="list-head">
        <div className="field">
          <label htmlFor="find-member">Find a player</label>
          <input
            id="find-member"
            type="search"
            value={search}
            autoComplete="off"
            onChange={(event) => setSearch(event.target.value)}
            onKeyDown={(event) => {
              if (event.key !== 'Enter') return
              // Type a name, press Enter: in. The next name follows at once.
              event.preventDefault()
              const [only] = found
              if (only && found.length === 1 && !shut) {
                tick([only.personId], !ticked.has(only.personId))
                setSearch('')
              }
            }}
          />
          <p className="hint">{words ? `${found.length} found. ` : ''}Press Enter to tick the only one found.</p>
        </div>
        {shut ? null : (
          <p className="acts">
            <button
              type="button"
              className="btn"
              aria-disabled={regulars.length === 0 || undefined}
              onClick={() =>
                tick(
                  regulars.map((line) => line.personId),
                  true,
                )
              }
            >
              All regulars
            </button>
          </p>
        )}
      </div>
      <ul className="entry-list">
        {lines.map((line) => (
          <li key={line.personId} hidden={!matches(line)} className={line.status ?? undefined}>
            <label className="choice">
              <input
                type="checkbox"
                name="enter"
                value={line.personId}
                checked={ticked.has(line.personId)}
                disabled={shut !== null}
                onChange={(event) => tick([line.personId], event.target.checked)}
              />
              <span>
                {line.firstName} <b>{line.familyName}</b> {line.knownAs ? `(${line.knownAs}) ` : ''}
                <span className="fig">{line.figure}</span>
                <Note line={line} />
              </span>
            </label>
            <TeeChoice line={line} tees={tees} shown={ticked.has(line.personId) && !shut} />
          </li>
        ))}
      </ul>
      {shut ? (
        <p className="second">{shut}</p>
      ) : (
        <div className="keep-bar">
          <div aria-live="polite" className="keep-words">
            {fresh.length > 0 ? <p>To enter: {namesToSay(fresh)}.</p> : null}
            {gone.length > 0 ? (
              <>
                <p>
                  <b>To withdraw: {namesToSay(gone)}.</b>
                </p>
                <ul className="small">
                  {[...against, ...sentences].map((sentence) => (
                    <li key={sentence}>{sentence}</li>
                  ))}
                </ul>
              </>
            ) : null}
          </div>
          <EnterOthers fresh={fresh} />
          <Send kind="first" why={against.length > 0 && 'there are scores on a card'}>
            {keepWords(fresh.length, gone.length)}
          </Send>
        </div>
      )}
    </ActForm>
  )
}

/** Somebody has no tee on this day: the others need not wait for it. */
function EnterOthers({ fresh }: { readonly fresh: readonly EntryLine[] }) {
  const { refused } = useFormNow()
  if (refused?.code !== 'without-tee') return null
  const without = refused.faults.map((fault) => fault.place)
  const left = fresh.filter((line) => without.includes(line.personId))
  const others = fresh.length - left.length
  if (left.length === 0 || others === 0) return null
  return (
    <Send name="without" value={without.join(' ')}>
      Enter {others === 1 ? 'the other one' : `the other ${others}`}, without {namesToSay(left)}
    </Send>
  )
}

/** Thirty names in a bar would hide the list; a few are read through before pressing. */
const namesToSay = (lines: readonly EntryLine[]) =>
  lines.length > 8
    ? `${lines.slice(0, 6).map(fullName).join(', ')} and ${lines.length - 6} more`
    : list(lines.map(fullName))

function keepWords(fresh: number, gone: number): string {
  const parts = [fresh > 0 ? `enter ${fresh}` : '', gone > 0 ? `withdraw ${gone}` : ''].filter(Boolean)
  const words = parts.length > 0 ? parts.join(', ') : 'save the list'
  return words.charAt(0).toUpperCase() + words.slice(1)
}

function Note({ line }: { readonly line: EntryLine }) {
  const words = [
    line.guestOf ? `guest of ${line.guestOf}` : null,
    line.status === 'waiting' ? 'on the waiting list' : null,
    line.status === 'withdrawn' ? 'withdrawn' : null,
    line.regular || line.guestOf ? null : 'not a regular',
  ].filter(Boolean)
  return words.length > 0 ? <span className="hint">{words.join(', ')}</span> : null
}

function TeeChoice({
  line,
  tees,
  shown,
}: {
  readonly line: EntryLine
  readonly tees: readonly Tee[]
  readonly shown: boolean
}) {
  const own = tees.filter((tee) => tee.gender === line.gender)
  if (own.length < 2 || !shown) return null
  return (
    <select
      className="cell tee"
      name={`tee-${line.personId}`}
      aria-label={`Tees of ${fullName(line)}`}
      defaultValue={line.roundTeeId ?? own.find((tee) => tee.isDefault)?.id}
    >
      {own.map((tee) => (
        <option key={tee.id} value={tee.id}>
          {tee.name}
        </option>
      ))}
    </select>
  )
}
