// A course card laid out as it is printed: holes down or across, in one block or two, a column of yards for each set of
// tees, totals between them, ratings at the head or the foot. Plain decisions.

import { capital, type Gender, type ReadWord, readWord, tenthsIn, usuallyWomen, wholeIn } from './course-words'

type Rows = readonly (readonly string[])[]

export interface SheetHole {
  readonly hole: number
  readonly par: number | null
  readonly strokeIndex: number | null
  readonly yards: number | null
}

export interface SheetTee {
  /** Stays the same however the tee is named. */
  readonly key: string
  /** Where it stands in the file, as the spreadsheet program numbers it. */
  readonly place: string
  readonly name: string
  readonly gender: Gender | null
  /** As written; empty where the card does not have it. */
  readonly courseRating: string
  readonly slopeRating: string
  /** The standard scratch score is another figure than the course rating: shown, never taken for it. */
  readonly sss: string | null
  /** Nothing on the card speaks for these tees being rated for this gender. */
  readonly unlikely: boolean
  readonly holes: readonly SheetHole[]
}

export interface PrintedCard {
  readonly tees: readonly SheetTee[]
  readonly notes: readonly string[]
}

/** Null where no nine holes stand in a row or a column. */
export function printedCard(rows: Rows): PrintedCard | null {
  const upright = holeColumns(rows)
  if (upright.length > 0) return cardIn(rows, upright, (at) => `column ${letterOf(at)}`)
  const width = Math.max(0, ...rows.map((row) => row.length))
  const lying = Array.from({ length: width }, (_, column) => rows.map((row) => row[column] ?? ''))
  const across = holeColumns(lying)
  return across.length > 0 ? cardIn(lying, across, (at) => `row ${at + 1}`) : null
}

interface HoleColumn {
  readonly column: number
  /** Rows of the grid by the number of the hole. */
  readonly rowOf: ReadonlyMap<number, number>
}

const holeIn = (cell: string) => wholeIn(cell.replace(/^hole\s*/i, '').replace(/(st|nd|rd|th)$/i, ''))

/** Columns in which nine or more holes follow one another from 1 or from 10. */
function holeColumns(rows: Rows): readonly HoleColumn[] {
  const width = Math.max(0, ...rows.map((row) => row.length))
  const found: HoleColumn[] = []
  const seen = new Set<number>()
  for (let column = 0; column < width; column++) {
    const rowOf = new Map<number, number>()
    for (const [at, row] of rows.entries()) {
      const number = holeIn(row[column] ?? '')
      if (number === null || number > 18) continue
      const first = rowOf.size === 0
      const last = Math.max(0, ...rowOf.keys())
      if (first ? number === 1 || number === 10 : number === last + 1) rowOf.set(number, at)
    }
    const numbers = [...rowOf.keys()]
    if (numbers.length < 9 || (numbers.length !== 9 && numbers.length !== 18) || numbers.some((one) => seen.has(one)))
      continue
    for (const one of numbers) seen.add(one)
    found.push({ column, rowOf })
  }
  // Holes 10 to 18 alone are no card.
  return seen.has(1) ? found : []
}

interface Column extends ReadWord {
  readonly at: number
  /** By the number of the hole. */
  readonly values: ReadonlyMap<number, number>
}

function cardIn(rows: Rows, holes: readonly HoleColumn[], placeOf: (column: number) => string): PrintedCard {
  const columns = joined(
    holes.flatMap((block, at) => columnsOf(rows, block, at === 0 ? 0 : block.column, holes[at + 1]?.column)),
  )
  const numbers = holes.flatMap((block) => [...block.rowOf.keys()]).sort((a, b) => a - b)
  const whole = (column: Column) => numbers.every((hole) => column.values.has(hole))
  const inRange = (column: Column, low: number, high: number) =>
    column.values.size >= 9 && [...column.values.values()].every((value) => value >= low && value <= high)
  const pars = columns.filter(
    (one) => one.word === 'par' || (one.word === null && one.name === '' && whole(one) && inRange(one, 3, 6)),
  )
  const indexes = columns.filter(
    (one) =>
      one.word === 'index' ||
      (one.word === null && one.name === '' && whole(one) && inRange(one, 1, 18) && !pars.includes(one)),
  )
  const yards = columns.filter(
    (one) =>
      (one.word === null || one.word === 'yards') &&
      inRange(one, 30, 900) &&
      !pars.includes(one) &&
      !indexes.includes(one),
  )
  const metres = columns.filter((one) => one.word === 'metres')
  const ratings = ratingsIn(rows, holes)
  const tees = yards.flatMap((column, at): SheetTee[] => {
    const name = column.name || (yards.length === 1 ? 'Yellow' : `Tees ${at + 1}`)
    return (['men', 'women'] as const).map((gender) => {
      const rated = ratings(column, gender)
      const custom = column.gender ?? (usuallyWomen(name) ? 'women' : 'men')
      const said = rated.said === gender
      return {
        key: `${column.at} ${gender}`,
        place: placeOf(column.at),
        name: capital(name),
        gender,
        courseRating: rated.courseRating,
        slopeRating: rated.slopeRating,
        sss: rated.sss,
        unlikely: !said && (rated.otherSaid || custom !== gender),
        holes: numbers.map((hole) => ({
          hole,
          par: ofGender(pars, gender)?.values.get(hole) ?? null,
          strokeIndex: ofGender(indexes, gender)?.values.get(hole) ?? null,
          yards: column.values.get(hole) ?? null,
        })),
      }
    })
  })
  const notes = [
    metres.length > 0 ? 'Columns in metres are passed over: the book has yards.' : null,
    columns.some((one) => one.word === 'sum') ? 'Out, in and total are added up anew, not taken from the file.' : null,
  ]
  return { tees, notes: notes.filter((one) => one !== null) }
}

/** The column that says this gender; else the one that says none; else, of two that say nothing, the second for women. */
function ofGender(columns: readonly Column[], gender: Gender): Column | undefined {
  const silent = columns.filter((one) => one.gender === null)
  const said = columns.find((one) => one.gender === gender)
  return said ?? (gender === 'women' ? silent[1] : undefined) ?? silent[0] ?? columns[0]
}

function columnsOf(rows: Rows, block: HoleColumn, from: number, to: number | undefined): Column[] {
  const first = Math.min(...block.rowOf.values())
  const width = Math.max(0, ...rows.map((row) => row.length))
  const columns: Column[] = []
  for (let at = from; at < (to ?? width); at++) {
    if (at === block.column) continue
    const values = new Map<number, number>()
    for (const [hole, row] of block.rowOf) {
      const value = wholeIn(rows[row]?.[at] ?? '')
      if (value !== null) values.set(hole, value)
    }
    const heading = headingOf(rows, first, at)
    if (heading !== '' || values.size > 0) columns.push({ at, values, ...readWord(heading) })
  }
  return columns
}

/** The row above the holes, and one more above it where that has a word for several columns: "Men" over "Par" and "SI". */
function headingOf(rows: Rows, first: number, column: number): string {
  const filled = rows
    .map((row, at) => ({ row, at }))
    .filter(({ row, at }) => at < first && row.some((cell) => cell !== ''))
  const [near, above] = [filled.at(-1), filled.at(-2)]
  if (!near) return ''
  const own = near.row[column] ?? ''
  const over = above && above.row.filter((cell) => cell !== '').length >= 2 ? (above.row[column] ?? '') : ''
  const rated = readWord(over).word
  // A row of ratings above the headings is no heading.
  return over !== '' && over !== own && !/^\d/.test(over) && rated !== 'rating' && rated !== 'slope'
    ? `${over} ${own}`
    : own
}

/** The second block of a card has the same columns again: they go together by what they say. */
function joined(columns: readonly Column[]): readonly Column[] {
  const all: Column[] = []
  for (const column of columns) {
    const at = all.findIndex(
      (one) =>
        one.word === column.word &&
        one.gender === column.gender &&
        one.name === column.name &&
        [...column.values.keys()].every((hole) => !one.values.has(hole)),
    )
    if (at < 0) all.push(column)
    else all[at] = { ...all[at]!, values: new Map([...all[at]!.values, ...column.values]) }
  }
  return all
}

interface Rated {
  readonly courseRating: string
  readonly slopeRating: string
  readonly sss: string | null
  /** The gender for which the card says a rating, where it says one. */
  readonly said: Gender | null
  readonly otherSaid: boolean
}

/** Rows of ratings at the head or the foot, with a figure in the column of each set of tees; or a small table by name. */
function ratingsIn(rows: Rows, holes: readonly HoleColumn[]) {
  const onHoles = new Set(holes.flatMap((block) => [...block.rowOf.values()]))
  const lines: { kind: 'rating' | 'slope' | 'sss' | 'both'; gender: Gender | null; row: readonly string[] }[] = []
  const table: { name: string; gender: Gender | null; courseRating: string; slopeRating: string }[] = []
  rows.forEach((row, at) => {
    if (onHoles.has(at)) return
    const words = row.map(readWord)
    const rating = words.findIndex((one) => one.word === 'rating')
    const slope = words.findIndex((one) => one.word === 'slope' && !one.both)
    if (rating >= 0 && slope >= 0 && rating !== slope) {
      for (const under of rows.slice(at + 1)) {
        const [written, sloped] = [under[rating] ?? '', under[slope] ?? '']
        if (tenthsIn(written) === null) break
        const named = readWord(under.find((cell) => cell !== '') ?? '')
        const gender = named.gender ?? under.map((cell) => readWord(cell).gender).find((one) => one !== null) ?? null
        table.push({ name: named.name, gender, courseRating: written, slopeRating: sloped })
      }
      return
    }
    const word = words.find((one) => one.word === 'rating' || one.word === 'slope' || one.word === 'sss')
    if (!word) return
    lines.push({ kind: word.both ? 'both' : (word.word as 'rating' | 'slope' | 'sss'), gender: word.gender, row })
  })
  return (column: Column, gender: Gender): Rated => {
    const cell = (kind: 'rating' | 'slope' | 'sss', of: Gender | null) => {
      for (const line of lines) {
        if (line.gender !== of) continue
        const written = line.row[column.at] ?? ''
        const pair = /^(\d\d(?:[.,]\d)?)\s*[/ ]\s*(\d{2,3})$/.exec(written)
        if (line.kind === 'both' && pair) return kind === 'rating' ? pair[1]! : kind === 'slope' ? pair[2]! : ''
        // A scratch score has no decimal: with one it is the course rating under its old name.
        const decimal = /^\d\d[.,]\d$/.test(written)
        const is = line.kind === 'sss' && decimal ? 'rating' : line.kind
        if (is === kind && /^\d/.test(written)) return written
      }
      return ''
    }
    const named = table.filter((one) => one.name.toLowerCase() === column.name.toLowerCase())
    const listed =
      named.find((one) => one.gender === gender) ?? named.find((one) => one.gender === null && usual(column) === gender)
    const find = (kind: 'rating' | 'slope' | 'sss') =>
      cell(kind, gender) || (usual(column) === gender ? cell(kind, null) : '')
    const other: Gender = gender === 'men' ? 'women' : 'men'
    const saysFor = (one: Gender) => cell('rating', one) !== '' || named.some((line) => line.gender === one)
    return {
      courseRating: listed?.courseRating ?? find('rating'),
      slopeRating: listed?.slopeRating ?? find('slope'),
      sss: find('sss') || null,
      said: saysFor(gender) || listed ? gender : null,
      otherSaid: saysFor(other),
    }
  }
}

const usual = (column: Column): Gender => column.gender ?? (usuallyWomen(column.name) ? 'women' : 'men')

/** As a spreadsheet letters its columns. */
export function letterOf(at: number): string {
  const letter = String.fromCharCode(65 + (at % 26))
  return at < 26 ? letter : `${letterOf(Math.floor(at / 26) - 1)}${letter}`
}
