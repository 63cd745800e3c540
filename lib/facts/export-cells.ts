// A value of the book as the cell of a table, and back, exactly. A spreadsheet must never take a cell for a formula.

export type Stored = string | number | null
export type CellKind = 'text' | 'whole' | 'yes-no' | 'moment'

// Signs a spreadsheet begins a formula with, and the mark itself, so that taking one mark off gives the text back.
const MARKED = /^[=+\-@\t\r\n'\uFEFF]/

/** Nothing stands for "not set"; a lone mark for a text of no signs. */
export function cellOf(value: Stored, kind: CellKind): string {
  if (value === null) return ''
  switch (kind) {
    case 'whole':
      return String(value)
    case 'yes-no':
      return value === 0 ? 'no' : 'yes'
    case 'moment':
      return new Date(String(value)).toISOString()
    case 'text': {
      const text = String(value)
      return text === '' || MARKED.test(text) ? `'${text}` : text
    }
  }
}

const MOMENT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/

/** The value, or a sentence about what is wrong with the cell. */
export function valueOfCell(cell: string, kind: CellKind): { value: Stored } | { wrong: string } {
  if (cell === '') return { value: null }
  switch (kind) {
    case 'whole':
      return /^-?\d{1,15}$/.test(cell) ? { value: Number(cell) } : { wrong: 'a whole number is needed here' }
    case 'yes-no':
      return cell === 'yes' || cell === 'no' ? { value: cell === 'yes' ? 1 : 0 } : { wrong: 'write yes or no' }
    case 'moment':
      return MOMENT.test(cell) && !Number.isNaN(Date.parse(cell)) && new Date(cell).toISOString() === cell
        ? { value: cell.replace('Z', '+00:00') }
        : { wrong: 'a moment is written like 2026-06-13T09:30:00.000Z' }
    case 'text':
      return { value: cell.startsWith("'") ? cell.slice(1) : cell }
  }
}
