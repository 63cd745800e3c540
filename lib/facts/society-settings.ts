// What a society chose for itself: how long each kind of detail is kept, whom to ask, how leavers and juniors are shown.
// Local data-protection law decides what is lawful; these are the society's own choices within it.

import { z } from 'zod'
import { writtenLine, writtenLines } from './typed-text'

export const SHOWN_AS = ['name', 'initials', 'former-member'] as const
export type ShownAs = (typeof SHOWN_AS)[number]

const days = (least: number, most: number) => {
  const sentence = `A number of days from ${least} to ${most}.`
  return z.int(sentence).min(least, sentence).max(most, sentence)
}

/** Days after which each kind is taken out of the book. */
export const retention = z.strictObject({
  /** Telephone and e-mail of whoever has left, after the last day as a member. */
  leaversContact: days(0, 3650).default(365),
  /** Contact details of guests, after the last day they played or were entered. */
  guestsContact: days(0, 3650).default(90),
  /** Names of guests become initials everywhere, after the last day they played. Null: they stay. */
  guestsNames: days(30, 7300).nullable().default(null),
  /** The private page of whoever has left, after the last day as a member. */
  leaversPage: days(0, 3650).default(90),
})

export const societySettings = z.strictObject({
  retention: retention.prefault({}),
  /** Whom to ask about privacy; shown on the notice, so a role rather than a person's own address. */
  privacyContact: writtenLine().trim().max(160, 'At most 160 letters.').default(''),
  /** How whoever leaves is shown on sheets and boards from then on, unless they ask for less. */
  leaversShownAs: z.enum(SHOWN_AS).default('name'),
  juniorsShownAs: z.enum(['name', 'initials']).default('initials'),
  /** May search engines list the public pages, with the names on them? */
  searchEngines: z.boolean().default(false),
  /** A sentence of the society's own for its notice. */
  noticeMore: writtenLines().trim().max(1000, 'At most 1000 letters.').default(''),
})
export type SocietySettings = z.output<typeof societySettings>

/** A kept text of an older edition lacks keys: they take their usual value. */
export function settingsIn(json: string): SocietySettings {
  const kept: unknown = JSON.parse(json)
  const read = societySettings.safeParse(kept)
  return read.success ? read.data : societySettings.parse({})
}
