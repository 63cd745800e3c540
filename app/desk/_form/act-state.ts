// What a server action hands back to its form: a refusal with everything that was typed, or a word that it is done.

import type { Fault, Result } from '@/lib/result'

export interface ActState {
  /** Counts the answers, so that a second refusal with the same words is announced again. */
  readonly attempt: number
  readonly refused: { readonly code: string; readonly sentence: string; readonly faults: readonly Fault[] } | null
  /** What others changed while this form was open. */
  readonly changed: readonly string[]
  readonly said: string | null
  /** What was done all the same, although the rest was refused. */
  readonly kept: string | null
  readonly typed: Readonly<Record<string, readonly string[]>>
}

export const FRESH: ActState = { attempt: 0, refused: null, changed: [], said: null, kept: null, typed: {} }

export type FormAction = (before: ActState, form: FormData) => Promise<ActState>

export function typedIn(form: FormData): Record<string, string[]> {
  const typed: Record<string, string[]> = {}
  for (const [name, value] of form.entries()) {
    if (typeof value !== 'string' || name.startsWith('$ACTION')) continue
    typed[name] = [...(typed[name] ?? []), value]
  }
  return typed
}

export function refusedState(
  before: ActState,
  form: FormData,
  answer: Extract<Result<unknown>, { ok: false }>,
  changed: readonly string[] = [],
  kept: string | null = null,
): ActState {
  const { code, sentence, faults } = answer
  return {
    attempt: before.attempt + 1,
    refused: { code, sentence, faults },
    changed,
    said: null,
    kept,
    typed: typedIn(form),
  }
}

export function doneState(before: ActState, said: string): ActState {
  return { attempt: before.attempt + 1, refused: null, changed: [], said, kept: null, typed: {} }
}
