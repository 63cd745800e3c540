// A forgotten password, for whoever runs the server: a one-time link for an officer whom no other officer can help.

import 'server-only'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { desksOfUser, userByEmail } from '@/lib/store/officers'
import { endOneTimes, issueOneTime } from '@/lib/store/one-time'
import { write } from '@/lib/store/write'
import { LINK_DAYS, linkUntil } from './give-duty'

export interface PasswordLink {
  readonly name: string
  readonly path: string
  readonly days: number
}

/** No actor: only a command on the server calls it, and the record says that the server did. */
export async function passwordLink(
  email: string,
  now: Date = new Date(),
): Promise<Result<PasswordLink, 'no-such-officer'>> {
  return write<Result<PasswordLink, 'no-such-officer'>>(async (tx) => {
    const user = await userByEmail(tx, email.trim())
    const desks = user ? await desksOfUser(user.userId, now, tx) : []
    const [desk] = desks
    if (!user || !desk)
      return refused(
        'no-such-officer',
        `No officer of any society signs in with ${email.trim()}. Look at the spelling.`,
      )
    await endOneTimes(tx, 'set-password', user.userId)
    const what = { purpose: 'set-password' as const, userId: user.userId, societyId: desk.societyId, endsDuty: null }
    const token = await issueOneTime(tx, what, linkUntil(now), now)
    for (const { societyId } of desks) {
      const after = { 'Link for a new password': 'made by a command on the server' }
      const record = { act: 'give-duty', area: 'access' as const, subject: user.name, subjectId: user.userId, after }
      await recordAct(tx, { kind: 'server' }, record, now, societyId)
    }
    return ok({ name: user.name, path: `/sign-in/link/${token}`, days: LINK_DAYS })
  })
}
