'use client'

import { COLUMN_IN_WORDS, MEMBER_COLUMNS } from '@/lib/facts/member-import'
import type { PartProps } from './part-props'

/** The spreadsheet as it is; under each of its own headings one says what it is. On a phone the columns are a list. */
export function SpreadsheetColumns({ preview, choices, onChange }: PartProps) {
  const { columns, sheet, headingRow, notes } = preview
  return (
    <section aria-labelledby="columns-h">
      <h3 id="columns-h">What is in each column?</h3>
      <p>
        {headingRow === 0
          ? 'The file has no headings that we know. Say above each column what it is.'
          : 'Your own headings are in bold. Under each, say what it is; change any guess that is wrong.'}
      </p>
      {/* Focusable, so that the keys can scroll it. */}
      <div className="columns-asked" role="group" aria-label="The columns of the file" tabIndex={0}>
        <div className="column-asked row-numbers" aria-hidden="true">
          <p className="of-file">Row</p>
          <p className="asked" />
          {sheet.map((row) => (
            <p key={row.row} className={`of-row ${row.state}`}>
              {row.row}
            </p>
          ))}
        </div>
        {columns.map((column, place) => {
          const called = column.heading === '' ? `Column ${letterOf(column.at)}` : column.heading
          return (
            <div key={column.at} className={column.as === 'out' ? 'column-asked out' : 'column-asked'}>
              <p className="of-file" title={called}>
                {called}
              </p>
              <p className="asked">
                <select
                  className="cell"
                  aria-label={`What is “${called}”?`}
                  value={column.as}
                  onChange={(event) => {
                    const as = MEMBER_COLUMNS.find((one) => one === event.target.value) ?? 'out'
                    onChange({ columns: { ...choices.columns, [column.at]: as } })
                  }}
                >
                  {MEMBER_COLUMNS.map((one) => (
                    <option key={one} value={one}>
                      {COLUMN_IN_WORDS[one]}
                    </option>
                  ))}
                </select>
              </p>
              {sheet.map((row) => (
                <p key={row.row} className={`of-row ${row.state}`} title={row.cells[place]}>
                  {row.cells[place]}
                </p>
              ))}
            </div>
          )
        })}
      </div>
      {notes.map((note) => (
        <p key={note} className="small second">
          {note}
        </p>
      ))}
      <p className="heading-row">
        <label>
          The headings are in row{' '}
          <select
            className="cell"
            value={headingRow}
            onChange={(event) => onChange({ headingRow: Number(event.target.value), columns: {} })}
          >
            <option value={0}>none: there are no headings</option>
            {rowsToChoose(headingRow).map((row) => (
              <option key={row} value={row}>
                {row}
              </option>
            ))}
          </select>
        </label>
      </p>
    </section>
  )
}

const rowsToChoose = (now: number) =>
  [...new Set([...Array.from({ length: 15 }, (_, at) => at + 1), now])].filter(Boolean)

/** As a spreadsheet letters its columns. */
function letterOf(at: number): string {
  const letter = String.fromCharCode(65 + (at % 26))
  return at < 26 ? letter : `${letterOf(Math.floor(at / 26) - 1)}${letter}`
}
