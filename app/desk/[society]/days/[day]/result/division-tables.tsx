import { rowsOfDivision } from '@/lib/boards/divisions'
import { scoreShort } from '@/lib/boards/in-words'
import type { CompetitionBoard } from '@/lib/boards/views'

/** Each division with its own places, as it will stand on the sheet. */
export function DivisionTables({ board }: { readonly board: CompetitionBoard }) {
  return (board.divisions ?? []).map(({ id, name, sentence }) => {
    const rows = rowsOfDivision(board, id)
    return (
      <section key={id} aria-labelledby={`division-${board.id}-${id}`}>
        <h3 id={`division-${board.id}-${id}`}>{name}</h3>
        <p className="small second">{sentence}</p>
        {rows.length === 0 ? (
          <p>Nobody is in it.</p>
        ) : (
          <div className="scroll" role="group" aria-label={`Standings, ${board.name}, ${name}`}>
            <table className="standing">
              <caption className="unseen">{`${board.name}, ${name}`}</caption>
              <thead>
                <tr>
                  <th scope="col" className="lead-col">
                    Place
                  </th>
                  <th scope="col">Name</th>
                  <th scope="col" className="num">
                    {board.unit}
                  </th>
                </tr>
              </thead>
              <tbody>
                {rows.map((row) => (
                  <tr key={row.entrant}>
                    <td className="lead-col fig">{row.place === null ? '' : `${row.place}${row.tied ? '=' : ''}`}</td>
                    <th scope="row">
                      {row.name}
                      {row.tieSentence ? <span className="under aside">{row.tieSentence}</span> : null}
                    </th>
                    <td className="num fig ph">{row.score === null ? '–' : scoreShort(row.score, board.unit)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        )}
      </section>
    )
  })
}
