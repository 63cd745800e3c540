// A course card out of a spreadsheet: laid out as it is printed, or a list with a line for each tee and hole.

import type { Fault } from '@/lib/result'
import { capital, type Gender, type ListWord, listWordOf, readWord, wholeIn } from './course-words'
import { printedCard, type SheetTee } from './printed-card'

type Rows = readonly (readonly string[])[]

export interface SheetCourse {
  readonly name: string | null
  readonly tees: readonly SheetTee[]
  readonly notes: readonly string[]
  readonly faults: readonly Fault[]
}

/** Null when neither a card nor a list is found. */
export function courseIn(rows: Rows): SheetCourse | null {
  for (const [at, row] of rows.slice(0, 30).entries()) {
    const words = row.map(listWordOf)
    if (words.includes('hole') && words.includes('tee') && words.includes('par')) return listIn(rows, at)
  }
  const card = printedCard(rows)
  return card && card.tees.length > 0 ? { name: nameIn(rows), faults: [], ...card } : null
}

/** "Course: Gorse Hill", a cell beside "Course", or the first line of one cell. */
function nameIn(rows: Rows): string | null {
  for (const row of rows.slice(0, 12)) {
    const filled = row.filter((cell) => cell !== '')
    const said = /^(?:course|club|venue)(?: name)?\s*:\s*(.+)$/i.exec(filled[0] ?? '')
    if (said) return said[1]!.trim()
    const label = row.findIndex((cell) => listWordOf(cell) === 'course')
    if (label >= 0) return row.slice(label + 1).find((cell) => cell !== '') ?? null
    const only = new Set(filled).size === 1 ? filled[0]! : ''
    if (only !== '' && /\p{L}{3}/u.test(only) && readWord(only).word === null) return only
  }
  return null
}

function listIn(rows: Rows, headingAt: number): SheetCourse {
  const words = rows[headingAt]!.map(listWordOf)
  const has = (word: ListWord) => words.includes(word)
  const faults: Fault[] = []
  const groups = new Map<
    string,
    { name: string; gender: Gender | null; lines: { row: number; cells: readonly string[] }[] }
  >()
  const cell = (cells: readonly string[], word: ListWord) => cells[words.indexOf(word)] ?? ''
  let name: string | null = null
  rows.slice(headingAt + 1).forEach((cells, below) => {
    const row = headingAt + below + 2
    if (wholeIn(cell(cells, 'hole')) === null) return
    if (has('course')) name ??= cell(cells, 'course') || null
    const tee = readWord(cell(cells, 'tee'))
    if (cell(cells, 'tee') === '') {
      faults.push({ place: `row ${row}`, sentence: 'The tee is missing.' })
      return
    }
    const called = capital(tee.name) || cell(cells, 'tee')
    const gender = genderIn(cell(cells, 'gender')) ?? tee.gender
    const key = `${called} ${gender}`
    const group = groups.get(key) ?? { name: called, gender, lines: [] }
    group.lines.push({ row, cells })
    groups.set(key, group)
  })
  const missing = (['index', 'yards', 'rating', 'slope', 'gender'] as const).filter((word) => !has(word))
  const notes = missing.map((word) => `The file has no column for ${MISSING[word]}.`)
  const tees = [...groups].map(([key, { name: called, gender, lines }]): SheetTee => {
    const said = (word: ListWord) =>
      lines.map((line) => (has(word) ? cell(line.cells, word) : '')).find((one) => one !== '') ?? ''
    const first = lines[0]!.row
    return {
      key,
      place: lines.length === 1 ? `row ${first}` : `rows ${first} to ${lines.at(-1)!.row}`,
      name: called,
      gender,
      courseRating: said('rating'),
      slopeRating: said('slope'),
      sss: null,
      unlikely: false,
      holes: lines
        .map(({ cells }) => ({
          hole: wholeIn(cell(cells, 'hole')) ?? 0,
          par: wholeIn(cell(cells, 'par')),
          strokeIndex: has('index') ? wholeIn(cell(cells, 'index')) : null,
          yards: has('yards') ? wholeIn(cell(cells, 'yards')) : null,
        }))
        .sort((a, b) => a.hole - b.hole),
    }
  })
  return { name: name ?? nameIn(rows.slice(0, headingAt)), tees, notes, faults }
}

const MISSING = {
  index: 'the stroke index',
  yards: 'the yards',
  rating: 'the course rating: it is asked for below',
  slope: 'the slope rating: it is asked for below',
  gender: 'men and women: it is asked for below',
} as const

function genderIn(written: string): Gender | null {
  if (/^(w|f|l)/i.test(written)) return 'women'
  return /^(m|g)/i.test(written) ? 'men' : null
}
