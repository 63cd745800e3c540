// Imports a course card: first what would happen, tee by tee; then the whole course, or nothing.

import { createHash } from 'node:crypto'
import type { CourseImportPreview, CourseImportTee } from '@/lib/boards/desk-views'
import type { CardOfCourse } from '@/lib/boards/merge-courses'
import type { Actor } from '@/lib/facts/actor'
import { type KeepCourse, keepCourse as schema } from '@/lib/facts/commands'
import { type CourseImportChoices, courseImportChoices, NOTHING_SAID } from '@/lib/facts/course-import'
import type { CourseId, SocietyId } from '@/lib/facts/ids'
import { type Fault, ok, type Result, refused } from '@/lib/result'
import { type CourseKept, coursesOf } from '@/lib/store/courses'
import { courseIn, type SheetCourse } from './course-sheet'
import { tenthsIn, wholeIn } from './course-words'
import { deskOnly } from './desk-only'
import type { FileToRead } from './import-members'
import { cardFaults, keepCourse } from './keep-course'
import { parseInput } from './parse-input'
import type { SheetTee } from './printed-card'
import { readTable } from './table-file'

export interface CourseToRead extends FileToRead {
  /** What the officer said about the file; read with the schema in `lib/facts/course-import.ts`. */
  readonly choices?: unknown
}

type Unreadable =
  | 'not-allowed'
  | 'not-understood'
  | 'file-too-large'
  | 'not-a-table'
  | 'old-spreadsheet'
  | 'empty-file'
  | 'no-card'

export async function previewCourse(
  actor: Actor,
  file: CourseToRead,
): Promise<Result<CourseImportPreview, Unreadable>> {
  const officer = deskOnly(actor, 'keep-course')
  if (!officer.ok) return officer
  const planned = await plan(officer.value.societyId, file)
  return planned.ok ? ok(planned.value.preview) : planned
}

export async function importCourse(
  actor: Actor,
  file: CourseToRead & { digest: string },
  now: Date = new Date(),
): Promise<
  Result<
    { courseId: CourseId; version: number },
    Unreadable | 'file-changed' | 'file-has-faults' | 'not-found' | 'course-exists' | 'course-moved-on'
  >
> {
  const officer = deskOnly(actor, 'keep-course')
  if (!officer.ok) return officer
  const planned = await plan(officer.value.societyId, file)
  if (!planned.ok) return planned
  const { preview, course, known } = planned.value
  if (preview.digest !== file.digest)
    return refused(
      'file-changed',
      'The file or the course has changed since you looked. Nothing was imported: look at it again, then import.',
    )
  if (!preview.ready) return refused('file-has-faults', 'Nothing was imported yet: something still needs an answer.')
  return keepCourse(actor, known ? { ...course, courseId: known.courseId, version: known.version } : course, now)
}

interface Plan {
  readonly preview: CourseImportPreview
  readonly course: KeepCourse
  readonly known: CourseKept | null
}

async function plan(
  societyId: SocietyId,
  file: CourseToRead,
): Promise<Result<Plan, Exclude<Unreadable, 'not-allowed'>>> {
  const said = file.choices === undefined ? ok(NOTHING_SAID) : parseInput(courseImportChoices, file.choices)
  if (!said.ok) return said
  const choices = said.value
  const table = await readTable(file.bytes)
  if (!table.ok) return table
  const sheet = courseIn(table.value.rows)
  if (!sheet)
    return refused(
      'no-card',
      'No card was found in the file. It needs the holes 1 to 9 or 1 to 18 in a row or a column, with par, stroke index and the yards of each set of tees beside them.',
    )
  const name = nameOf(choices, sheet, file.fileName)
  const known = (await coursesOf(societyId)).find((one) => one.name.toLowerCase() === name.toLowerCase()) ?? null
  const asked = sheet.tees.map((tee) => askedTee(tee, choices))
  const wanted = asked.filter((one) => !one.leftOut)
  const tees = wanted.flatMap((one) => (one.kept === null ? [] : [one.kept]))
  const course: KeepCourse = { name: known?.name ?? name, place: known?.place ?? null, tees }
  const faults = [...table.value.faults, ...sheet.faults, ...wholeFaults(course, wanted)]
  if (wanted.length === 0) faults.push({ place: 'file', sentence: 'Every set of tees is left out.' })
  const rows = asked.map((one) => teeRow(one, known))
  const ready = faults.length === 0 && rows.every((row) => row.what !== 'look')
  const digest = createHash('sha256')
    .update(JSON.stringify([table.value.digest, choices, course, known?.version ?? null]))
    .digest('hex')
  return ok({
    course,
    known,
    preview: {
      digest,
      fileName: file.fileName,
      name: course.name,
      known: known !== null,
      tees: rows,
      notes: sheet.notes,
      faults,
      ready,
      sentence: `${course.name}: ${wanted.length} ${wanted.length === 1 ? 'set' : 'sets'} of tees${
        known ? ', in the place of those there now' : ', a new course'
      }.`,
    },
  })
}

function nameOf(choices: CourseImportChoices, sheet: SheetCourse, fileName: string): string {
  const ofFile = fileName.replace(/\.[a-z0-9]+$/i, '').replace(/[-_]+/g, ' ')
  return (choices.name || sheet.name || ofFile).trim().slice(0, 80)
}

interface Asked {
  readonly sheet: SheetTee
  readonly name: string
  readonly gender: SheetTee['gender']
  readonly courseRating: string
  readonly slopeRating: string
  readonly leftOut: boolean
  readonly sentences: readonly string[]
  /** Null while something is missing. */
  readonly kept: KeepCourse['tees'][number] | null
}

function askedTee(sheet: SheetTee, choices: CourseImportChoices): Asked {
  const said = choices.tees[sheet.key] ?? {}
  const name = said.name || sheet.name
  const gender = said.gender ?? sheet.gender
  const courseRating = (said.courseRating ?? sheet.courseRating).trim()
  const slopeRating = (said.slopeRating ?? sheet.slopeRating).trim()
  const rating = tenthsIn(courseRating)
  const slope = wholeIn(slopeRating)
  const sentences: string[] = []
  if (gender === null) sentences.push('Are these tees rated for men or for women?')
  if (rating === null)
    sentences.push(
      courseRating === ''
        ? `The course rating is missing, such as ${sheet.holes.length === 9 ? '34.6' : '69.2'}.${sheet.sss ? ` The card has a scratch score of ${sheet.sss}, which is another figure.` : ''}`
        : `“${courseRating}” is no course rating, such as 69.2.`,
    )
  if (slope === null)
    sentences.push(
      slopeRating === ''
        ? 'The slope rating is missing, such as 125.'
        : `“${slopeRating}” is no slope rating, such as 125.`,
    )
  const lacking = (what: 'par' | 'strokeIndex') =>
    sheet.holes.filter((hole) => hole[what] === null).map((hole) => hole.hole)
  for (const [what, called] of [
    ['par', 'par'],
    ['strokeIndex', 'stroke index'],
  ] as const) {
    const holes = lacking(what)
    if (holes.length === sheet.holes.length) sentences.push(`The file has no ${called} for these tees.`)
    else if (holes.length > 0)
      sentences.push(
        `The ${called} of hole${holes.length === 1 ? '' : 's'} ${holes.join(', ')} is missing in the file.`,
      )
  }
  const kept =
    gender === null || rating === null || slope === null || sentences.length > 0
      ? null
      : {
          name,
          gender,
          courseRatingTenths: rating,
          slopeRating: slope,
          holes: sheet.holes.map(({ hole, par, strokeIndex, yards }) => ({
            hole,
            par: par ?? 0,
            strokeIndex: strokeIndex ?? 0,
            yards,
          })),
        }
  return { sheet, name, gender, courseRating, slopeRating, leftOut: said.leftOut ?? sheet.unlikely, sentences, kept }
}

/** What no course may have: asked when every set of tees is whole. */
function wholeFaults(course: KeepCourse, wanted: readonly Asked[]): readonly Fault[] {
  if (wanted.some((one) => one.kept === null)) return []
  const read = parseInput(schema, course)
  const faults = read.ok ? cardFaults(read.value.tees) : read.faults
  return faults.map((fault) => ({ place: spoken(fault.place, course), sentence: fault.sentence }))
}

/** `tees[0].holes[3].par` is "Yellow, men, hole 4, par". */
function spoken(place: string, course: KeepCourse): string {
  const match = /^tees\[(\d+)\](?:\.holes(?:\[(\d+)\])?)?(?:\.(\w+))?$/.exec(place)
  const tee = match ? course.tees[Number(match[1])] : undefined
  if (!match || !tee) return place === 'name' ? 'name of the course' : place
  const hole = match[2] === undefined ? '' : `, hole ${tee.holes[Number(match[2])]?.hole ?? Number(match[2]) + 1}`
  const what = match[3] ? `, ${CELLS[match[3]] ?? match[3]}` : ''
  return `${tee.name}, ${tee.gender}${hole}${what}`
}

const CELLS: Readonly<Record<string, string>> = {
  strokeIndex: 'stroke index',
  courseRatingTenths: 'course rating',
  slopeRating: 'slope rating',
}

function teeRow(one: Asked, known: CourseKept | null): CourseImportTee {
  const { sheet, kept } = one
  const before = known?.tees.find((tee) => tee.name === one.name && tee.gender === one.gender)
  const same = before !== undefined && kept !== null && plain(before) === plain(kept)
  const what = one.leftOut ? 'left-out' : kept === null ? 'look' : same ? 'unchanged' : before ? 'changed' : 'new'
  const sum = (numbers: readonly (number | null)[]) =>
    numbers.reduce<number | null>((all, one) => (all === null || one === null ? null : all + one), 0)
  return {
    key: sheet.key,
    place: sheet.place,
    name: one.name,
    gender: one.gender,
    holes: sheet.holes.length,
    par: sum(sheet.holes.map((hole) => hole.par)),
    yards: sum(sheet.holes.map((hole) => hole.yards)),
    courseRating: one.courseRating,
    slopeRating: one.slopeRating,
    what,
    sentences: one.leftOut ? [] : one.sentences,
  }
}

function plain({ name, gender, courseRatingTenths, slopeRating, holes }: CardOfCourse['tees'][number]): string {
  const cells = holes.map((one) => [one.hole, one.par, one.strokeIndex, one.yards])
  return JSON.stringify([name, gender, courseRatingTenths, slopeRating, cells])
}
