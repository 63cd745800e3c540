// Reads a course card in: first what would happen, tee by tee; then the whole course, or nothing.

import type { CourseImportRow, ImportPreview } from '@/lib/boards/desk-views'
import { ratingOf } from '@/lib/boards/figure'
import type { Actor } from '@/lib/facts/actor'
import { type KeepCourse, keepCourse as schema } from '@/lib/facts/commands'
import { type Fault, ok, type Result, refused } from '@/lib/result'
import { type CourseKept, coursesOf } from '@/lib/store/courses'
import { courseIn, type SheetCourse } from './course-sheet'
import { deskOnly } from './desk-only'
import type { FileToRead } from './import-members'
import { cardFaults, keepCourse, yardsOf } from './keep-course'
import { parseInput } from './parse-input'
import { readTable } from './table-file'

type Unreadable = 'not-allowed' | 'file-too-large' | 'not-a-table' | 'old-spreadsheet' | 'empty-file' | 'no-headings'

export async function previewCourse(
  actor: Actor,
  file: FileToRead,
): Promise<Result<ImportPreview<CourseImportRow>, Unreadable>> {
  const officer = deskOnly(actor, 'keep-course')
  if (!officer.ok) return officer
  const planned = await plan(officer.value.societyId, file)
  return planned.ok ? ok(planned.value.preview) : planned
}

export async function importCourse(
  actor: Actor,
  file: FileToRead & { digest: string },
  now: Date = new Date(),
): Promise<
  Result<
    { courseId: string; version: number },
    | Unreadable
    | 'file-changed'
    | 'file-has-faults'
    | 'not-understood'
    | 'not-found'
    | 'course-exists'
    | 'course-moved-on'
  >
> {
  const officer = deskOnly(actor, 'keep-course')
  if (!officer.ok) return officer
  const planned = await plan(officer.value.societyId, file)
  if (!planned.ok) return planned
  const { preview, course, known } = planned.value
  if (preview.digest !== file.digest)
    return refused('file-changed', 'This is not the file that was looked at. Look at it again before reading it in.')
  if (!preview.ready)
    return refused('file-has-faults', 'Nothing was read in: put right what is named, and try again.', preview.faults)
  return keepCourse(actor, known ? { ...course, courseId: known.courseId, version: known.version } : course, now)
}

interface Plan {
  readonly preview: ImportPreview<CourseImportRow>
  readonly course: KeepCourse
  readonly known: CourseKept | null
}

async function plan(societyId: string, file: FileToRead): Promise<Result<Plan, Exclude<Unreadable, 'not-allowed'>>> {
  const table = await readTable(file.bytes)
  if (!table.ok) return table
  const sheet = courseIn(table.value.rows)
  if (!sheet)
    return refused(
      'no-headings',
      'No card was found. It needs a row of headings with Hole, Par and SI, and a column for each tee.',
    )
  const name = (sheet.name ?? file.fileName.replace(/\.[a-z0-9]+$/i, '').replace(/[-_]+/g, ' ')).trim().slice(0, 80)
  const known = (await coursesOf(societyId)).find((one) => one.name.toLowerCase() === name.toLowerCase()) ?? null
  const course: KeepCourse = { name: known?.name ?? name, place: known?.place ?? null, tees: sheet.tees }
  const faults = [...table.value.faults, ...faultsOf(sheet, course)]
  const rows = sheet.tees.map((tee, at) => rowOf(tee, at, known, faults))
  return ok({
    course,
    known,
    preview: {
      digest: table.value.digest,
      fileName: file.fileName,
      columns: sheet.columns,
      rows,
      faults,
      ready: faults.length === 0,
      sentence: `${course.name}: ${rows.length} ${rows.length === 1 ? 'tee' : 'tees'}${
        known ? ', in the place of those in the book' : ', a new course'
      }.`,
    },
  })
}

/** What the sheet itself lacks; when it is whole, what no course may have. */
function faultsOf(sheet: SheetCourse, course: KeepCourse): readonly Fault[] {
  if (sheet.faults.length > 0) return sheet.faults
  const read = parseInput(schema, course)
  const faults = read.ok ? cardFaults(read.value.tees) : read.faults
  return faults.map((fault) => ({ place: spoken(fault.place, course), sentence: fault.sentence }))
}

/** `tees[0].holes[3].par` is "Yellow, men, hole 4, par". */
function spoken(place: string, course: KeepCourse): string {
  const match = /^tees\[(\d+)\](?:\.holes\[(\d+)\])?(?:\.(\w+))?$/.exec(place)
  const tee = match ? course.tees[Number(match[1])] : undefined
  if (!match || !tee) return place
  const hole = match[2] === undefined ? '' : `, hole ${tee.holes[Number(match[2])]?.hole ?? Number(match[2]) + 1}`
  return `${tee.name}, ${tee.gender}${hole}${match[3] ? `, ${match[3]}` : ''}`
}

function rowOf(
  tee: KeepCourse['tees'][number],
  at: number,
  known: CourseKept | null,
  faults: readonly Fault[],
): CourseImportRow {
  const before = known?.tees.find((one) => one.name === tee.name && one.gender === tee.gender)
  const wrong = faults.find((fault) => fault.place.startsWith(`${tee.name}, ${tee.gender}`))
  const { teeId: _, ...kept } = before ?? { teeId: '' }
  const same = before !== undefined && JSON.stringify(plain(kept as typeof tee)) === JSON.stringify(plain(tee))
  return {
    row: at + 1,
    tee: tee.name,
    gender: tee.gender,
    par: tee.holes.reduce((sum, hole) => sum + hole.par, 0),
    yards: yardsOf(tee),
    courseRating: ratingOf(tee.courseRatingTenths),
    slopeRating: tee.slopeRating,
    what: wrong ? 'fault' : same ? 'unchanged' : before ? 'changed' : 'new',
    sentence:
      wrong?.sentence ?? (same ? 'As in the book.' : before ? 'Takes the place of the one in the book.' : 'New.'),
  }
}

function plain({ name, gender, courseRatingTenths, slopeRating, holes }: KeepCourse['tees'][number]) {
  return [
    name,
    gender,
    courseRatingTenths,
    slopeRating,
    holes.map((one) => [one.hole, one.par, one.strokeIndex, one.yards]),
  ]
}
