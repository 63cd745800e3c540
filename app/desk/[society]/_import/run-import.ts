import 'server-only'
import { askedBy } from '@/app/desk/_form/answer'
import type { Actor } from '@/lib/facts/actor'
import { type Result, refused } from '@/lib/result'
import { orNotSaved } from '@/lib/society/cannot-save'
import type { ImportState } from './import-state'

interface File {
  readonly fileName: string
  readonly bytes: Uint8Array
  readonly choices: unknown
}

interface Uses<Preview, T> {
  readonly preview: (actor: Actor, file: File) => Promise<Result<Preview>>
  readonly take: (actor: Actor, file: File & { readonly digest: string }) => Promise<Result<T>>
}

/** Preview or import, as the button says; `taken` is called after a success and leads elsewhere. */
export async function runImport<Preview, T>(
  society: string,
  before: ImportState<Preview>,
  form: FormData,
  uses: Uses<Preview, T>,
  taken: (done: T) => never,
): Promise<ImportState<Preview>> {
  const attempt = before.attempt + 1
  const who = await askedBy(society)
  if (!who.ok) return { attempt, refused: who, preview: before.preview }
  const sent = form.get('file')
  if (!(sent instanceof Blob) || sent.size === 0) {
    return { attempt, refused: refused('no-file', 'Choose a file first.'), preview: null }
  }
  const file = {
    fileName: sent instanceof globalThis.File ? sent.name : 'list',
    bytes: new Uint8Array(await sent.arrayBuffer()),
    choices: choicesIn(String(form.get('choices') ?? '')),
  }
  let refusal: ImportState<Preview>['refused'] = null
  if (form.get('then') === 'import') {
    const digest = String(form.get('digest') ?? '')
    const done = await orNotSaved(() => uses.take(who.value, { ...file, digest }))
    if (done.ok) taken(done.value)
    else refusal = done
  }
  // After a refusal too: what is shown is how things stand now, with everything that was chosen.
  const preview = await uses.preview(who.value, file)
  return preview.ok
    ? { attempt, refused: refusal, preview: preview.value }
    : { attempt, refused: refusal ?? preview, preview: null }
}

/** Anything odd counts as nothing chosen only where nothing was sent; else the schema refuses it. */
function choicesIn(written: string): unknown {
  if (written === '') return undefined
  try {
    return JSON.parse(written)
  } catch {
    return null
  }
}
