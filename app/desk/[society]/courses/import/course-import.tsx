'use client'

import { Notice, Refusal } from '@/app/_parts/notice'
import { FileField } from '@/app/desk/[society]/_import/file-field'
import type { ImportAction } from '@/app/desk/[society]/_import/import-state'
import { useFocusOnRefusal, useImport } from '@/app/desk/[society]/_import/use-import'
import type { CourseImportRow, ImportPreview } from '@/lib/boards/desk-views'

/** Choose a card, see tee by tee what would happen, then import it: the whole course or nothing. */
export function CourseImport({ action }: { readonly action: ImportAction<ImportPreview<CourseImportRow>> }) {
  const importing = useImport<ImportPreview<CourseImportRow>, object>(action, {})
  const { state, pending } = importing
  const { preview } = state
  const answer = useFocusOnRefusal(state)
  return (
    <div aria-busy={pending} className="import">
      <FileField
        tooLarge={importing.tooLarge}
        onFile={(file) => void importing.chooseFile(file)}
        hint="The card as it is printed: holes with par, stroke index and yards, with the tees, course rating and slope."
      />
      <div ref={answer} tabIndex={-1} className="answer" role="alert">
        {state.refused ? <Refusal refused={state.refused} kept="Nothing was imported." /> : null}
      </div>
      {preview ? (
        <section aria-labelledby="import-preview" className="import-preview">
          <h2 id="import-preview">{preview.fileName}</h2>
          <p className="lead" role="status">
            {preview.sentence}
          </p>
          {preview.faults.length > 0 ? (
            <Notice kind="differs" word={`${preview.faults.length} to put right in the file`}>
              <ul>
                {preview.faults.map((fault) => (
                  <li key={`${fault.place} ${fault.sentence}`}>
                    <b>{fault.place}:</b> {fault.sentence}
                  </li>
                ))}
              </ul>
            </Notice>
          ) : null}
          <p className="acts">
            <button
              type="button"
              className={preview.ready ? 'btn first' : 'btn'}
              aria-disabled={!preview.ready || pending || undefined}
              onClick={() => {
                if (preview.ready && !pending) importing.take(preview.digest)
              }}
            >
              Import the course
            </button>
          </p>
        </section>
      ) : null}
    </div>
  )
}
