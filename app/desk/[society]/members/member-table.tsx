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
import { useMemo, useState } from 'react'
import Link from '@/app/_parts/link'
import { FindField, SortHead } from '@/app/desk/_form/searched-table'
import { shortDateInWords } from '@/lib/boards/dates-in-words'
import type { MemberRow } from '@/lib/boards/desk-views'
import { byName, fullName } from '@/lib/facts/person-name'

const features = tableFeatures({
  rowSortingFeature,
  columnFilteringFeature,
  globalFilteringFeature,
  sortedRowModel: createSortedRowModel(),
  filteredRowModel: createFilteredRowModel(),
  sortFns: { basic: sortFn_basic, text: sortFn_text },
  filterFns: { includesString: filterFn_includesString },
})
const helper = createColumnHelper<typeof features, MemberRow>()

const SOURCES = { 'home-club': 'home club', society: 'society', claimed: 'claimed' } as const

/** Nobody without a figure stands between those who have one. */
const NO_FIGURE = 9999

export function MemberTable({ members, at }: { readonly members: readonly MemberRow[]; readonly at: string }) {
  const [sorting, setSorting] = useState([{ id: 'name', desc: false }])
  const columns = useMemo(
    () =>
      helper.columns([
        helper.accessor((row) => `${fullName(row)} ${row.familyName}`, {
          id: 'name',
          header: 'Name',
          sortFn: (a, b) => byName(a.original, b.original),
          cell: ({ row }) => (
            <>
              <Link href={`${at}/${row.original.personId}`}>{fullName(row.original)}</Link>
              {noteOf(row.original) ? <span className="second small"> {noteOf(row.original)}</span> : null}
              <span className="under second small on-phone">{lineOf(row.original)}</span>
            </>
          ),
        }),
        helper.accessor((row) => row.indexTenths ?? NO_FIGURE, {
          id: 'figure',
          header: 'Handicap',
          sortFn: 'basic',
          enableGlobalFilter: false,
          cell: ({ row }) =>
            row.original.indexTenths === null ? (
              <span className="second small">{row.original.figure}</span>
            ) : (
              <span className="fig">{row.original.figure}</span>
            ),
        }),
        helper.accessor((row) => (row.indexTenths === null ? '' : SOURCES[row.handicapSource]), {
          id: 'source',
          header: 'From',
          sortFn: 'text',
        }),
        helper.accessor((row) => row.figureFrom ?? '', {
          id: 'since',
          header: 'Since',
          sortFn: 'text',
          enableGlobalFilter: false,
          cell: ({ row }) => (row.original.figureFrom ? shortDateInWords(row.original.figureFrom) : ''),
        }),
        helper.accessor('gender', { header: 'Tees for', sortFn: 'text', enableGlobalFilter: false }),
        helper.accessor('days', { header: 'Days', sortFn: 'basic', enableGlobalFilter: false }),
      ]),
    [at],
  )
  const data = useMemo(() => [...members], [members])
  const table = useTable({
    features,
    columns,
    data,
    state: { sorting },
    onSortingChange: setSorting,
    enableSortingRemoval: false,
    globalFilterFn: 'includesString',
  })
  const rows = table.getRowModel().rows
  return (
    <>
      <FindField id="find-member" label="Find a member" onFind={table.setGlobalFilter} />
      <div className="scroll" role="group" aria-label="Members">
        <table className="desk-table members">
          <caption className="unseen">Members and known guests</caption>
          <thead>
            {table.getHeaderGroups().map((group) => (
              <tr key={group.id}>
                {group.headers.map((header) => (
                  <SortHead
                    key={header.id}
                    className={isNumber(header.id) ? 'num' : FOLDED.includes(header.id) ? 'folds' : undefined}
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
            {rows.map((row) => (
              <tr key={row.id}>
                {row.getAllCells().map((cell) =>
                  cell.column.id === 'name' ? (
                    <th key={cell.id} scope="row">
                      <table.FlexRender cell={cell} />
                    </th>
                  ) : (
                    <td key={cell.id} className={classOf(cell.column.id)}>
                      <table.FlexRender cell={cell} />
                    </td>
                  ),
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className="small second" role="status">
        {rows.length === members.length ? `${members.length} in the list` : `${rows.length} of ${members.length} found`}
      </p>
    </>
  )
}

const isNumber = (id: string) => id === 'figure' || id === 'days'

/** On a phone these stand under the name instead. */
const FOLDED: readonly string[] = ['source', 'since', 'gender']

const classOf = (id: string) =>
  id === 'figure' ? 'num' : isNumber(id) ? 'num fig' : FOLDED.includes(id) ? 'folds' : undefined

const lineOf = (row: MemberRow) =>
  [
    row.indexTenths === null ? null : SOURCES[row.handicapSource],
    row.figureFrom ? `since ${shortDateInWords(row.figureFrom)}` : null,
  ]
    .filter(Boolean)
    .join(', ')

const noteOf = (row: MemberRow) =>
  [
    row.kind === 'guest' ? 'guest' : null,
    row.leftOn ? `left ${shortDateInWords(row.leftOn)}` : null,
    row.regular || row.kind === 'guest' ? null : 'not a regular',
  ]
    .filter(Boolean)
    .join(', ')
