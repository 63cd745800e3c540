// The same day as a workbook with formulas for strokes, points, totals and countback, recalculated by LibreOffice Calc
// without a window. What starting the program costs is measured on an empty workbook and taken off.
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import ExcelJS from 'exceljs'
import type { Day } from '../../lib/rules/day'
import { scoreDay } from '../../lib/rules/score-day'
import { benchDay } from '../bench-day'
import { type Figures, median, timed } from '../bench-figures'

const RUNS = 3
const FIRST_ROW = 4
/** Columns: player, index, tee, handicap; then eighteen each of gross, strokes, points; then the sums. */
const GROSS = 5
const STROKES = GROSS + 18
const POINTS = STROKES + 18
const TOTAL = POINTS + 18

function column(number: number): string {
  const before = Math.floor((number - 1) / 26)
  return (before > 0 ? column(before) : '') + String.fromCharCode(65 + ((number - 1) % 26))
}

/** Rows of par and stroke index for each tee stand on a sheet of their own: two rows a tee, the ratings in front. */
function writeTees(book: ExcelJS.Workbook, day: Day): void {
  const sheet = book.addWorksheet('tees')
  for (const tee of day.tees) {
    const par = tee.holes.reduce((sum, hole) => sum + hole.par, 0)
    sheet.addRow([tee.id, tee.courseRatingTenths / 10, tee.slopeRating, par, ...tee.holes.map((hole) => hole.par)])
    sheet.addRow([tee.id, null, null, null, ...tee.holes.map((hole) => hole.strokeIndex)])
  }
}

/** Every card with strokes and points at an allowance. */
function writeCards(book: ExcelJS.Workbook, day: Day, name: string, allowance: number): void {
  const sheet = book.addWorksheet(name)
  const last = FIRST_ROW + day.players.length - 1
  const formula = (row: number, at: number, text: string) => {
    sheet.getCell(row, at).value = { formula: text } as ExcelJS.CellFormulaValue
  }
  day.players.forEach((player, at) => {
    const row = FIRST_ROW + at
    const teeRow = 2 * day.tees.findIndex((tee) => tee.id === player.tee) + 1
    const card = day.cards.find((one) => one.player === player.id)!
    sheet.getCell(row, 1).value = player.id
    sheet.getCell(row, 2).value = player.indexTenths / 10
    sheet.getCell(row, 3).value = player.tee
    formula(row, 4, `FLOOR((B${row}*tees!C${teeRow}/113+tees!B${teeRow}-tees!D${teeRow})*${allowance}/100+0.5,1)`)
    card.scores.forEach((score, hole) => {
      const onTee = column(5 + hole)
      const [gross, strokes] = [column(GROSS + hole) + row, column(STROKES + hole) + row]
      sheet.getCell(row, GROSS + hole).value = score
      formula(row, STROKES + hole, `INT(D${row}/18)+IF(tees!${onTee}${teeRow + 1}<=MOD(D${row},18),1,0)`)
      const net = `tees!${onTee}${teeRow}+2-${gross}+${strokes}`
      formula(row, POINTS + hole, `IF(ISNUMBER(${gross}),MAX(0,${net}),0)`)
    })
    const points = (from: number, to: number) =>
      `SUM(${column(POINTS + from - 1)}${row}:${column(POINTS + to - 1)}${row})`
    formula(row, TOTAL, points(1, 18))
    // Countback: total, last nine, six, three and one, then the same of the first nine, as one figure to compare.
    const windows = [points(1, 18), points(10, 18), points(13, 18), points(16, 18), points(18, 18)]
    windows.push(points(4, 9), points(7, 9), points(9, 9))
    formula(row, TOTAL + 1, windows.map((window, place) => `${window}*${100 ** (7 - place)}`).join('+'))
    const key = column(TOTAL + 1)
    formula(row, TOTAL + 2, `COUNTIF(${key}$${FIRST_ROW}:${key}$${last},">"&${key}${row})+1`)
  })
}

function writePairs(book: ExcelJS.Workbook, day: Day): void {
  const sheet = book.addWorksheet('pairs')
  day.sides.forEach((side, at) => {
    const row = at + 1
    const rows = side.players.map((id) => FIRST_ROW + day.players.findIndex((player) => player.id === id))
    sheet.getCell(row, 1).value = side.id
    for (let hole = 0; hole < 18; hole += 1) {
      const balls = rows.map((one) => `cards!${column(POINTS + hole)}${one}`).join(',')
      sheet.getCell(row, 2 + hole).value = { formula: `MAX(${balls})` } as ExcelJS.CellFormulaValue
    }
    sheet.getCell(row, 20).value = { formula: `SUM(B${row}:S${row})` } as ExcelJS.CellFormulaValue
  })
}

function recalculated(file: string, folder: string): number {
  const start = performance.now()
  const profile = `-env:UserInstallation=file://${folder}/profile`
  const run = spawnSync(
    'soffice',
    [profile, '--headless', '--convert-to', 'xlsx', '--outdir', join(folder, 'out'), file],
    {
      encoding: 'utf8',
    },
  )
  if (run.status !== 0) throw new Error(run.stderr)
  return performance.now() - start
}

/** Players whose points in the workbook are not the engine's: where binary fractions lose a half stroke. */
async function differing(file: string, day: Day): Promise<number> {
  const book = new ExcelJS.Workbook()
  await book.xlsx.readFile(file)
  const sheet = book.getWorksheet('singles')!
  const scores = new Map(scoreDay(day)[0]!.standings.map((one) => [one.entrant, one.score]))
  return day.players.filter(({ id }, at) => sheet.getCell(FIRST_ROW + at, TOTAL).result !== scores.get(id)).length
}

export async function measure(): Promise<Figures> {
  if (spawnSync('soffice', ['--version']).status !== 0) {
    return {
      leftOut: 'LibreOffice Calc is not installed (apt-get install -y --no-install-recommends libreoffice-calc)',
    }
  }
  const day = benchDay()
  const folder = mkdtempSync(join(tmpdir(), 'daybook-sheet-'))
  try {
    const book = new ExcelJS.Workbook()
    writeTees(book, day)
    writeCards(book, day, 'singles', 95)
    writeCards(book, day, 'cards', 85)
    writePairs(book, day)
    const empty = new ExcelJS.Workbook()
    empty.addWorksheet('empty')
    const [full, bare] = [join(folder, 'day.xlsx'), join(folder, 'empty.xlsx')]
    await book.xlsx.writeFile(full)
    await empty.xlsx.writeFile(bare)
    recalculated(bare, folder)
    const starting = median(Array.from({ length: RUNS }, () => recalculated(bare, folder)))
    const sheet = median(Array.from({ length: RUNS }, () => recalculated(full, folder))) - starting
    const engine = median(timed(() => scoreDay(day), 200))
    const wrong = await differing(join(folder, 'out', 'day.xlsx'), day)
    return [
      { what: '144 cards in the engine', measured: `${engine.toFixed(3)} ms`, target: '-', held: null },
      {
        what: 'the same day read, recalculated and written by Calc',
        measured: `${sheet.toFixed(0)} ms`,
        target: '-',
        held: null,
      },
      {
        what: 'Calc takes as many times as long',
        measured: `${(sheet / engine).toFixed(0)} ×`,
        target: '-',
        held: null,
      },
      { what: 'cards on which Calc has other points', measured: String(wrong), target: '-', held: null },
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
