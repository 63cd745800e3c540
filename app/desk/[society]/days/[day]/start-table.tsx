import { clockInWords } from '@/lib/boards/dates-in-words'
import { strokesFigure } from '@/lib/boards/figure'
import { sideFigures } from '@/lib/boards/side-handicaps'
import { startHolesOf } from '@/lib/boards/start-holes'
import type { HandicapTable } from '@/lib/boards/views'
import type { DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { fullName } from '@/lib/facts/person-name'

const SEATS = ['First', 'Second', 'Third', 'Fourth']
const SIZES = ['', 'one', 'a two', 'a three']

/** The groups as they stand, each name with the playing handicap of the first competition. */
export function StartTable({ record, handicaps }: { readonly record: DayRecord; readonly handicaps: HandicapTable }) {
  const entry = new Map(record.entries.map((one) => [one.id, one]))
  const playing = new Map(handicaps.rows.map((row) => [row.entryId, row.playing[0]?.playingHandicap]))
  const usual = new Set(record.tees.filter((tee) => tee.isDefault && tee.gender === 'men').map((tee) => tee.id))
  const main = record.competitions[0]?.id
  const ofSides = main && sideFigures(record).get(main)
  const starts = startHolesOf(record)
  const teeName = new Map(record.tees.map((tee) => [tee.id, tee.name]))
  return (
    <div className="scroll" tabIndex={0} role="group" aria-label={`The ${record.groups.length} groups`}>
      <table role="table" className="sheet-table">
        <caption className="unseen">Start sheet, {record.groups.length} groups</caption>
        <thead role="rowgroup">
          <tr role="row">
            <th role="columnheader" scope="col" className="lead-col">
              {record.round.startKind === 'shotgun' ? 'Hole' : 'Time'}
            </th>
            {SEATS.map((seat) => (
              <th key={seat} role="columnheader" scope="col">
                {seat}
              </th>
            ))}
          </tr>
        </thead>
        <tbody role="rowgroup">
          {record.groups.map((group) => (
            <tr key={group.id} role="row">
              <th role="rowheader" scope="row" className="lead-col fig time">
                {record.round.startKind === 'shotgun' ? starts.get(group.number) : clockInWords(group.startTime)}
              </th>
              {SEATS.map((seat, place) => {
                const one = entry.get(group.entryIds[place] ?? ('' as EntryId))
                if (!one)
                  return (
                    <td key={seat} role="cell">
                      {place === group.entryIds.length ? <span className="second">{SIZES[place]}</span> : null}
                    </td>
                  )
                const handicap = playing.get(one.id) ?? ofSides?.get(one.id)
                return (
                  <td key={seat} role="cell">
                    {fullName(one)}{' '}
                    <span className="fig ph">{handicap === undefined ? '' : strokesFigure(handicap)}</span>{' '}
                    {one.kind === 'guest' ? <span className="second small">guest</span> : null}{' '}
                    {usual.has(one.roundTeeId) ? null : (
                      <span className="second small">{teeName.get(one.roundTeeId)?.toLowerCase()}</span>
                    )}
                  </td>
                )
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
