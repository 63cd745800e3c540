'use client'

import { startTransition, useActionState, useEffect, useRef, useState } from 'react'
import { type ImportAction, type ImportState, NOTHING_READ } from './import-state'

/** A server action takes a request of one megabyte. */
const MOST_BYTES = 900_000

export interface Importing<Preview, Choices> {
  readonly state: ImportState<Preview>
  readonly pending: boolean
  readonly choices: Choices
  readonly tooLarge: boolean
  readonly fileName: string | null
  /** Reads the file into memory, so that it stays what it was however the disk changes, and looks at it. */
  readonly chooseFile: (file: File | undefined) => Promise<void>
  /** Something was said about the file: it is looked at again with it. */
  readonly choose: (next: Choices) => void
  readonly look: () => void
  readonly take: (digest: string) => void
}

export function useImport<Preview, Choices>(action: ImportAction<Preview>, none: Choices): Importing<Preview, Choices> {
  const [state, send, pending] = useActionState<ImportState<Preview>, FormData>(action, NOTHING_READ)
  const [file, setFile] = useState<File | null>(null)
  const [tooLarge, setTooLarge] = useState(false)
  const [choices, setChoices] = useState(none)

  function sendWith(sent: File | null, said: Choices, digest?: string) {
    if (!sent) return
    const form = new FormData()
    form.set('file', sent)
    form.set('choices', JSON.stringify(said))
    form.set('then', digest === undefined ? 'preview' : 'import')
    if (digest !== undefined) form.set('digest', digest)
    startTransition(() => send(form))
  }

  return {
    state,
    pending,
    choices,
    tooLarge,
    fileName: file?.name ?? null,
    chooseFile: async (chosen) => {
      const large = (chosen?.size ?? 0) > MOST_BYTES
      setTooLarge(large)
      setFile(null)
      if (!chosen || large) return
      const read = new File([await chosen.arrayBuffer()], chosen.name, { type: chosen.type })
      setFile(read)
      setChoices(none)
      sendWith(read, none)
    },
    choose: (next) => {
      setChoices(next)
      sendWith(file, next)
    },
    look: () => sendWith(file, choices),
    take: (digest) => sendWith(file, choices, digest),
  }
}

/** Moves the focus to a refusal when one arrives; a change of the preview leaves it where it is. */
export function useFocusOnRefusal(state: ImportState<unknown>) {
  const answer = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (state.attempt > 0 && state.refused) answer.current?.focus()
  }, [state.attempt, state.refused])
  return answer
}
