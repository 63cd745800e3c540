'use client'

// The card under the hand: what is keyed, where the hand is, the draft of the tab, and the keys pressed before the card
// had come.

import { type KeyboardEvent, useEffect, useRef, useState } from 'react'
import type { CardReturn } from '@/lib/boards/returns-view'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { placeOfHole } from '@/lib/rules/hole-numbers'
import { draftOf, keepDraft } from './kept-draft'
import { claimKeys, leaveCard, letGo, nextKeys } from './key-ahead'
import {
  atTotal,
  beginKeying,
  caughtUp,
  clashes,
  differs,
  handOn,
  type Keying,
  keyedAhead,
  openInWords,
  type Paper,
  paperOf,
  pressed,
  type Run,
  runOf,
  settled,
  typed,
  without,
  withPaper,
} from './keying'
import { boxOf } from './paper-row'
import { signBoth } from './paper-signed'

/** Milliseconds in which the next card of the pile would have come. */
const LAST_OF_THE_PILE = 5000

/** Entered here; handed in from phones, to be read and accepted; or accepted, or of a closed day. */
export type Access = 'entered' | 'signed' | 'closed'

const scoresOf = (card: CardReturn) => card.holes.map((hole) => hole.score)

/** Is anything here that the book does not have? */
function isNewOn(card: CardReturn, { scores, paper }: Pick<Keying, 'scores' | 'paper'>): boolean {
  const kept = paperOf(card.paper)
  return (
    scores.some((score, place) => score !== (card.holes[place]?.score ?? null)) ||
    (['out', 'in', 'total'] as const).some((part) => paper[part] !== kept[part])
  )
}

export interface Replaced {
  readonly hole: number
  readonly entered: WrittenScore
  readonly counts: WrittenScore
}

/** Scores entered here that read otherwise on a card somebody else has handed in or accepted meanwhile. */
const replacedOn = (card: CardReturn, entered: readonly WrittenScore[]): readonly Replaced[] =>
  card.holes.flatMap(({ hole, score }, place) => {
    const own = entered[place] ?? null
    return own === null || own === score ? [] : [{ hole, entered: own, counts: score }]
  })

export function useKeying(card: CardReturn, access: Access, begin: boolean) {
  const written = card.holes.map((hole) => hole.score)
  const paper = paperOf(card.paper)
  const [now, setNow] = useState<Keying>(() => beginKeying(written, paper))
  const [wants, setWants] = useState<string | null>(null)
  const [foundDraft, setFoundDraft] = useState(false)
  const [notWritten, setNotWritten] = useState('')
  const [replaced, setReplaced] = useState<readonly Replaced[]>([])
  const totalBox = useRef<HTMLInputElement>(null)
  const table = useRef<HTMLDivElement>(null)
  const takeIn = useRef<HTMLButtonElement>(null)
  const moved = useRef(false)
  const book = useRef(written)
  const openedAs = useRef<Access | null>(null)
  const handAt = useRef<number | null>(null)
  const catchingUp = useRef(false)
  const enterDue = useRef(false)
  const keyed = useRef(now.scores)
  const [turn, setTurn] = useState(0)

  const firstHole = card.holes[0]?.hole ?? 1
  const half = Math.min(card.holes.length, 9)
  // A hole that the matches of the player do not need is not waited for.
  const run = (from: number, to: number) => without(runOf(now.scores, from, to, firstHole), card.notNeeded)
  const runs: Record<keyof Paper, Run> = {
    total: run(0, card.holes.length),
    out: run(0, half),
    in: run(half, card.holes.length),
  }
  const clashing = access === 'entered' ? clashes(now, written) : []
  const off = (['out', 'in', 'total'] as const).filter((part) => differs(runs[part], now.paper[part]))

  const box = (which: string) => table.current?.querySelector<HTMLInputElement>(which) ?? null
  function putHand(field: HTMLInputElement | null) {
    field?.focus()
    field?.select()
  }

  // The book moves on while the card is under the hand: a phone sends, another desk saves, a card is opened again.
  useEffect(() => {
    const before = book.current
    if (written.every((score, place) => score === before[place])) return
    book.current = written
    setNow((keyed) => (access === 'entered' ? caughtUp(keyed, written) : beginKeying(written, paper)))
  })

  // Once, when the card comes under the hand, and once more when it is opened again: never while something is typed
  // elsewhere on the page.
  useEffect(() => {
    if (access === 'entered') setReplaced([])
    else if (openedAs.current === 'entered') setReplaced(replacedOn(card, keyed.current))
    if (access === 'closed' || openedAs.current === access) {
      if (access === 'closed') openedAs.current = null
      return
    }
    openedAs.current = access
    const draft = access === 'entered' ? draftOf(card.cardId, card.holes.length) : null
    const start =
      draft && isNewOn(card, draft) ? caughtUp(draft, scoresOf(card)) : beginKeying(scoresOf(card), paperOf(card.paper))
    const isDraft = draft !== null && isNewOn(card, draft)
    setNow(start)
    setFoundDraft(isDraft)
    if (!isDraft) keepDraft(card.cardId, null)
    handAt.current = start.at
    // Where a finger chooses, the keyboard of the screen must not come up by itself.
    if (begin && matchMedia('(pointer: fine)').matches) {
      const field = table.current?.querySelector<HTMLInputElement>(`[data-place="${start.at}"]`)
      if (field) {
        field.focus({ preventScroll: true })
        field.select()
      } else takeIn.current?.focus({ preventScroll: true })
    }
    if (!claimKeys(card.cardId)) return
    if (access === 'entered') {
      catchingUp.current = true
      setTurn((before) => before + 1)
      return
    }
    // Figures meant for a paper card, and this one is signed on a phone: they are named, not swallowed.
    setNotWritten(letGo().join(' '))
  }, [card, begin, access])

  useEffect(() => {
    keyed.current = now.scores
  }, [now.scores])

  useEffect(() => () => leaveCard(card.cardId, 0), [card.cardId])
  // A card that is accepted stays on the screen until the next one comes; behind the last of the pile none comes.
  useEffect(() => {
    if (access === 'closed') leaveCard(card.cardId, LAST_OF_THE_PILE)
  }, [card.cardId, access])

  useEffect(() => {
    if (!moved.current) return
    keepDraft(card.cardId, access === 'entered' && isNewOn(card, now) ? now : null)
  }, [now, card, access])

  // The hand goes where the keys put it. A refresh of the page must not take it away from where it is.
  useEffect(() => {
    if (!moved.current || now.at === handAt.current) return
    handAt.current = now.at
    const isTotal = now.at === now.scores.length
    const field = isTotal
      ? totalBox.current
      : table.current?.querySelector<HTMLInputElement>(`[data-place="${now.at}"]`)
    field?.focus()
    // A total that is being keyed ahead goes on with the next key: selected, that key would wipe out what came before it.
    if (catchingUp.current && isTotal) field?.setSelectionRange(field.value.length, field.value.length)
    else field?.select()
  }, [now])

  function change(next: Keying) {
    moved.current = true
    setWants(null)
    setNow(next)
  }

  function onKeyDown(event: KeyboardEvent<HTMLDivElement>) {
    const field = boxOf(event)
    if (!field) return
    const { place, paper } = field.dataset
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
    if (paper === 'out' || paper === 'in') return
    // Inside a total that is written already, the keys are the box's own.
    if (paper === 'total' && (/^[0-9]$/.test(event.key) || field.value !== '')) return
    if (event.key === 'Tab' && (event.shiftKey || paper === 'total')) return
    // Tab passes over a hole, and must not end up in the box for Out.
    const key = event.key === 'Tab' ? 'ArrowRight' : event.key
    const next = pressed({ ...now, at: place === undefined ? now.scores.length : Number(place) }, key)
    if (!next) return
    event.preventDefault()
    change(next)
  }

  /** Says what is missing or differs and puts the hand there; otherwise accepts. Only a button accepts what differs. */
  function onEnter(): boolean {
    const missing = openInWords(runs.total)
    setNotWritten('')
    if (missing !== null) {
      const place = placeOfHole({ firstHole }, runs.total.open[0] ?? firstHole)
      moved.current = true
      handAt.current = place
      setWants(missing)
      setNow((before) => ({ ...before, at: place, last: null, through: true }))
      putHand(box(`[data-place="${place}"]`))
      return false
    }
    if (clashing.length > 0) {
      setWants('Somebody else has changed this card. Choose above whose figures count, then press Enter again.')
      return false
    }
    const [part] = off
    if (part) {
      setWants('A total on the paper differs. Look again, or press the button below to accept the holes as they are.')
      putHand(box(`[data-paper="${part}"]`))
      return false
    }
    setWants(null)
    takeIn.current?.click()
    return true
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
    const ahead = keyedAhead(now, keys)
    moved.current = true
    setNow(ahead.now)
    if (ahead.signed) signBoth(table.current?.closest('form') ?? null)
    setTurn((before) => before + 1)
  })

  return {
    now,
    runs,
    off,
    clashing,
    isNew: access === 'entered' && isNewOn(card, now),
    settle: (whose: 'mine' | 'theirs') => change(settled(now, written, whose)),
    half,
    wants,
    foundDraft,
    notWritten,
    replaced,
    table,
    totalBox,
    takeIn,
    onKeyDown,
    /** What the server refused comes back to the card; keys for a next card that did not come are named. */
    onAnswer: () => setNotWritten(letGo().join(' ')),
    onTyped: (place: number, text: string) => {
      const next = typed(now, place, text)
      if (next) change(next)
      else setWants(`${text} is no score for a hole: 1 to 30 strokes. A total goes into the box for the total.`)
    },
    onHand: (place: number) => {
      handAt.current = place
      setNow((before) => handOn(before, place))
    },
    onPaper: (part: keyof Paper, text: string) => change(withPaper(now, part, text)),
    passed: now.through || atTotal(now),
  }
}
