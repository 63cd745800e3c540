'use client'
// One rule for every form of the desk: what is typed and not saved is said, is never passed over by another button of the
// page, and is not left behind without a question. Forms take part through ActForm; the desk's layout holds the rest.

import {
  createContext,
  type ReactNode,
  type RefObject,
  use,
  useCallback,
  useEffect,
  useId,
  useRef,
  useState,
} from 'react'
import { changedInWords, changedNames, readAgain, type Snapshot, savedOf, snapshotOf } from './form-snapshot'

export interface UnsavedForm {
  readonly id: string
  readonly label: string
  /** What is not saved, in words: the labels of the fields, or the form's own sentence. */
  readonly what: string
  /** What everybody else sees until it is saved. */
  readonly meanwhile: string
  /** Pressing its button saves; otherwise the form only prepares something that is done by its button. */
  readonly saves: boolean
  /** What is typed is found again after leaving the page: nothing to ask. */
  readonly keeps: boolean
  readonly answers: number
  readonly undo: () => void
  /** One step back, where the form counts its steps. */
  readonly stepBack: (() => void) | null
  /** The form, or the part of the page that takes part like one. */
  readonly form: HTMLElement
}

export type Report = (id: string, unsaved: UnsavedForm | null) => void

export const Reports = createContext<Report>(() => undefined)
export const Unsaved = createContext<readonly UnsavedForm[]>([])

export const useUnsavedForms = () => use(Unsaved)

export interface AboutForm {
  readonly label: string
  readonly saves: boolean
  readonly keeps: boolean
  /** Differs although the page came like this: something typed earlier was found again. */
  readonly found: boolean
  /** Nothing can be typed, so nothing is unsaved. */
  readonly readOnly: boolean
  readonly what: string | undefined
  readonly meanwhile: string | undefined
  readonly pending: boolean
  /** Counts the answers; the last of them was a refusal or not. */
  readonly answers: number
  readonly refused: boolean
  readonly clears: boolean
  readonly undo: () => void
  readonly stepBack: (() => void) | null
}

const MEANWHILE = 'Until it is saved, everybody else sees what was saved before.'
const NOT_DONE = 'Nothing happens until its button is pressed.'
/** A state that is set by a drag or a timer is on the page by then. */
const SETTLED = 300

/** Compares a form with what it was loaded with, and says so to the page. */
export function useUnsavedForm(ref: RefObject<HTMLFormElement | null>, about: AboutForm): string {
  const report = use(Reports)
  const id = useId()
  const loaded = useRef<Snapshot | null>(null)
  const seen = useRef<Snapshot>(new Map())
  const sent = useRef<Snapshot | null>(null)
  /** Names of the fields that were touched while the answer was on its way; null: something else was, by a button. */
  const since = useRef<Set<string> | null>(new Set())
  const acting = useRef(false)
  const heard = useRef(about.answers)
  const now = useRef(about)
  now.current = about

  const look = useCallback(() => {
    const form = ref.current
    if (!form) return
    const present = snapshotOf(form)
    if (loaded.current === null) loaded.current = snapshotOf(form, 'as-loaded')
    else if (!acting.current) loaded.current = readAgain(loaded.current, seen.current, present)
    seen.current = present
    if (now.current.readOnly) loaded.current = present
    const changed = changedNames(loaded.current, present)
    const { label, saves, keeps, found, what, meanwhile, answers, stepBack } = now.current
    if (changed.length === 0 && !found) return report(id, null)
    report(id, {
      id,
      label,
      what: what ?? changedInWords(form, changed),
      meanwhile: meanwhile ?? (saves ? MEANWHILE : NOT_DONE),
      saves,
      keeps,
      answers,
      form,
      undo: () => now.current.undo(),
      stepBack: stepBack === null ? null : () => now.current.stepBack?.(),
    })
  }, [id, ref, report])

  useEffect(() => {
    const form = ref.current
    if (form && heard.current !== about.answers) {
      heard.current = about.answers
      if (!about.refused) {
        const present = snapshotOf(form)
        loaded.current = about.clears || sent.current === null ? present : savedOf(sent.current, present, since.current)
        seen.current = present
        sent.current = null
      }
      acting.current = false
    }
    look()
  })

  useEffect(() => {
    const form = ref.current
    if (!form) return
    let settled: ReturnType<typeof setTimeout> | null = null
    let down = false
    const act = () => {
      acting.current = true
      setTimeout(look)
      if (settled) clearTimeout(settled)
      settled = setTimeout(() => {
        look()
        acting.current = false
      }, SETTLED)
    }
    const typed = (event: Event) => {
      if (!now.current.pending) sent.current = null
      const field = event.target
      if (
        field instanceof HTMLInputElement ||
        field instanceof HTMLSelectElement ||
        field instanceof HTMLTextAreaElement
      )
        since.current?.add(field.name)
      act()
    }
    const acted = () => {
      if (now.current.pending) since.current = null
      act()
    }
    const submitted = () => {
      sent.current = snapshotOf(form)
      since.current = new Set()
    }
    const press = () => {
      down = true
      act()
    }
    // A drag begins in the form and ends wherever the hand is.
    const release = () => {
      if (down) act()
      down = false
    }
    const typing = ['input', 'change', 'paste', 'drop'] as const
    const moving = ['click', 'keydown'] as const
    for (const kind of typing) form.addEventListener(kind, typed, true)
    for (const kind of moving) form.addEventListener(kind, acted, true)
    form.addEventListener('submit', submitted, true)
    form.addEventListener('pointerdown', press, true)
    for (const kind of ['pointerup', 'touchend', 'mouseup'] as const) window.addEventListener(kind, release, true)
    return () => {
      if (settled) clearTimeout(settled)
      for (const kind of typing) form.removeEventListener(kind, typed, true)
      for (const kind of moving) form.removeEventListener(kind, acted, true)
      form.removeEventListener('submit', submitted, true)
      form.removeEventListener('pointerdown', press, true)
      for (const kind of ['pointerup', 'touchend', 'mouseup'] as const) window.removeEventListener(kind, release, true)
      report(id, null)
    }
  }, [id, look, ref, report])

  return id
}

/** The button that saves a form, or the one that does what it prepares; null while that cannot be pressed. */
export function saveButtonOf(form: HTMLElement): HTMLButtonElement | null {
  const ready = [...form.querySelectorAll<HTMLButtonElement>('button[type=submit], button[data-saves]')].filter(
    (button) => button.getAttribute('aria-disabled') !== 'true' && !button.disabled,
  )
  return ready.find((button) => button.dataset.saves !== undefined) ?? ready[0] ?? null
}

const StartAgain = createContext<(() => void) | null>(null)

export const useStartAgain = () => use(StartAgain)

/** Around a form whose fields live outside of it: going back to what was saved begins the whole of it anew. */
export function StartsAgain({ children }: { readonly children: ReactNode }) {
  const [turn, setTurn] = useState(0)
  const again = useCallback(() => setTurn((before) => before + 1), [])
  return (
    <StartAgain value={again}>
      <div key={turn} className="starts-again">
        {children}
      </div>
    </StartAgain>
  )
}
