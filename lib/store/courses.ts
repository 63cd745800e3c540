import type { CourseId, SocietyId, TeeId } from '@/lib/facts/ids'
import 'server-only'
import type { EntryRecord } from '@/lib/facts/day-record'
import { type Book, reading, type Tx } from './client'
import type { Prisma } from './generated/client'
import { newId } from './new-id'

type Gender = EntryRecord['gender']

export interface HoleKept {
  readonly hole: number
  readonly par: number
  readonly strokeIndex: number
  readonly yards: number | null
}

export interface TeeToKeep {
  readonly name: string
  readonly gender: Gender
  readonly courseRatingTenths: number
  readonly slopeRating: number
  readonly holes: readonly HoleKept[]
}

export interface CourseKept {
  readonly courseId: CourseId
  readonly name: string
  readonly place: string | null
  readonly holes: number
  readonly version: number
  readonly tees: readonly (TeeToKeep & { readonly teeId: TeeId })[]
}

export type CourseToKeep = Pick<CourseKept, 'name' | 'place' | 'holes'> & { readonly tees: readonly TeeToKeep[] }

const columns = {
  id: true,
  name: true,
  place: true,
  holes: true,
  version: true,
  tees: {
    select: {
      id: true,
      name: true,
      gender: true,
      courseRatingTenths: true,
      slopeRating: true,
      holes: { select: { hole: true, par: true, strokeIndex: true, yards: true }, orderBy: { hole: 'asc' } },
    },
    // A course's card runs from the longest tee to the shortest.
    orderBy: [{ gender: 'asc' }, { courseRatingTenths: 'desc' }, { name: 'asc' }],
  },
} satisfies Prisma.CourseSelect

type Row = Omit<CourseKept, 'courseId' | 'tees'> & {
  id: CourseId
  tees: readonly (Omit<TeeToKeep, 'gender'> & { id: TeeId; gender: string })[]
}

function kept({ id, tees, ...row }: Row): CourseKept {
  return {
    courseId: id,
    ...row,
    tees: tees.map(({ id: teeId, gender, ...tee }) => ({ teeId, gender: gender as Gender, ...tee })),
  }
}

export async function coursesOf(societyId: SocietyId, on: Book | Tx = reading()): Promise<readonly CourseKept[]> {
  return (await on.course.findMany({ where: { societyId }, select: columns, orderBy: { name: 'asc' } })).map(kept)
}

export async function courseIn(on: Book | Tx, societyId: SocietyId, courseId: CourseId): Promise<CourseKept | null> {
  const row = await on.course.findUnique({ where: { societyId_id: { societyId, id: courseId } }, select: columns })
  return row ? kept(row) : null
}

export async function courseNamed(
  on: Book | Tx,
  societyId: SocietyId,
  name: string,
): Promise<{ courseId: CourseId; version: number } | null> {
  const row = await on.course.findUnique({
    where: { societyId_name: { societyId, name } },
    select: { id: true, version: true },
  })
  return row ? { courseId: row.id, version: row.version } : null
}

export async function insertCourse(tx: Tx, societyId: SocietyId, course: CourseToKeep, now: Date): Promise<CourseId> {
  const id = newId<CourseId>()
  const { tees, ...rest } = course
  await tx.course.create({ data: { id, societyId, ...rest, createdAt: now } })
  await insertTees(tx, societyId, id, tees, new Map())
  return id
}

/** False when the course moved on since `version`: nothing is changed then. */
export async function updateCourse(
  tx: Tx,
  societyId: SocietyId,
  courseId: CourseId,
  version: number,
  course: CourseToKeep,
): Promise<boolean> {
  const { tees, ...rest } = course
  const changed = await tx.course.updateMany({
    where: { id: courseId, societyId, version },
    data: { ...rest, version: version + 1 },
  })
  if (changed.count === 0) return false
  // Days hold copies of their tees, so the card may be written anew; a tee that stays keeps its id for open forms.
  const before = await tx.tee.findMany({ where: { courseId }, select: { id: true, name: true, gender: true } })
  await tx.tee.deleteMany({ where: { courseId } })
  await insertTees(tx, societyId, courseId, tees, new Map(before.map((tee) => [`${tee.name} ${tee.gender}`, tee.id])))
  return true
}

/** The days played or to be played on this course, earliest first. */
export async function daysOnCourse(
  tx: Tx,
  societyId: SocietyId,
  courseId: CourseId,
): Promise<readonly { readonly name: string; readonly date: string }[]> {
  return tx.day.findMany({
    where: { societyId, rounds: { some: { courseId } } },
    select: { name: true, date: true },
    orderBy: { date: 'asc' },
  })
}

/** Its tees go with it. The database refuses a course that a round is played on. */
export async function deleteCourseRow(tx: Tx, societyId: SocietyId, courseId: CourseId): Promise<void> {
  await tx.course.delete({ where: { societyId_id: { societyId, id: courseId } } })
}

async function insertTees(
  tx: Tx,
  societyId: SocietyId,
  courseId: CourseId,
  tees: readonly TeeToKeep[],
  ids: ReadonlyMap<string, TeeId>,
): Promise<void> {
  const withIds = tees.map((tee) => ({ ...tee, id: ids.get(`${tee.name} ${tee.gender}`) ?? newId<TeeId>() }))
  await tx.tee.createMany({
    data: withIds.map(({ holes: _, ...tee }) => ({ ...tee, societyId, courseId })),
  })
  await tx.teeHole.createMany({
    data: withIds.flatMap((tee) => tee.holes.map((hole) => ({ teeId: tee.id, ...hole }))),
  })
}
