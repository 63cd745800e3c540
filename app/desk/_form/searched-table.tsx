'use client'
// What every table of the desk that is searched and sorted has: a field to find by, and heads that sort.

import type { ReactNode } from 'react'

interface FindProps {
  readonly id: string
  readonly label: string
  readonly onFind: (words: string) => void
}

export function FindField({ id, label, onFind }: FindProps) {
  return (
    <div className="field list-find">
      <label htmlFor={id}>{label}</label>
      <input id={id} type="search" autoComplete="off" onChange={(event) => onFind(event.target.value)} />
    </div>
  )
}

interface HeadProps {
  readonly sorted: false | 'asc' | 'desc'
  readonly onSort: ((event: unknown) => void) | undefined
  readonly className: string | undefined
  readonly children: ReactNode
}

export function SortHead({ sorted, onSort, className, children }: HeadProps) {
  return (
    <th
      scope="col"
      className={className}
      aria-sort={sorted === 'asc' ? 'ascending' : sorted === 'desc' ? 'descending' : 'none'}
    >
      <button type="button" className="sorts" onClick={onSort}>
        {children}
        <span aria-hidden="true">{sorted === 'asc' ? ' ↑' : sorted === 'desc' ? ' ↓' : ''}</span>
      </button>
    </th>
  )
}
