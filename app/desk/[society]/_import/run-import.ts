import 'server-only'
import { askedBy } from '@/app/desk/_form/answer'
import type { ImportPreview } from '@/lib/boards/desk-views'
import type { Actor } from '@/lib/facts/actor'
import { type Result, refused } from '@/lib/result'
import type { ImportRow, ImportState } from './import-state'

interface File {
  readonly fileName: string
  readonly bytes: Uint8Array
}

interface Uses<T> {
  readonly preview: (actor: Actor, file: File) => Promise<Result<ImportPreview<ImportRow>>>
  readonly take: (actor: Actor, file: File & { readonly digest: string }) => Promise<Result<T>>
}

/** Preview or take, as the button says; `taken` is called after a success and leads elsewhere. */
export async function runImport<T>(
  society: string,
  before: ImportState,
  form: FormData,
  uses: Uses<T>,
  taken: (done: T) => never,
): Promise<ImportState> {
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
  }
  if (form.get('then') === 'import') {
    const done = await uses.take(who.value, { ...file, digest: String(form.get('digest') ?? '') })
    if (!done.ok) return { attempt, refused: done, preview: before.preview }
    taken(done.value)
  }
  const preview = await uses.preview(who.value, file)
  return preview.ok ? { attempt, refused: null, preview: preview.value } : { attempt, refused: preview, preview: null }
}
