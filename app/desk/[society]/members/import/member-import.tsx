'use client'

import { Notice, Refusal } from '@/app/_parts/notice'
import { StartsAgain } from '@/app/desk/_form/unsaved'
import { FileField } from '@/app/desk/[society]/_import/file-field'
import type { ImportAction } from '@/app/desk/[society]/_import/import-state'
import { useFocusOnRefusal, useImport } from '@/app/desk/[society]/_import/use-import'
import type { MemberImportPreview } from '@/lib/boards/desk-views'
import { type MemberImportChoices, NOTHING_CHOSEN } from '@/lib/facts/member-import'
import { LeftOut } from './left-out'
import { Outcome } from './outcome'
import { Questions } from './questions'
import { RowsToLookAt } from './rows-to-look-at'
import { SpreadsheetColumns } from './spreadsheet-columns'

interface Props {
  readonly action: ImportAction<MemberImportPreview>
}

/** Choose a file, say what its columns are, put right or leave out what is wrong, then import: all of it or nothing. */
export const MemberImport = (props: Props) => (
  <StartsAgain>
    <FileToImport {...props} />
  </StartsAgain>
)

function FileToImport({ action }: Props) {
  const importing = useImport<MemberImportPreview, MemberImportChoices>('Import members', action, NOTHING_CHOSEN)
  const { state, pending, choices, choose } = importing
  const { preview } = state
  const answer = useFocusOnRefusal(state)
  const change = (more: Partial<MemberImportChoices>) => choose({ ...choices, ...more })
  return (
    <div ref={importing.part} data-desk-form="" aria-busy={pending} className="import">
      <FileField
        tooLarge={importing.tooLarge}
        onFile={(file) => void importing.chooseFile(file)}
        hint={
          <>
            Any list with a heading row will do: the columns can be pointed at afterwards. If you have none,{' '}
            <a href="/samples/members.csv" download>
              download a sample file
            </a>{' '}
            and fill it in.
          </>
        }
      />
      <div ref={answer} tabIndex={-1} className="answer" role="alert">
        {state.refused ? <Refusal refused={state.refused} kept="What you chose and typed is still here." /> : null}
      </div>
      {state.refused && importing.fileName ? (
        <p className="acts">
          <button type="button" className="btn" onClick={importing.look}>
            Check the file again
          </button>
        </p>
      ) : null}
      {preview ? (
        <section aria-labelledby="import-preview" className="import-preview">
          <h2 id="import-preview">{preview.fileName}</h2>
          <p className="lead" role="status">
            {preview.sentence} Nothing is saved yet.
          </p>
          {preview.faults.length > 0 ? (
            <Notice kind="differs" word="The file">
              <ul>
                {preview.faults.map((fault) => (
                  <li key={`${fault.place} ${fault.sentence}`}>
                    <b>{fault.place}:</b> {fault.sentence}
                  </li>
                ))}
              </ul>
            </Notice>
          ) : null}
          <SpreadsheetColumns preview={preview} choices={choices} onChange={change} />
          <Questions preview={preview} choices={choices} onChange={change} />
          <RowsToLookAt preview={preview} choices={choices} onChange={change} />
          <LeftOut preview={preview} choices={choices} onChange={change} />
          <Outcome preview={preview} choices={choices} onChange={change} />
          <div className="import-bar">
            <p className="acts">
              <button
                type="button"
                className={preview.ready ? 'btn first' : 'btn'}
                data-saves=""
                aria-disabled={!preview.ready || pending || undefined}
                onClick={() => {
                  if (preview.ready && !pending) importing.take(preview.digest)
                }}
              >
                {preview.ready ? `Import ${people(preview.rows.length)}` : `Import: ${whyNot(preview)}`}
              </button>
            </p>
            <p className="small second">All of them, or none if anything goes wrong.</p>
          </div>
        </section>
      ) : null}
    </div>
  )
}

const people = (count: number) => (count === 1 ? 'one person' : `${count} people`)

function whyNot({ faults, questions, look }: MemberImportPreview): string {
  if (faults.length > 0) return 'see what is wrong with the file'
  if (questions.length > 0) return questions.length === 1 ? 'answer the question first' : 'answer the questions first'
  return look.length === 1 ? 'one row needs a look first' : `${look.length} rows need a look first`
}
