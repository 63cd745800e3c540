// Turns a session, a group's link or a member's link into the actor that every use case asks for.

import { calledOffSentence } from '@/lib/boards/called-off'
import type { Actor } from '@/lib/facts/actor'
import { ok, type Result, refused } from '@/lib/result'
import { mayTry, wasTried } from '@/lib/store/attempts'
import { type GroupBehind, groupOfCode, groupOfLink, openGroupsOfFigures, personOfPageKey } from '@/lib/store/keys'
import { type DeskOf, desksOfUser } from '@/lib/store/officers'
import { cameFrom } from './came-from'
import { signedInUser } from './sign-in'

const CODE_TRIES = 30
// Wrong codes from all addresses together: an address is easily made up. Scanning the square works all the same.
const WRONG_TRIES = 120
const WRONG_EVERYWHERE = 'wrong codes'
const CODE_WINDOW = 10 * 60_000
// Tries with figures alone, from all addresses together: twelve an hour find one of thirty groups once in four months.
const FIGURES_TRIES = 12
const WRONG_FIGURES = 'wrong figures'
const FIGURES_WINDOW = 60 * 60_000

/** Null when nobody is signed in, or somebody without a duty in this society. */
export async function officerAt(
  headers: Headers,
  societySlug: string,
  now: Date = new Date(),
): Promise<Extract<Actor, { kind: 'officer' }> | null> {
  const user = await signedInUser(headers)
  if (!user) return null
  const desk = (await desksOfUser(user.userId, now)).find((one) => one.slug === societySlug)
  if (!desk) return null
  const { societyId, duties } = desk
  return { kind: 'officer', societyId, userId: user.userId, name: user.name, duties, from: cameFrom(headers) }
}

/** The desks this person may sit down at: the list behind /desk. */
export async function desksOf(headers: Headers, now: Date = new Date()): Promise<readonly DeskOf[]> {
  const user = await signedInUser(headers)
  return user ? desksOfUser(user.userId, now) : []
}

export async function scorerOf(
  linkKey: string,
  now: Date = new Date(),
): Promise<Result<Extract<Actor, { kind: 'scorer' }>, 'no-such-link' | 'link-ended'>> {
  const group = await groupOfLink(linkKey)
  const closed = stillOpen(group, now)
  if (closed) return closed
  const { societyId, dayId, groupId } = group!
  return ok({ kind: 'scorer', societyId, dayId, groupId })
}

/** A refusal for a link that leads nowhere, or nowhere any more. */
function stillOpen(group: GroupBehind | null, now: Date) {
  if (!group?.published)
    return refused('no-such-link', 'That link leads to no group. Scan the code on the start sheet again, or type it.')
  if (group.revoked)
    return refused(
      'link-ended',
      'The desk has given this group a new link. Ask for the new start sheet and scan again.',
    )
  if (group.calledOff !== null) return refused('link-ended', calledOffSentence(group.calledOff))
  if (group.until <= now) return refused('link-ended', 'The day is over and the link has ended with it.')
  return null
}

export async function memberOf(
  pageKey: string,
  headers?: Headers,
): Promise<Result<Extract<Actor, { kind: 'member' }>, 'no-such-page'>> {
  // It is bound to the member's forms, and comes back from a browser: whatever stands there must be text.
  const person = typeof pageKey === 'string' ? await personOfPageKey(pageKey) : null
  if (!person)
    return refused(
      'no-such-page',
      'This link has ended, or it was not copied whole. Ask the secretary for the new one.',
    )
  return ok({ kind: 'member', ...person, ...(headers ? { from: cameFrom(headers) } : {}) })
}

/** The group behind a typed code such as "fern 560412". `from` is the caller's address: tries from one place are counted. */
export async function groupLinkOfCode(
  code: string,
  from: string,
  now: Date = new Date(),
): Promise<Result<{ linkKey: string }, 'no-such-code' | 'link-ended' | 'too-many-tries'>> {
  if (
    !(await mayTry(`code ${from}`, CODE_TRIES, CODE_WINDOW, now)) ||
    (await wasTried(WRONG_EVERYWHERE, WRONG_TRIES, now))
  )
    return refused('too-many-tries', 'Too many tries. Wait ten minutes, or scan the code on the start sheet.')
  const typed = plainCode(code)
  const exact = await groupOfCode(typed)
  const group = exact?.published ? exact : await groupOfFigures(typed, now)
  if (!group) {
    await mayTry(WRONG_EVERYWHERE, WRONG_TRIES, CODE_WINDOW, now)
    return refused(
      'no-such-code',
      /^\d{6}$/.test(typed)
        ? 'No group has those figures. Type the word before them as well, as on the start sheet.'
        : 'No group has that code. It is a word and six figures, as on the start sheet.',
    )
  }
  const closed = stillOpen(group, now)
  if (closed) return refused('link-ended', closed.sentence)
  return ok({ linkKey: group.linkKey })
}

/**
 * The one open group with these six figures, where the word is missing or wrong. A word that is nearly right is a slip
 * of the thumb. Figures alone are one code in a million instead of one in fifty million: they are taken only while few
 * wrong ones were tried, so that somebody who guesses gets no further with them than with whole codes.
 */
async function groupOfFigures(typed: string, now: Date): Promise<GroupBehind | null> {
  const [, word = '', figures] = /^(?:(\D+) )?(\d{6})$/.exec(typed) ?? []
  if (!figures) return null
  const [one, another] = await openGroupsOfFigures(figures, now)
  const only = one && !another ? one : null
  if (only && isNearly(word, only.word)) return only
  if (await wasTried(WRONG_FIGURES, FIGURES_TRIES, now)) return null
  await mayTry(WRONG_FIGURES, FIGURES_TRIES, FIGURES_WINDOW, now)
  return only
}

/** One letter wrong, missing or too many in a short word; two in a longer one. */
function isNearly(typed: string, word: string): boolean {
  const most = word.length > 4 ? 2 : 1
  if (Math.abs(typed.length - word.length) > most) return false
  let row = Array.from({ length: word.length + 1 }, (_, at) => at)
  for (const [at, letter] of [...typed].entries()) {
    const next = [at + 1]
    for (let to = 1; to <= word.length; to++)
      next.push(Math.min(row[to]! + 1, next[to - 1]! + 1, row[to - 1]! + (word[to - 1] === letter ? 0 : 1)))
    row = next
  }
  return row[word.length]! <= most
}

/** "Fern560412", "FERN-560 412" and "fern  560412" are the code "fern 560412"; sheets of before have four figures. */
function plainCode(code: string): string {
  const match = /^([a-z]*)((?:[^a-z0-9]*\d){4,6})$/.exec(code.trim().toLowerCase())
  return match ? `${match[1]} ${match[2]?.replace(/\D/g, '')}`.trim() : code.trim().toLowerCase()
}
