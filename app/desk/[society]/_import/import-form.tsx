'use client'

import { type ReactNode, startTransition, useActionState, useEffect, useId, useRef, useState } from 'react'
import { Notice, Refusal } from '@/app/_parts/notice'
import { type ImportAction, type ImportRow, NOTHING_READ } from './import-state'

interface Props {
  readonly action: ImportAction
  readonly what: string
  readonly head: ReactNode
  readonly rowOf: 'member' | 'course'
  readonly children?: ReactNode
}

/** A server action takes a request of one megabyte. */
const MOST_BYTES = 900_000

/** Choose a file, see row by row what it would do, then do it: nothing is half read in. */
export function ImportForm({ action, what, head, rowOf, children }: Props) {
  const [state, send, pending] = useActionState(action, NOTHING_READ)
  const [tooLarge, setTooLarge] = useState(false)
  const [stale, setStale] = useState(false)
  const answer = useRef<HTMLDivElement>(null)
  const id = useId()
  const { preview } = state

  useEffect(() => {
    if (state.attempt === 0) return
    setStale(false)
    answer.current?.focus()
  }, [state.attempt])

  return (
    <form
      action={send}
      aria-label={`Read in ${what}`}
      aria-busy={pending}
      onSubmit={(event) => {
        event.preventDefault()
        if (pending || tooLarge) return
        const { submitter } = event.nativeEvent as SubmitEvent
        const form = new FormData(event.currentTarget, submitter)
        startTransition(() => send(form))
      }}
    >
      <div className={tooLarge ? 'field wrong' : 'field'}>
        <label htmlFor={id}>File, CSV or XLSX</label>
        <div className="hint" id={`${id}-hint`}>
          {head}
        </div>
        <input
          id={id}
          name="file"
          type="file"
          accept=".csv,.tsv,.txt,.xlsx,text/csv,application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
          aria-describedby={`${id}-hint`}
          required
          onChange={(event) => {
            setTooLarge((event.target.files?.[0]?.size ?? 0) > MOST_BYTES)
            setStale(preview !== null)
          }}
        />
        {tooLarge ? (
          <p className="why">This file is larger than 900 kB. Save only the list itself, without pictures.</p>
        ) : null}
      </div>
      {children}
      <p className="acts">
        <button
          type="submit"
          name="then"
          value="preview"
          className={preview?.ready && !stale ? 'btn' : 'btn first'}
          aria-disabled={pending || undefined}
        >
          See what it would do
        </button>
      </p>
      <div ref={answer} tabIndex={-1} className="answer" aria-live="polite">
        {state.refused ? <Refusal refused={state.refused} kept="Nothing was read in." /> : null}
        {preview && !stale ? (
          <section aria-labelledby={`${id}-preview`} className="desk-sheet import-preview">
            <h2 id={`${id}-preview`}>{preview.fileName}</h2>
            <p className="lead">{preview.sentence}</p>
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
            <ReadAs columns={preview.columns} />
            <Rows rows={preview.rows} rowOf={rowOf} />
            <input type="hidden" name="digest" value={preview.digest} />
            <p className="acts">
              {preview.ready ? (
                <button
                  type="submit"
                  name="then"
                  value="import"
                  className="btn first"
                  aria-disabled={pending || undefined}
                >
                  Read in {what}
                </button>
              ) : (
                <button type="button" className="btn" aria-disabled="true">
                  Read in {what}: put the file right first
                </button>
              )}
            </p>
          </section>
        ) : null}
      </div>
    </form>
  )
}

function ReadAs({ columns }: { readonly columns: readonly { heading: string; readAs: string | null }[] }) {
  const aside = columns.filter((column) => column.readAs === null && column.heading.trim() !== '')
  const read = columns.filter((column) => column.readAs !== null)
  return (
    <p className="small second">
      {read.map((column) => `“${column.heading}” is read as ${column.readAs}`).join(', ')}
      {aside.length > 0 ? `. Left aside: ${aside.map((column) => `“${column.heading}”`).join(', ')}` : ''}.
    </p>
  )
}

function Rows({ rows, rowOf }: { readonly rows: readonly ImportRow[]; readonly rowOf: 'member' | 'course' }) {
  return (
    <div className="scroll" role="group" aria-label="Row by row">
      <table className="import-rows">
        <caption className="unseen">What each row of the file would do</caption>
        <thead>
          <tr>
            <th scope="col" className="lead-col">
              Row
            </th>
            <th scope="col">{rowOf === 'member' ? 'Name' : 'Tees'}</th>
            <th scope="col">{rowOf === 'member' ? 'Figure' : 'Par, rating, slope'}</th>
            <th scope="col">What happens</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={`${row.row} ${'name' in row ? row.name : `${row.tee} ${row.gender}`}`} className={row.what}>
              <td className="lead-col fig">{row.row}</td>
              <th scope="row">{'name' in row ? row.name : `${row.tee}, ${row.gender}`}</th>
              <td className={'name' in row && !/\d/.test(row.figure) ? 'second small' : 'fig'}>
                {'name' in row ? row.figure : `${row.par}, ${row.courseRating}, ${row.slopeRating}`}
              </td>
              <td>{row.sentence}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
