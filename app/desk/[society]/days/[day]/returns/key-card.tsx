'use client'

import { type KeyboardEvent, useEffect, useRef, useState } from 'react'
import { ActForm, useFormNow } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Choice } from '@/app/desk/_form/field'
import type { CardReturn } from '@/lib/boards/returns-view'
import { HEADS, KeyedNine, worth } from './keyed-nine'
import { againstPaper, beginKeying, type Keying, pressed, readKeyed, runOf } from './keying'
import { PaperTotals } from './paper-totals'
import type { Reading } from './reading'

interface Props {
  readonly card: CardReturn
  readonly reading: Reading
  readonly keep: FormAction
  readonly shut: boolean
}

/** The paper card under the hand. Everything works from the number row; nothing needs the mouse. */
export function KeyCard({ card, reading, keep, shut }: Props) {
  const [now, setNow] = useState<Keying>(() => beginKeying(card.holes.map((hole) => hole.score)))
  const [paper, setPaper] = useState<readonly [number | null, number | null]>([null, null])
  const table = useRef<HTMLDivElement>(null)
  const takeIn = useRef<HTMLButtonElement>(null)
  const moved = useRef(false)

  useEffect(() => {
    if (!moved.current) return
    const field = table.current?.querySelector<HTMLInputElement>(`[data-place="${now.at}"]`)
    field?.focus()
    field?.select()
  }, [now])

  const half = Math.min(card.holes.length, 9)
  const all = runOf(now.scores)
  const out = runOf(now.scores, 0, half)
  const home = runOf(now.scores, half)

  function onKeyDown(event: KeyboardEvent<HTMLDivElement>) {
    const { target } = event
    if (!(target instanceof HTMLInputElement) || target.dataset.place === undefined) return
    if (event.ctrlKey || event.metaKey || event.altKey) return
    if (event.key === 'Enter') {
      event.preventDefault()
      if (all.open.length === 0) takeIn.current?.click()
      return
    }
    if (event.key === 's' || event.key === 'S') {
      event.preventDefault()
      signBoth(event.currentTarget.closest('form'))
      return
    }
    const next = pressed({ ...now, at: Number(target.dataset.place) }, event.key)
    if (!next) return
    event.preventDefault()
    moved.current = true
    setNow(next)
  }

  function onTyped(place: number, text: string) {
    const score = readKeyed(text)
    if (score === 'unreadable') return
    setNow((before) => ({ ...before, scores: before.scores.with(place, score), at: place, last: place }))
  }

  const said = [
    againstPaper(out, paper[0], 'Out'),
    half < card.holes.length ? againstPaper(home, paper[1], 'In') : null,
  ].filter((line): line is string => line !== null)

  return (
    <ActForm action={keep} className="keep-card" label={`Card of ${card.name}`}>
      <input type="hidden" name="cardId" value={card.cardId} />
      <div className="keying" ref={table} onKeyDown={shut ? undefined : onKeyDown}>
        <KeyedNine
          card={card}
          reading={reading}
          from={0}
          to={half}
          now={now}
          onTyped={onTyped}
          shut={shut}
          label="Out"
        />
        {half < card.holes.length ? (
          <>
            <hr className="fold" />
            <KeyedNine
              card={card}
              reading={reading}
              from={half}
              to={card.holes.length}
              now={now}
              onTyped={onTyped}
              shut={shut}
              label="In"
            />
          </>
        ) : null}
      </div>
      <div className="check">
        <dl className="check-run">
          <div>
            <dt>gross so far</dt>
            <dd className="fig trim">{all.gross}</dd>
          </div>
          {HEADS[reading] ? (
            <div>
              <dt>{HEADS[reading].toLowerCase()} so far</dt>
              <dd className="fig trim">
                {card.holes.reduce(
                  (sum, hole, place) => sum + (worth(hole, now.scores[place] ?? null, reading) ?? 0),
                  0,
                )}
              </dd>
            </div>
          ) : null}
          <div>
            <dt>holes keyed</dt>
            <dd className="fig trim">{all.keyed}</dd>
          </div>
        </dl>
        <PaperTotals paper={paper} onPaper={setPaper} halves={half < card.holes.length} said={said} />
        {shut ? null : <PaperSigned card={card} />}
        <p className="keys small">
          <kbd>1</kbd>–<kbd>9</kbd> writes and moves on · <kbd>0</kbd> is 10, <kbd>+</kbd> one more · <kbd>N</kbd> no
          score · <kbd>←</kbd> back · <kbd>S</kbd> both signed · <kbd>Enter</kbd> takes it in
        </p>
      </div>
      {shut ? null : <KeepButtons open={all.open.length} takeIn={takeIn} holes={card.holes.length} />}
    </ActForm>
  )
}

/** The usual paper bears both signatures: one key ticks what is still open, a second press takes it back. */
function signBoth(form: HTMLFormElement | null) {
  const boxes = [...(form?.querySelectorAll<HTMLInputElement>('input[name^="signed-"]') ?? [])]
  const on = boxes.some((box) => !box.checked)
  for (const box of boxes) box.checked = on
}

/** A signature on paper is as good as one on a phone; what is signed already is not asked again. */
function PaperSigned({ card }: { readonly card: CardReturn }) {
  const open = (['player', 'marker'] as const).filter(
    (role) => !card.signatures.some((one) => one.role === role && one.covers),
  )
  if (open.length === 0) return null
  return (
    <fieldset className="paper-signed">
      <legend>On the paper stands the signature of</legend>
      {open.map((role) => (
        <Choice key={role} type="checkbox" name={`signed-${role}`}>
          {role === 'player' ? card.name : (card.marker?.name ?? 'the marker')}, {role}
        </Choice>
      ))}
    </fieldset>
  )
}

function KeepButtons({
  open,
  holes,
  takeIn,
}: {
  readonly open: number
  readonly holes: number
  readonly takeIn: React.RefObject<HTMLButtonElement | null>
}) {
  const { pending } = useFormNow()
  const words = open === holes ? 'nothing keyed yet' : `${open} ${open === 1 ? 'hole' : 'holes'} to key`
  return (
    <p className="acts">
      <button
        ref={takeIn}
        type="submit"
        name="then"
        value="take-in"
        className={open === 0 ? 'btn first' : 'btn'}
        aria-disabled={pending || open > 0 || undefined}
        onClick={(event) => {
          if (open > 0) event.preventDefault()
        }}
      >
        {open === 0 ? 'Take in' : `Take in: ${words}`}
      </button>
      <button type="submit" name="then" value="keep" className="btn">
        Keep what is keyed
      </button>
    </p>
  )
}
