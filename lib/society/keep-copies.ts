// Copies of the book from the desk and by the clock. A copy holds every society of the installation and everything about
// signing in: a desk may ask for one and see that there is one, but the file itself stays on the server.
import { momentInWords } from '@/lib/boards/dates-in-words'
import 'server-only'
import { basename } from 'node:path'
import type { Actor } from '@/lib/facts/actor'
import { type Copy, isCopyOld, newestCopy } from '@/lib/facts/copies'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { mayTry } from '@/lib/store/attempts'
import { BookMoved, isMoved } from '@/lib/store/cannot-save'
import { book } from '@/lib/store/client'
import { copiesIn, copyWhenDue, makeCopy, rotateCopies } from '@/lib/store/copies'
import { societyAtDesk } from '@/lib/store/desk'
import { settingsOfInstallation, zoneOfInstallation } from '@/lib/store/settings'
import { write } from '@/lib/store/write'
import { deskOnly, notFound } from './desk-only'

export interface CopyLine extends Copy {
  /** "3 hours ago" */
  readonly age: string
  /** "25 Nov 2026, 14.05", by the clock of the house. */
  readonly made: string
}

export interface Copies {
  readonly copies: readonly CopyLine[]
  readonly old: boolean
  /** Files beside the copies that cannot be read; they are passed over. */
  readonly unreadable: readonly string[]
  readonly everyHours: number
}

const ASKED_AN_HOUR = 6

function rotation() {
  const set = settingsOfInstallation()
  return { daily: set.DAYBOOK_COPIES_DAILY, weekly: set.DAYBOOK_COPIES_WEEKLY, monthly: set.DAYBOOK_COPIES_MONTHLY }
}

export async function copies(
  actor: Actor,
  now: Date = new Date(),
): Promise<Result<Copies, 'not-allowed' | 'not-found'>> {
  const officer = deskOnly(actor, 'keep-copies')
  if (!officer.ok) return officer
  const society = await societyAtDesk(officer.value.societyId)
  if (!society) return notFound('society')
  const { copies: list, unreadable } = copiesIn()
  return ok({
    copies: list.map((copy) => ({ ...copy, age: ageOf(copy.madeAt, now), made: onTheClock(copy.madeAt) })),
    old: isCopyOld(newestCopy(list, now), processBegan, now),
    everyHours: settingsOfInstallation().DAYBOOK_COPY_EVERY_HOURS,
    unreadable,
  })
}

/** Without a copy, the age is counted from the start of the server: a new installation is not scolded at once. */
const processBegan = new Date(Date.now() - process.uptime() * 1000)

/** For the first page of the desk: a sentence when the last copy is too old, null when all is well. */
export function copyCaution(now: Date = new Date()): string | null {
  const { copies: list, unreadable } = copiesIn()
  const newest = newestCopy(list, now)
  if (failed.daybookCopyFailed && failed.daybookCopyFailed.getTime() > Date.parse(newest?.madeAt ?? '1970-01-01'))
    return `The copy of the book due at ${momentInWords(failed.daybookCopyFailed, zoneOfInstallation())} could not be made. Whoever runs the server should look why: the disk may be full.`
  if (isCopyOld(newest, processBegan, now))
    return newest
      ? `The last copy of the book was made ${ageOf(newest.madeAt, now)}. Whoever runs the server should look why.`
      : 'There is no copy of the book yet. Make one on the page "The book".'
  const [file] = unreadable
  if (file === undefined) return null
  return `A file in the folder of copies cannot be read: ${basename(file)}. Whoever runs the server should look at it or remove it.`
}

/** When the server's own copy last failed, in this process. */
const failed = globalThis as { daybookCopyFailed?: Date }

export async function copyBook(
  actor: Actor,
  now: Date = new Date(),
): Promise<Result<Copy, 'not-allowed' | 'too-many-tries'>> {
  const officer = deskOnly(actor, 'keep-copies')
  if (!officer.ok) return officer
  if (!(await mayTry('copies', ASKED_AN_HOUR, 3_600_000, now)))
    return refused('too-many-tries', 'Several copies were made within this hour. Wait a while before the next one.')
  const copy = await makeCopy('asked', now)
  rotateCopies(rotation(), now)
  await write((tx) =>
    recordAct(
      tx,
      officer.value,
      { act: 'keep-copies', area: 'book', subject: 'Copy of the book', after: { Made: 'on the server, checked' } },
      now,
    ),
  )
  return ok(copy)
}

/** The server's own copy; the clock asks every few minutes, in whichever process. */
export async function scheduledCopy(now: Date = new Date()): Promise<'made' | 'not-due' | 'other' | 'off'> {
  const every = settingsOfInstallation().DAYBOOK_COPY_EVERY_HOURS
  if (every === 0) return 'off'
  try {
    if (isMoved(book())) throw new BookMoved()
    const answer = await copyWhenDue(every, rotation(), now)
    return typeof answer === 'string' ? answer : 'made'
  } catch (cause) {
    failed.daybookCopyFailed = now
    throw cause
  }
}

function onTheClock(at: string): string {
  return momentInWords(at, zoneOfInstallation())
}

function ageOf(madeAt: string, now: Date): string {
  const minutes = Math.max(0, Math.floor((now.getTime() - Date.parse(madeAt)) / 60_000))
  if (minutes < 1) return 'just now'
  const inUnit = (many: number, unit: string) => `${many} ${unit}${many === 1 ? '' : 's'} ago`
  if (minutes < 120) return inUnit(minutes, 'minute')
  const hours = Math.floor(minutes / 60)
  return hours < 48 ? inUnit(hours, 'hour') : inUnit(Math.floor(hours / 24), 'day')
}
