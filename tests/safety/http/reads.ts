// Acts that are readings, each with an address that is for them alone; and every page, for the look at what it gives away.
import type { Act } from '@/lib/society/acts'
import type { Targets } from './prepared'

export interface ReadRow {
  readonly act: Act
  readonly path: (desk: string, here?: Targets) => string
}

export const READS: readonly ReadRow[] = [
  { act: 'read-desk', path: (desk) => desk },
  { act: 'read-record', path: (desk) => `${desk}/record` },
  { act: 'read-record', path: (desk) => `${desk}/record/export` },
  { act: 'keep-copies', path: (desk) => `${desk}/book` },
  { act: 'take-export', path: (desk) => `${desk}/book/export` },
]

const ROOMS = [
  '',
  '/change',
  '/entries',
  '/draw',
  '/handicaps',
  '/returns',
  '/result',
  '/print',
  '/print/cards',
  '/print/start',
  '/export',
  '/course',
]

export const DESK_PAGES: readonly ((of: Targets) => string)[] = [
  () => '',
  () => '/members',
  () => '/members/new',
  () => '/members/import',
  (of) => `/members/${of.personId}`,
  () => '/courses',
  () => '/courses/new',
  () => '/courses/import',
  (of) => `/courses/${of.courseId}`,
  () => '/new-day',
  (of) => `/new-day?season=${of.seasonId}`,
  () => '/officers',
  () => '/record',
  () => '/book',
  ...ROOMS.map((room) => (of: Targets) => `/days/${of.daySlug}${room}`),
]

const DAY = ['', '/bar', '/start', '/result', '/result/1', '?c=2']

export const PUBLIC_PAGES: readonly ((of: Targets) => string)[] = [
  (of) => `/${of.slug}`,
  (of) => `/${of.slug}/how-we-count`,
  ...DAY.map((room) => (of: Targets) => `/${of.slug}/days/${of.daySlug}${room}`),
  (of) => `/${of.slug}/days/${of.daySlug}/cards/${of.entryId}`,
  (of) => `/${of.slug}/days/${of.daySlug}/cards/${of.entryId}?hole=1&c=1`,
  (of) => `/${of.slug}/days/${of.daySlug}/match?a=${of.entryId}&b=${of.entryId}`,
  (of) => `/api/board/${of.slug}/${of.daySlug}`,
]
