'use client'

import { type KeyboardEvent, useEffect, useRef, useState } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import type { CardReturn } from '@/lib/boards/returns-view'
import { placeOfHole } from '@/lib/rules/hole-numbers'
import { KeepButtons } from './keep-buttons'
import { draftOf, keepDraft } from './kept-draft'
import { claimKeys, leaveCard, letGo, nextKeys } from './key-ahead'
import { HEADS, KeyedNine, worth } from './keyed-nine'
import {
  againstPaper,
  beginKeying,
  caughtUp,
  type Keying,
  keyedAhead,
  pressed,
  readKeyed,
  runOf,
  wantsBeforeEnter,
} from './keying'
import { PaperSigned, signBoth } from './paper-signed'
import { NO_PAPER, type Paper, PaperTotals } from './paper-totals'
import type { Reading } from './reading'

/** Milliseconds in which the next card of the pile would have come. */
const LAST_OF_THE_PILE = 5000

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
  const written = card.holes.map((hole) => hole.score)
  const [now, setNow] = useState<Keying>(() => beginKeying(written))
  const [paper, setPaper] = useState<Paper>(NO_PAPER)
  const [wants, setWants] = useState<string | null>(null)
  const [foundDraft, setFoundDraft] = useState(false)
  const [notWritten, setNotWritten] = useState('')
  const paperTotal = useRef<HTMLInputElement>(null)
  const table = useRef<HTMLDivElement>(null)
  const takeIn = useRef<HTMLButtonElement>(null)
  const moved = useRef(false)
  const book = useRef(written)
  const opened = useRef(false)
  const focusedFor = useRef<Keying | null>(null)
  const catchingUp = useRef(false)
  const enterDue = useRef(false)
  const [turn, setTurn] = useState(0)

  // The book moves on while the card is under the hand: a phone delivers, another desk keeps.
  useEffect(() => {
    const before = book.current
    if (shut || written.every((score, place) => score === before[place])) return
    book.current = written
    setNow((keyed) => caughtUp(keyed, before, written))
  })

  // Once, when the card comes under the hand: never again while something is typed elsewhere on the page.
  useEffect(() => {
    if (opened.current || shut) return
    opened.current = true
    const scores = card.holes.map((hole) => hole.score)
    const draft = draftOf(card.cardId, card.holes.length)
    const isNew = draft?.some((score, place) => score !== scores[place]) ?? false
    if (draft && isNew) {
      setNow(beginKeying(draft))
      setFoundDraft(true)
    } else keepDraft(card.cardId, null)
    // Where a finger chooses, the keyboard of the screen must not come up by itself.
    if (begin && matchMedia('(pointer: fine)').matches) {
      const { at } = beginKeying(draft && isNew ? draft : scores)
      const field = table.current?.querySelector<HTMLInputElement>(`[data-place="${at}"]`)
      field?.focus({ preventScroll: true })
      field?.select()
    }
    if (!claimKeys(card.cardId)) return
    catchingUp.current = true
    setTurn((before) => before + 1)
  }, [card, begin, shut])

  useEffect(() => () => leaveCard(card.cardId, 0), [card.cardId])
  // A card that is taken in stays on the screen until the next one comes; behind the last of the pile none comes.
  useEffect(() => {
    if (shut) leaveCard(card.cardId, LAST_OF_THE_PILE)
  }, [card.cardId, shut])

  useEffect(() => {
    if (!moved.current) return
    const isNew = now.scores.some((score, place) => score !== (card.holes[place]?.score ?? null))
    keepDraft(card.cardId, isNew ? now.scores : null)
    // A refresh of the page must not take the hand away from the field it is in.
    if (now === focusedFor.current) return
    focusedFor.current = now
    if (now.last === now.scores.length - 1 && !now.scores.includes(null)) {
      paperTotal.current?.focus()
      return
    }
    const field = table.current?.querySelector<HTMLInputElement>(`[data-place="${now.at}"]`)
    field?.focus()
    field?.select()
  }, [now, card])

  const half = Math.min(card.holes.length, 9)
  const firstHole = card.holes[0]?.hole ?? 1
  const run = (from: number, to: number) => runOf(now.scores, from, to, firstHole)
  const all = run(0, card.holes.length)
  const out = run(0, half)
  const home = run(half, card.holes.length)

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
  function onEnter(): boolean {
    const missing = wantsBeforeEnter(all, paper.all)
    const again = missing !== null && missing === wants && all.open.length === 0
    setWants(missing)
    setNotWritten('')
    if (missing === null || again) {
      takeIn.current?.click()
      return true
    }
    const first = all.open[0]
    const place = first === undefined ? -1 : placeOfHole({ firstHole }, first)
    table.current?.querySelector<HTMLInputElement>(`[data-place="${place}"]`)?.focus()
    return false
  }

  // What was pressed ahead is keyed in turns, each from what the turn before has written into the fields.
  useEffect(() => {
    if (!catchingUp.current || turn === 0) return
    if (enterDue.current) {
      enterDue.current = false
      catchingUp.current = false
      if (!onEnter()) setNotWritten(letGo().join(' '))
      return
    }
    const keys = nextKeys()
    if (keys.length === 0) {
      letGo()
      catchingUp.current = false
      return
    }
    enterDue.current = keys.at(-1) === 'Enter'
    const ahead = keyedAhead(now, paperTotal.current?.value ?? '', keys)
    moved.current = true
    setNow(ahead.now)
    if (paperTotal.current) paperTotal.current.value = ahead.paper
    if (ahead.paper !== '') setPaper((before) => ({ ...before, all: Number(ahead.paper) }))
    if (ahead.signed) signBoth(table.current?.closest('form') ?? null)
    setTurn((before) => before + 1)
  })

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
    <ActForm
      action={keep}
      className="keep-card"
      label={`Card of ${card.name}`}
      onAnswer={() => setNotWritten(letGo().join(' '))}
    >
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
          label={half < card.holes.length ? 'Out' : 'All'}
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
          {notWritten === '' ? null : ` Pressed for the next card and not written anywhere: ${notWritten}.`}
        </p>
        {shut ? null : <PaperSigned card={card} />}
        <p className="keys small">
          <kbd>1</kbd>–<kbd>9</kbd> writes and moves on · <kbd>T</kbd> is 10, <kbd>+</kbd> one more · <kbd>0</kbd> or{' '}
          <kbd>X</kbd> no score · <kbd>←</kbd> back · after the last hole the total of the paper · <kbd>S</kbd> both
          signed · <kbd>Enter</kbd> takes it in and brings the next card
        </p>
      </div>
      {shut ? null : <KeepButtons open={all.open.length} takeIn={takeIn} card={card} />}
    </ActForm>
  )
}
