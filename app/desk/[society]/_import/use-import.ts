'use client'

import { type RefObject, startTransition, useActionState, useEffect, useRef, useState } from 'react'
import { useStartAgain } from '@/app/desk/_form/unsaved'
import { useUnsavedPart } from '@/app/desk/_form/use-unsaved-part'
import { type ImportAction, type ImportState, NOTHING_READ } from './import-state'

/** A server action takes a request of one megabyte. */
const MOST_BYTES = 900_000

export interface Importing<Preview, Choices> {
  /** The part of the page that holds the file and everything said about it. */
  readonly part: RefObject<HTMLDivElement | null>
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

/** A chosen file with everything said about it is unsaved work until it is imported; `label` is its name there. */
export function useImport<Preview, Choices>(
  label: string,
  action: ImportAction<Preview>,
  none: Choices,
): Importing<Preview, Choices> {
  const [state, send, pending] = useActionState<ImportState<Preview>, FormData>(action, NOTHING_READ)
  const [file, setFile] = useState<File | null>(null)
  const [tooLarge, setTooLarge] = useState(false)
  const [choices, setChoices] = useState(none)
  const part = useRef<HTMLDivElement>(null)
  const startAgain = useStartAgain()
  useUnsavedPart(
    part,
    file && {
      label,
      what: file.name,
      meanwhile: 'Nothing is imported until its button is pressed.',
      clear: () => startAgain?.(),
    },
  )

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
    part,
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
