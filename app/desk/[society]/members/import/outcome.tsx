'use client'

import type { PartProps } from './part-props'

/** Everybody who would be imported, with the name as it was split. A tick taken away leaves the row out. */
export function Outcome({ preview, choices, onChange }: PartProps) {
  const { rows } = preview
  if (rows.length === 0) return null
  return (
    <section aria-labelledby="outcome-h">
      <h3 id="outcome-h">What will be imported</h3>
      <div className="scroll" role="group" aria-label="Row by row">
        <table className="import-rows members-in">
          <caption className="unseen">What each row of the file would do</caption>
          <thead>
            <tr>
              <th scope="col" className="lead-col">
                Row
              </th>
              <th scope="col">First name</th>
              <th scope="col">Family name</th>
              <th scope="col">Tees</th>
              <th scope="col">Handicap</th>
              <th scope="col">What happens</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.row} className={row.what}>
                <td className="lead-col">
                  <label className="choice">
                    <input
                      type="checkbox"
                      // As it was pressed, also while the file is looked at again.
                      checked={!choices.leftOut.includes(row.row)}
                      aria-label={`Import row ${row.row}, ${row.firstName} ${row.familyName}`}
                      onChange={(event) =>
                        onChange({
                          leftOut: event.target.checked
                            ? choices.leftOut.filter((one) => one !== row.row)
                            : [...choices.leftOut, row.row],
                        })
                      }
                    />
                    <span className="fig">{row.row}</span>
                  </label>
                </td>
                <td>{row.firstName}</td>
                <th scope="row">{row.familyName}</th>
                <td>
                  {(row.genderUnsaid || choices.mended[row.row]?.gender !== undefined) && row.gender !== null ? (
                    <select
                      className="cell"
                      aria-label={`Tees, row ${row.row}`}
                      value={row.gender}
                      onChange={(event) =>
                        onChange({
                          mended: {
                            ...choices.mended,
                            [row.row]: { ...choices.mended[row.row], gender: event.target.value },
                          },
                        })
                      }
                    >
                      <option value="men">men</option>
                      <option value="women">women</option>
                    </select>
                  ) : (
                    (row.gender ?? '–')
                  )}
                </td>
                <td className={/\d/.test(row.figure) ? 'fig' : 'second small'}>{row.figure}</td>
                <td>{row.sentence}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  )
}
