'use client'

import {
  createColumnHelper,
  createSortedRowModel,
  rowSortingFeature,
  sortFn_basic,
  sortFn_text,
  tableFeatures,
  useTable,
} from '@tanstack/react-table'
import { useMemo, useState } from 'react'
import type { ActLine } from '@/lib/boards/record-of-acts'

type Line = ActLine & { readonly when: string; readonly year: string }

const features = tableFeatures({
  rowSortingFeature,
  sortedRowModel: createSortedRowModel(),
  sortFns: { basic: sortFn_basic, text: sortFn_text },
})
const helper = createColumnHelper<typeof features, Line>()

/** More changes than these are folded: a first draw moves everybody. */
const SHOWN = 4

const columns = helper.columns([
  helper.accessor('id', {
    header: 'When',
    sortFn: 'basic',
    cell: ({ row: { original } }) => (
      <>
        {original.when} <span className="second">{original.year}</span>
        {original.from ? <span className="under second small">from {original.from}</span> : null}
      </>
    ),
  }),
  helper.accessor('who', { header: 'Who', sortFn: 'text' }),
  helper.accessor('did', {
    header: 'Did',
    sortFn: 'text',
    cell: ({ row: { original } }) => (
      <>
        {original.did}
        <span className="under second small">{original.areaName}</span>
      </>
    ),
  }),
  helper.accessor('subject', {
    header: 'To what, and what changed',
    sortFn: 'text',
    cell: ({ row: { original } }) => (
      <>
        <b>{original.subject}</b>
        <Changes changes={original.changes} />
      </>
    ),
  }),
])

export function RecordTable({ lines }: { readonly lines: readonly Line[] }) {
  const [sorting, setSorting] = useState([{ id: 'id', desc: true }])
  const data = useMemo(() => [...lines], [lines])
  const table = useTable({
    features,
    columns,
    data,
    state: { sorting },
    onSortingChange: setSorting,
    enableSortingRemoval: false,
  })
  return (
    <div className="scroll" role="group" aria-label="Record of acts">
      <table className="desk-table record">
        <caption className="unseen">What was done, newest first</caption>
        <thead>
          {table.getHeaderGroups().map((group) => (
            <tr key={group.id}>
              {group.headers.map((header) => {
                const sorted = header.column.getIsSorted()
                return (
                  <th
                    key={header.id}
                    scope="col"
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
            <tr key={row.id}>
              {row.getAllCells().map((cell) => (
                <td key={cell.id} className={`record-${cell.column.id}`}>
                  <table.FlexRender cell={cell} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

function Changes({ changes }: { readonly changes: Line['changes'] }) {
  if (changes.length === 0) return null
  const list = (some: Line['changes']) => (
    <dl className="record-changes">
      {some.map((change) => (
        <div key={change.what}>
          <dt>{change.what}</dt>
          <dd>
            {change.before === null ? null : <del>{change.before}</del>}{' '}
            {change.after === null ? <span className="second">taken out</span> : <span>{change.after}</span>}
          </dd>
        </div>
      ))}
    </dl>
  )
  if (changes.length <= SHOWN) return list(changes)
  return (
    <>
      {list(changes.slice(0, SHOWN - 1))}
      <details className="record-more">
        <summary>and {changes.length - SHOWN + 1} more</summary>
        {list(changes.slice(SHOWN - 1))}
      </details>
    </>
  )
}
