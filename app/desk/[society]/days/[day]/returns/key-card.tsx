'use client'

import { type KeyboardEvent, useEffect, useRef, useState } from 'react'
import { ActForm, useFormNow } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Choice } from '@/app/desk/_form/field'
import type { CardReturn } from '@/lib/boards/returns-view'
import { draftOf, keepDraft } from './kept-draft'
import { HEADS, KeyedNine, worth } from './keyed-nine'
import { againstPaper, beginKeying, type Keying, pressed, readKeyed, runOf, wantsBeforeEnter } from './keying'
import { NO_PAPER, type Paper, PaperTotals } from './paper-totals'
import type { Reading } from './reading'

interface Props {
  readonly card: CardReturn
  readonly reading: Reading
  readonly keep: FormAction
  readonly shut: boolean
  /** Chosen to be keyed: the first open hole is under the hand at once. */
  readonly begin: boolean
}

/** The paper card under the hand. Everything works from the number row; nothing needs the mouse. */
export function KeyCard({ card, reading, keep, shut, begin }: Props) {
  const [now, setNow] = useState<Keying>(() => beginKeying(card.holes.map((hole) => hole.score)))
  const [paper, setPaper] = useState<Paper>(NO_PAPER)
  const [wants, setWants] = useState<string | null>(null)
  const [foundDraft, setFoundDraft] = useState(false)
  const paperTotal = useRef<HTMLInputElement>(null)
  const table = useRef<HTMLDivElement>(null)
  const takeIn = useRef<HTMLButtonElement>(null)
  const moved = useRef(false)

  useEffect(() => {
    if (shut) return
    const draft = draftOf(card.cardId, card.holes.length)
    if (draft?.some((score, place) => score !== (card.holes[place]?.score ?? null))) {
      setNow(beginKeying(draft))
      setFoundDraft(true)
    } else keepDraft(card.cardId, null)
    // Where a finger chooses, the keyboard of the screen must not come up by itself.
    if (!begin || !matchMedia('(pointer: fine)').matches) return
    const { at } = beginKeying(draft ?? card.holes.map((hole) => hole.score))
    const field = table.current?.querySelector<HTMLInputElement>(`[data-place="${at}"]`)
    field?.focus({ preventScroll: true })
    field?.select()
  }, [card, begin, shut])

  useEffect(() => {
    if (!moved.current) return
    const isNew = now.scores.some((score, place) => score !== (card.holes[place]?.score ?? null))
    keepDraft(card.cardId, isNew ? now.scores : null)
    if (now.last === now.scores.length - 1 && !now.scores.includes(null)) {
      paperTotal.current?.focus()
      return
    }
    const field = table.current?.querySelector<HTMLInputElement>(`[data-place="${now.at}"]`)
    field?.focus()
    field?.select()
  }, [now, card])

  const half = Math.min(card.holes.length, 9)
  const all = runOf(now.scores)
  const out = runOf(now.scores, 0, half)
  const home = runOf(now.scores, half)

  function onKeyDown(event: KeyboardEvent<HTMLDivElement>) {
    const { target } = event
    if (!(target instanceof HTMLInputElement)) return
    const { place, paper: onPaper } = target.dataset
    if (place === undefined && onPaper === undefined) return
    if (event.ctrlKey || event.metaKey || event.altKey) return
    if (event.key === 'Enter') {
      event.preventDefault()
      onEnter()
      return
    }
    if (event.key === 's' || event.key === 'S') {
      event.preventDefault()
      signBoth(event.currentTarget.closest('form'))
      return
    }
    if (place === undefined) return
    const next = pressed({ ...now, at: Number(place) }, event.key)
    if (!next) return
    event.preventDefault()
    moved.current = true
    setWants(null)
    setNow(next)
  }

  /** Once: what is missing or differs. A total that differs is the officer's to judge: a second press takes it in. */
  function onEnter() {
    const missing = wantsBeforeEnter(all, paper.all)
    const again = missing !== null && missing === wants && all.open.length === 0
    setWants(missing)
    if (missing === null || again) {
      takeIn.current?.click()
      return
    }
    const first = all.open[0]
    if (first !== undefined) table.current?.querySelector<HTMLInputElement>(`[data-place="${first - 1}"]`)?.focus()
  }

  function onTyped(place: number, text: string) {
    const score = readKeyed(text)
    if (score === 'unreadable') return
    setWants(null)
    setNow((before) => {
      const scores = before.scores.with(place, score)
      keepDraft(card.cardId, scores)
      return { ...before, scores, at: place, last: place }
    })
  }

  const said = [
    againstPaper(all, paper.all, 'Total'),
    half < card.holes.length ? againstPaper(out, paper.out, 'Out') : null,
    half < card.holes.length ? againstPaper(home, paper.in, 'In') : null,
  ].filter((line): line is string => line !== null)

  return (
    <ActForm action={keep} className="keep-card" label={`Card of ${card.name}`}>
      <input type="hidden" name="cardId" value={card.cardId} />
      {foundDraft ? (
        <p className="said" role="status">
          What was keyed here before and not kept is still in the fields.
        </p>
      ) : null}
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
        <div onKeyDown={shut ? undefined : onKeyDown}>
          <PaperTotals
            onPaper={(part) => setPaper((before) => ({ ...before, ...part }))}
            halves={half < card.holes.length}
            said={said}
            first={paperTotal}
          />
        </div>
        <p className="wants" role="alert">
          {wants}
        </p>
        {shut ? null : <PaperSigned card={card} />}
        <p className="keys small">
          <kbd>1</kbd>–<kbd>9</kbd> writes and moves on · <kbd>T</kbd> is 10, <kbd>+</kbd> one more · <kbd>0</kbd> or{' '}
          <kbd>X</kbd> no score · <kbd>←</kbd> back · after the last hole the total of the paper · <kbd>S</kbd> both
          signed · <kbd>Enter</kbd> takes it in and brings the next card
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
