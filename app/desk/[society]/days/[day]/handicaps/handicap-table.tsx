'use client'

import {
  columnFilteringFeature,
  createColumnHelper,
  createFilteredRowModel,
  createSortedRowModel,
  filterFn_includesString,
  globalFilteringFeature,
  rowSortingFeature,
  sortFn_basic,
  sortFn_text,
  tableFeatures,
  useTable,
} from '@tanstack/react-table'
import { useMemo } from 'react'
import { Opens } from '@/app/_parts/opens'
import { FindField, SortHead } from '@/app/desk/_form/searched-table'
import { strokesFigure } from '@/lib/boards/figure'
import type { HandicapTable as Table } from '@/lib/boards/views'
import type { CompetitionId, EntryId } from '@/lib/facts/ids'

type Row = Table['rows'][number] & { readonly indexTenths: number }

const features = tableFeatures({
  rowSortingFeature,
  columnFilteringFeature,
  globalFilteringFeature,
  sortedRowModel: createSortedRowModel(),
  filteredRowModel: createFilteredRowModel(),
  sortFns: { basic: sortFn_basic, text: sortFn_text },
  filterFns: { includesString: filterFn_includesString },
})
const helper = createColumnHelper<typeof features, Row>()

interface Props {
  readonly table: Table
  readonly rows: readonly Row[]
  readonly open: { readonly entryId: EntryId | undefined; readonly competitionId: CompetitionId | undefined }
}

/** A row a player: the figure, the course handicap, and the playing handicap in each competition, each opening. */
export function HandicapTable({ table: view, rows, open }: Props) {
  const columns = useMemo(
    () =>
      helper.columns([
        helper.accessor('name', {
          header: 'Player',
          sortFn: 'text',
          cell: ({ row }) => (
            <>
              {row.original.name}
              {row.original.note ? <span className="second small"> {row.original.note}</span> : null}
              <span className="under second small on-phone">
                {row.original.index}, {row.original.source}, {row.original.tee}
              </span>
            </>
          ),
        }),
        helper.accessor('tee', { header: 'Tees', sortFn: 'text' }),
        helper.accessor('source', { header: 'From', sortFn: 'text' }),
        helper.accessor('indexTenths', {
          header: 'Figure',
          sortFn: 'basic',
          enableGlobalFilter: false,
          cell: ({ row }) => <span className="fig">{row.original.index}</span>,
        }),
        helper.accessor('courseHandicap', {
          header: 'Course handicap',
          sortFn: 'basic',
          enableGlobalFilter: false,
          cell: ({ row }) => (
            <Opens
              className="fig"
              href={openHref(row.original.entryId, view.competitions[0]?.id)}
              label={`Course handicap ${strokesFigure(row.original.courseHandicap)}, ${row.original.name}: open the working`}
            >
              {strokesFigure(row.original.courseHandicap)}
            </Opens>
          ),
        }),
        ...view.competitions.map((competition) =>
          helper.accessor((row) => playingIn(row, competition.id), {
            id: competition.id,
            header: `${competition.name}, ${competition.allowance.replace(' %', '\u00a0%')}`,
            sortFn: 'basic',
            enableGlobalFilter: false,
            cell: ({ row, getValue }) => {
              const playing = getValue()
              return playing === null ? null : (
                <Opens
                  className="fig ph"
                  href={openHref(row.original.entryId, competition.id)}
                  label={`Playing handicap ${strokesFigure(playing)} in ${competition.name}, ${row.original.name}: open the working`}
                >
                  {strokesFigure(playing)}
                </Opens>
              )
            },
          }),
        ),
      ]),
    [view.competitions],
  )
  const data = useMemo(() => [...rows], [rows])
  const table = useTable({ features, columns, data, enableSortingRemoval: false, globalFilterFn: 'includesString' })
  return (
    <>
      <FindField id="find-player" label="Find a player" onFind={table.setGlobalFilter} />
      <div className="scroll" role="group" aria-label="Handicaps">
        <table className="desk-table handicaps">
          <caption className="unseen">Figure, course handicap and playing handicap of every player entered</caption>
          <thead>
            {table.getHeaderGroups().map((group) => (
              <tr key={group.id}>
                {group.headers.map((header, place) => (
                  <SortHead
                    key={header.id}
                    className={classAt(place)}
                    sorted={header.column.getIsSorted()}
                    onSort={header.column.getToggleSortingHandler()}
                  >
                    <table.FlexRender header={header} />
                  </SortHead>
                ))}
              </tr>
            ))}
          </thead>
          <tbody>
            {table.getRowModel().rows.map((row) => (
              <tr key={row.id} className={row.original.entryId === open.entryId ? 'here' : undefined}>
                {row.getAllCells().map((cell, place) =>
                  place === 0 ? (
                    <th key={cell.id} scope="row">
                      <table.FlexRender cell={cell} />
                    </th>
                  ) : (
                    <td key={cell.id} className={classAt(place)}>
                      <table.FlexRender cell={cell} />
                    </td>
                  ),
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  )
}

/** The name, then tees, where the figure is from and the figure, which stand under the name on a phone; then handicaps. */
const classAt = (place: number) => (place === 0 ? undefined : place < 3 ? 'folds' : place === 3 ? 'num folds' : 'num')

const playingIn = (row: Row, competitionId: CompetitionId) =>
  row.playing.find((one) => one.competitionId === competitionId)?.playingHandicap ?? null

const openHref = (entryId: EntryId, competitionId: CompetitionId | undefined) =>
  `?open=${entryId}${competitionId ? `&in=${competitionId}` : ''}#working`
