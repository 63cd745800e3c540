// A course card out of a spreadsheet: a line for each hole with a column for each tee, the same lying on its side, or a
// line for each tee and hole. Plain decisions.

import type { KeepCourse } from '@/lib/facts/commands'
import type { Fault } from '@/lib/result'
import { plainHeading } from './table-file'

type Gender = 'men' | 'women'
type Rows = readonly (readonly string[])[]

export interface SheetCourse {
  readonly name: string | null
  readonly tees: KeepCourse['tees']
  readonly columns: readonly { readonly heading: string; readonly readAs: string | null }[]
  readonly faults: readonly Fault[]
}

const WORDS = {
  hole: ['hole', 'holeno', 'holenumber', 'no'],
  par: ['par', 'parmen', 'parm', 'menspar', 'parmens'],
  parWomen: ['parwomen', 'parw', 'womenspar', 'ladiespar', 'parladies', 'parl'],
  index: ['si', 'strokeindex', 'index', 'strokeindexmen', 'simen', 'sim', 'hcp', 'strokeindexm'],
  indexWomen: ['siwomen', 'siw', 'strokeindexwomen', 'siladies', 'sil', 'strokeindexw', 'strokeindexladies'],
  tee: ['tee', 'tees', 'teename', 'set'],
  gender: ['gender', 'sex', 'mf', 'mw', 'menwomen'],
  yards: ['yards', 'yds', 'length', 'yardage', 'distance'],
  rating: ['rating', 'courserating', 'cr', 'courseratingmen', 'crmen', 'ratingmen', 'menscourserating'],
  ratingWomen: [
    'courseratingwomen',
    'crwomen',
    'ratingwomen',
    'womenscourserating',
    'courseratingladies',
    'ratingladies',
  ],
  slope: ['slope', 'sloperating', 'slopemen', 'sloperatingmen', 'mensslope', 'mensloperating'],
  slopeWomen: ['slopewomen', 'sloperatingwomen', 'womensslope', 'slopeladies', 'sloperatingladies'],
  course: ['course', 'coursename', 'club', 'venue'],
} as const
type Word = keyof typeof WORDS

const wordOf = (cell: string): Word | null => {
  const plain = plainHeading(cell)
  return (Object.keys(WORDS) as Word[]).find((word) => (WORDS[word] as readonly string[]).includes(plain)) ?? null
}

/** Null when no row of the first fifteen heads a card. */
export function courseIn(rows: Rows): SheetCourse | null {
  for (const [at, row] of rows.slice(0, 15).entries()) {
    const words = row.map(wordOf)
    const above = nameAbove(rows.slice(0, at))
    if (words.includes('hole') && words.includes('par') && words.includes('tee')) return longCard(rows, at)
    if (words.includes('hole') && words.includes('par')) return card(rows, at, above)
    if (words[0] === 'hole' && row.slice(1, 10).every((cell, hole) => cell === String(hole + 1))) {
      const lying = rows.slice(at).filter((line) => line.some((cell) => cell !== ''))
      const width = Math.max(...lying.map((line) => line.length))
      const upright = Array.from({ length: width }, (_, column) => lying.map((line) => line[column] ?? ''))
      return card(upright, 0, above)
    }
  }
  return null
}

function nameAbove(rows: Rows): string | null {
  for (const row of rows) {
    const label = row.findIndex((cell) => wordOf(cell) === 'course')
    if (label >= 0) return row.slice(label + 1).find((cell) => cell !== '') ?? null
    const filled = row.filter((cell) => cell !== '')
    const said = /^course\s*:\s*(.+)$/i.exec(filled[0] ?? '')
    if (said) return said[1]!.trim()
    if (filled.length === 1) return filled[0]!
  }
  return null
}

/** 69.2 is 692; one decimal, and never more than the book can hold exactly. */
function tenthsIn(written: string): number | null {
  const match = /^(\d{2})(?:[.,](\d)0*)?$/.exec(written.trim())
  return match ? Number(match[1]) * 10 + Number(match[2] ?? 0) : null
}

const wholeIn = (written: string): number | null => (/^\d{1,4}$/.test(written) ? Number(written) : null)

function card(rows: Rows, headingRow: number, name: string | null): SheetCourse {
  const heading = rows[headingRow]!
  const words = heading.map(wordOf)
  const at = (word: Word) => words.indexOf(word)
  const teeColumns = heading.flatMap((cell, column) =>
    cell !== '' && words[column] === null && isTee(cell) ? [{ column, name: teeName(cell) }] : [],
  )
  const faults: Fault[] = []
  const holes = new Map<number, readonly string[]>()
  const ratings: Partial<Record<Word, readonly string[]>> = {}
  rows.slice(headingRow + 1).forEach((row, below) => {
    const label = row[at('hole')] ?? ''
    const number = wholeIn(label)
    const word = wordOf(label) ?? wordOf(row.find((cell) => cell !== '') ?? '')
    if (number !== null && number >= 1 && number <= 18) {
      if (holes.has(number))
        faults.push({ place: `row ${headingRow + below + 2}`, sentence: `Hole ${number} is there twice.` })
      holes.set(number, row)
    } else if (word && ['rating', 'ratingWomen', 'slope', 'slopeWomen'].includes(word)) ratings[word] = row
  })
  const tees = teeColumns.flatMap(({ column, name: tee }) =>
    (['men', 'women'] as const).flatMap((gender) => {
      const rating = tenthsIn(ratings[gender === 'men' ? 'rating' : 'ratingWomen']?.[column] ?? '')
      const slope = wholeIn(ratings[gender === 'men' ? 'slope' : 'slopeWomen']?.[column] ?? '')
      if (rating === null && slope === null) return []
      if (rating === null || slope === null) {
        faults.push({ place: `${tee}, ${gender}`, sentence: 'A course rating and a slope rating belong together.' })
        return []
      }
      const own = (mens: Word, womens: Word) => (gender === 'women' && at(womens) >= 0 ? at(womens) : at(mens))
      return [
        {
          name: tee,
          gender,
          courseRatingTenths: rating,
          slopeRating: slope,
          holes: [...holes]
            .sort(([a], [b]) => a - b)
            .map(([hole, row]) =>
              holeOf(
                hole,
                row,
                { par: own('par', 'parWomen'), index: own('index', 'indexWomen'), yards: column },
                `${tee}, ${gender}`,
                faults,
              ),
            ),
        },
      ]
    }),
  )
  if (tees.length === 0 && faults.length === 0)
    faults.push({
      place: 'file',
      sentence: 'No tee has its ratings: add the lines “Course rating men” and “Slope men” (or women) under the holes.',
    })
  const shown = heading.map((cell, column) => ({
    heading: cell,
    readAs: words[column] ?? (teeColumns.some((tee) => tee.column === column) ? `Yards, ${teeName(cell)}` : null),
  }))
  return { name, tees, columns: shown, faults }
}

const NOT_TEES = ['out', 'in', 'total', 'metres', 'meters', 'name', 'notes', 'holename']
const isTee = (cell: string) => /[a-z]/i.test(cell) && !NOT_TEES.includes(plainHeading(cell))

/** "Yellow yds" and "yellow tees" are Yellow. */
function teeName(cell: string): string {
  const plain = cell
    .replace(/\b(yards|yds|yardage|tees?|markers?)\b/gi, '')
    .replace(/[()\s]+/g, ' ')
    .trim()
  return plain === '' ? cell : plain.charAt(0).toUpperCase() + plain.slice(1).toLowerCase()
}

function holeOf(
  hole: number,
  row: readonly string[],
  at: { par: number; index: number; yards: number },
  place: string,
  faults: Fault[],
): KeepCourse['tees'][number]['holes'][number] {
  const need = (column: number, called: string) => {
    const value = wholeIn(row[column] ?? '')
    if (value === null) faults.push({ place: `${place}, hole ${hole}`, sentence: `The ${called} is missing.` })
    return value ?? 0
  }
  return {
    hole,
    par: need(at.par, 'par'),
    strokeIndex: need(at.index, 'stroke index'),
    yards: wholeIn(row[at.yards] ?? ''),
  }
}

function longCard(rows: Rows, headingRow: number): SheetCourse {
  const heading = rows[headingRow]!
  const words = heading.map(wordOf)
  const faults: Fault[] = []
  const tees = new Map<
    string,
    { first: readonly string[]; lines: (readonly string[])[]; name: string; gender: Gender }
  >()
  let name: string | null = null
  rows.slice(headingRow + 1).forEach((row, below) => {
    if (row.every((cell) => cell === '')) return
    const cell = (word: Word) => (words.includes(word) ? (row[words.indexOf(word)] ?? '') : '')
    const place = `row ${headingRow + below + 2}`
    name ??= cell('course') === '' ? null : cell('course')
    const gender = /^(w|f|l)/i.test(cell('gender')) ? 'women' : /^(m|g)/i.test(cell('gender')) ? 'men' : null
    if (cell('tee') === '') faults.push({ place, sentence: 'The tee is missing.' })
    else if (gender === null) faults.push({ place, sentence: 'Men or women? Write M or W.' })
    else {
      const key = `${teeName(cell('tee'))} ${gender}`
      const tee = tees.get(key) ?? { first: row, lines: [], name: teeName(cell('tee')), gender }
      tee.lines.push(row)
      tees.set(key, tee)
    }
  })
  const column = (word: Word) => words.indexOf(word)
  return {
    name,
    faults,
    columns: heading.map((cell, at) => ({ heading: cell, readAs: words[at] ?? null })),
    tees: [...tees.values()].map(({ lines, name: tee, gender }) => {
      const place = `${tee}, ${gender}`
      const said = (word: Word) => lines.map((line) => line[column(word)] ?? '').find((cell) => cell !== '') ?? ''
      const rating = tenthsIn(said('rating'))
      const slope = wholeIn(said('slope'))
      if (rating === null) faults.push({ place, sentence: 'The course rating is missing, such as 69.2.' })
      if (slope === null) faults.push({ place, sentence: 'The slope rating is missing, such as 125.' })
      return {
        name: tee,
        gender,
        courseRatingTenths: rating ?? 0,
        slopeRating: slope ?? 0,
        holes: lines
          .map((line) => {
            const hole = wholeIn(line[column('hole')] ?? '')
            if (hole === null) faults.push({ place, sentence: 'A line has no hole number.' })
            return holeOf(
              hole ?? 0,
              line,
              { par: column('par'), index: column('index'), yards: column('yards') },
              place,
              faults,
            )
          })
          .sort((a, b) => a.hole - b.hole),
      }
    }),
  }
}
