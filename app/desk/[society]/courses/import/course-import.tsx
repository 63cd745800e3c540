'use client'

import { Notice, Refusal } from '@/app/_parts/notice'
import { StartsAgain } from '@/app/desk/_form/unsaved'
import { FileField } from '@/app/desk/[society]/_import/file-field'
import type { ImportAction } from '@/app/desk/[society]/_import/import-state'
import { useFocusOnRefusal, useImport } from '@/app/desk/[society]/_import/use-import'
import type { CourseImportPreview } from '@/lib/boards/desk-views'
import { type CourseImportChoices, NOTHING_SAID } from '@/lib/facts/course-import'
import { TeeAsked } from './tee-asked'

interface Props {
  readonly action: ImportAction<CourseImportPreview>
}

/** Choose a card, answer tee by tee what it does not have, then import it: the whole course or nothing. */
export const CourseImport = (props: Props) => (
  <StartsAgain>
    <FileToImport {...props} />
  </StartsAgain>
)

function FileToImport({ action }: Props) {
  const importing = useImport<CourseImportPreview, CourseImportChoices>('Import a course card', action, NOTHING_SAID)
  const { state, pending, choices, choose } = importing
  const { preview } = state
  const answer = useFocusOnRefusal(state)
  const say = (key: string, more: CourseImportChoices['tees'][string]) =>
    choose({ ...choices, tees: { ...choices.tees, [key]: { ...choices.tees[key], ...more } } })
  return (
    <div ref={importing.part} data-desk-form="" aria-busy={pending} className="import">
      <FileField
        tooLarge={importing.tooLarge}
        onFile={(file) => void importing.chooseFile(file)}
        hint={
          <>
            The card as it is printed, with the holes down or across. What it does not have is asked for. If you have
            none,{' '}
            <a href="/samples/course-card.csv" download>
              download a sample file
            </a>{' '}
            and fill it in.
          </>
        }
      />
      <div ref={answer} tabIndex={-1} className="answer" role="alert">
        {state.refused ? <Refusal refused={state.refused} kept="What you typed is still here." /> : null}
      </div>
      {preview ? (
        <section aria-labelledby="import-preview" className="import-preview">
          <h2 id="import-preview">{preview.fileName}</h2>
          <p className="lead" role="status">
            {preview.sentence} Nothing is saved yet.
          </p>
          <div className="field">
            <label htmlFor="course-name">Name of the course</label>
            <input
              key={preview.name}
              id="course-name"
              defaultValue={preview.name}
              maxLength={80}
              onBlur={(event) => {
                if (event.target.value !== preview.name) choose({ ...choices, name: event.target.value })
              }}
            />
          </div>
          {preview.known ? (
            <p className="small second">
              {preview.name} is among your courses: its card is replaced. Days already created keep theirs.
            </p>
          ) : null}
          {preview.faults.length > 0 ? (
            <Notice kind="differs" word="To put right in the file">
              <ul>
                {preview.faults.map((fault) => (
                  <li key={`${fault.place} ${fault.sentence}`}>
                    <b>{fault.place}:</b> {fault.sentence}
                  </li>
                ))}
              </ul>
            </Notice>
          ) : null}
          <ul className="tees-asked">
            {preview.tees.map((tee) => (
              <TeeAsked key={tee.key} tee={tee} onSay={(more) => say(tee.key, more)} />
            ))}
          </ul>
          {preview.notes.map((note) => (
            <p key={note} className="small second">
              {note}
            </p>
          ))}
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
                {preview.ready ? `Import ${preview.name}` : `Import: ${whyNot(preview)}`}
              </button>
            </p>
          </div>
        </section>
      ) : null}
    </div>
  )
}

function whyNot({ faults, tees }: CourseImportPreview): string {
  if (faults.length > 0) return 'put the file right first'
  const looks = tees.filter((tee) => tee.what === 'look').length
  return looks === 1 ? 'one set of tees needs an answer first' : `${looks} sets of tees need an answer first`
}
