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
import { strokesFigure } from '@/lib/boards/figure'
import type { HandicapTable as Table } from '@/lib/boards/views'

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
  readonly open: { readonly entryId: string | undefined; readonly competitionId: string | undefined }
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
      <div className="field list-find">
        <label htmlFor="find-player">Find a player</label>
        <input
          id="find-player"
          type="search"
          autoComplete="off"
          onChange={(event) => table.setGlobalFilter(event.target.value)}
        />
      </div>
      <div className="scroll" role="group" aria-label="Handicaps">
        <table className="desk-table handicaps">
          <caption className="unseen">Figure, course handicap and playing handicap of every player entered</caption>
          <thead>
            {table.getHeaderGroups().map((group) => (
              <tr key={group.id}>
                {group.headers.map((header, place) => {
                  const sorted = header.column.getIsSorted()
                  return (
                    <th
                      key={header.id}
                      scope="col"
                      className={place < 3 ? undefined : 'num'}
                      aria-sort={sorted === 'asc' ? 'ascending' : sorted === 'desc' ? 'descending' : 'none'}
                    >
                      <button type="button" className="sorts" onClick={header.column.getToggleSortingHandler()}>
                        <table.FlexRender header={header} />
                        <span aria-hidden="true">{sorted === 'asc' ? ' ↑' : sorted === 'desc' ? ' ↓' : ''}</span>
                      </button>
                    </th>
                  )
                })}
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
                    <td key={cell.id} className={place < 3 ? undefined : 'num'}>
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

const playingIn = (row: Row, competitionId: string) =>
  row.playing.find((one) => one.competitionId === competitionId)?.playingHandicap ?? null

const openHref = (entryId: string, competitionId: string | undefined) =>
  `?open=${entryId}${competitionId ? `&in=${competitionId}` : ''}#working`
