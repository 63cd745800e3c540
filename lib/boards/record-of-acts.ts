// The record of acts as the committee reads it: each act in a few words, what it was and what it is.

import type { ActArea, InWords } from '@/lib/facts/act-record'

const ACTS: Readonly<Record<string, string>> = {
  'found-society': 'founded the society',
  'give-duty': 'gave a duty',
  'end-duty': 'ended a duty',
  'end-sessions': 'ended sessions',
  'set-first-password': 'set the first password',
  'keep-account': 'changed the own account',
  'open-season': 'opened a season',
  'keep-course': 'changed a course',
  'delete-course': 'deleted a course',
  'keep-people': 'changed the member list',
  'delete-person': 'deleted a person',
  'call-day': 'called a day',
  'change-day': 'changed a day',
  'call-off-day': 'called a day off',
  'put-day-on': 'put a day back on',
  'delete-day': 'deleted a day',
  'play-day-ahead': 'let a day be played before its date',
  'enter-player': 'changed the entries',
  'freeze-handicaps': 'froze the handicaps',
  'unfreeze-handicaps': 'unfroze the handicaps',
  'refreeze-handicaps': 'froze handicaps again',
  'change-handicap': 'changed a handicap',
  'make-draw': 'changed the draw',
  'arrange-sides': 'changed the sides',
  'arrange-pairings': 'changed the matches',
  'arrange-teams': 'changed the teams',
  'end-match': 'changed how a match ended',
  'publish-start': 'published the start sheet',
  'renew-group-link': 'gave a group a new link',
  'enter-score': 'keyed a card',
  'take-card-in': 'accepted a card',
  'reopen-card': 'opened a card again',
  'rule-on-card': 'ruled on a card',
  'rule-on-day': 'ruled on the day',
  'stop-play': 'stopped play',
  'resume-play': 'resumed play',
  'allow-on-board': 'chose what the board shows',
  'close-day': 'closed the day',
  'reopen-day': 'opened the day again',
  'publish-result': 'published a result',
  'keep-copies': 'kept a copy of the book',
  'take-export': 'took an export',
  'renew-page-key': 'gave a member a new link',
  'end-page-key': 'ended the link of a member',
  'correct-own-details': 'corrected the own details',
  'leave-society': 'carried out a leaving',
  'erase-person': 'took details out of the book',
  'keep-privacy': 'changed the privacy settings',
  'carry-out-retention': 'carried out the retention',
}

export const actInWords = (act: string): string => ACTS[act] ?? act.replaceAll('-', ' ')

export const AREAS_IN_WORDS: Readonly<Record<ActArea, string>> = {
  handicaps: 'handicaps',
  money: 'money',
  results: 'results',
  entries: 'entries',
  access: 'access',
  day: 'the day',
  book: 'the book',
}

export interface Change {
  readonly what: string
  readonly before: string | null
  readonly after: string | null
}

/** One row of the record, for the screen. */
export interface ActLine {
  readonly id: number
  readonly at: string
  readonly who: string
  readonly from: string | null
  readonly act: string
  readonly did: string
  readonly area: ActArea
  readonly areaName: string
  readonly subject: string
  readonly changes: readonly Change[]
}

/** One line for each thing that changed; the version a desk counts by is not told. */
export function changesOf(before: InWords | null, after: InWords | null): readonly Change[] {
  const keys = [...new Set([...Object.keys(before ?? {}), ...Object.keys(after ?? {})])]
  return keys
    .filter((key) => key !== 'version')
    .map((what) => ({ what, before: said(before?.[what]), after: said(after?.[what]) }))
}

function said(value: InWords[string] | undefined): string | null {
  if (value === undefined || value === null) return null
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value === 'string' || typeof value === 'number') return String(value)
  return value.join(', ')
}

/** "First tee: 10:30 (was 10:00)" */
export function changeInWords({ what, before, after }: Change): string {
  if (after === null) return `${what}: taken out (was ${before})`
  return before === null ? `${what}: ${after}` : `${what}: ${after} (was ${before})`
}

/** "two minutes ago", "at 10.30 am" is left to the screen. */
export function agoInWords(at: Date, now: Date): string {
  const minutes = Math.max(0, Math.round((now.getTime() - at.getTime()) / 60_000))
  if (minutes < 1) return 'just now'
  if (minutes < 60) return minutes === 1 ? 'one minute ago' : `${minutes} minutes ago`
  const hours = Math.round(minutes / 60)
  if (hours < 24) return hours === 1 ? 'an hour ago' : `${hours} hours ago`
  const days = Math.round(hours / 24)
  return days === 1 ? 'yesterday' : `${days} days ago`
}
