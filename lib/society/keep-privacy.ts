// The society's own choices about personal details, the notice made of them, and carrying them out day by day.

import 'server-only'
import { changedInWords, type InWords } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import { addDays } from '@/lib/facts/calendar'
import { type SocietySettings, societySettings as schema } from '@/lib/facts/society-settings'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { forgetRunOut, takeOutWhatRanOut } from '@/lib/store/privacy'
import { today } from '@/lib/store/settings'
import { everySociety, keepSettings, societyBySlug, societyKept } from '@/lib/store/society-settings'
import { write } from '@/lib/store/write'
import { deskOnly, notFound } from './desk-only'
import { parseInput } from './parse-input'

export async function privacySettings(actor: Actor): Promise<Result<SocietySettings, 'not-allowed' | 'not-found'>> {
  const officer = deskOnly(actor, 'read-record')
  if (!officer.ok) return officer
  const society = await societyKept(officer.value.societyId)
  return society ? ok(society.settings) : notFound('society')
}

export async function keepPrivacy(
  actor: Actor,
  input: unknown,
  now: Date = new Date(),
): Promise<Result<void, 'not-allowed' | 'not-understood' | 'not-found'>> {
  const officer = deskOnly(actor, 'keep-privacy')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  return write<Result<void, 'not-found'>>(async (tx) => {
    const society = await societyKept(societyId, tx)
    if (!society) return notFound('society')
    await keepSettings(tx, societyId, read.value)
    const words = changedInWords(settingsWords(society.settings), settingsWords(read.value))
    const record = { subject: 'Privacy settings', subjectId: societyId, ...words }
    if (Object.keys(words.after).length > 0)
      await recordAct(tx, actor, { act: 'keep-privacy', area: 'access', ...record }, now)
    return ok()
  })
}

function settingsWords(settings: SocietySettings): InWords {
  const { retention, leaversShownAs, juniorsShownAs, searchEngines, privacyContact, noticeMore } = settings
  return {
    'Leavers’ contact details kept for days': retention.leaversContact,
    'Leavers’ page kept for days': retention.leaversPage,
    'Guests’ contact details kept for days': retention.guestsContact,
    'Guests’ names shown for days': retention.guestsNames ?? 'always',
    'Leavers shown as': leaversShownAs.replace('-', ' '),
    'Juniors shown as': juniorsShownAs,
    'Search engines': searchEngines ? 'may list our pages' : 'are asked not to',
    'Whom to ask': privacyContact || 'nobody named',
    'More on the notice': noticeMore || 'nothing',
  }
}

export interface PrivacyNotice {
  readonly societyName: string
  readonly societySlug: string
  readonly isDemo: boolean
  readonly settings: SocietySettings
}

/** For everybody. */
export async function privacyNotice(slug: string): Promise<Result<PrivacyNotice, 'no-such-society'>> {
  const society = await societyBySlug(slug)
  if (!society) return refused('no-such-society', 'No society keeps its days here under that name.')
  const { name, isDemo, settings } = society
  return ok({ societyName: name, societySlug: society.slug, isDemo, settings })
}

/** What has run out is taken out of the book, society by society; once a day is enough, twice does no harm. */
export async function carryOutRetention(now: Date = new Date()): Promise<{ readonly takenOut: number }> {
  const date = today(now)
  let takenOut = 0
  for (const { societyId, name } of await everySociety())
    takenOut += await write(async (tx) => {
      await forgetRunOut(tx, now)
      const society = await societyKept(societyId, tx)
      if (!society) return 0
      const { leaversContact, guestsContact, guestsNames, leaversPage } = society.settings.retention
      const before = {
        leaversContact: addDays(date, -leaversContact),
        guestsContact: addDays(date, -guestsContact),
        guestsNames: guestsNames === null ? null : addDays(date, -guestsNames),
        leaversPage: addDays(date, -leaversPage),
      }
      const done = await takeOutWhatRanOut(tx, societyId, before, now)
      const total = Object.values(done).reduce((sum, count) => sum + count, 0)
      if (total === 0) return 0
      const after = {
        'Leavers whose contact details went': done.leaversContact,
        'Guests whose contact details went': done.guestsContact,
        'Guests now shown by initials': done.guestsNames,
        'Leavers whose page ended': done.leaversPage,
      }
      const record = { act: 'carry-out-retention', area: 'book' as const, subject: name, subjectId: societyId, after }
      await recordAct(tx, { kind: 'server' }, record, now, societyId)
      return total
    })
  return { takenOut }
}
