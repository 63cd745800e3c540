// Behind a one-time link: a new officer sets the own password, once. A duty handed over changes hands at that moment.

import 'server-only'
import { newPassword } from '@/lib/facts/duty-commands'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { closeDuty, dutiesIn, hasOtherSecretary, holdSociety, setPassword, userName } from '@/lib/store/officers'
import { type OneTime, oneTimeOf, spendOneTime } from '@/lib/store/one-time'
import { hashOfPassword } from '@/lib/store/password'
import { endSessionsOf } from '@/lib/store/sessions'
import { societyName } from '@/lib/store/society-settings'
import { emailOfUser } from '@/lib/store/users'
import { write } from '@/lib/store/write'

type SetPassword = Extract<OneTime, { purpose: 'set-password' }>

export const LINK_ENDED = 'This link has been used or has run out. Ask whoever gave it to you for a new one.'

const linkEnded = () => refused('link-ended', LINK_ENDED)

/** Who is asked to set a password; nothing is used up by looking. */
export async function behindLink(
  token: string,
  now: Date = new Date(),
): Promise<Result<{ readonly name: string; readonly email: string; readonly societyName: string }, 'link-ended'>> {
  const what = await oneTimeOf(token, now)
  if (what?.purpose !== 'set-password') return linkEnded()
  const [name, email, society] = await Promise.all([
    userName(what.userId),
    emailOfUser(what.userId),
    societyName(what.societyId),
  ])
  return name && email && society ? ok({ name, email, societyName: society }) : linkEnded()
}

export async function setFirstPassword(
  token: string,
  password: string,
  now: Date = new Date(),
): Promise<Result<{ readonly email: string }, 'link-ended' | 'weak-password'>> {
  const read = newPassword.safeParse(password)
  if (!read.success)
    return refused('weak-password', 'A password needs at least 12 characters.', [
      { place: 'password', sentence: read.error.issues[0]?.message ?? 'A password needs at least 12 characters.' },
    ])
  // Before the transaction: hashing is slow on purpose. A token nobody issued is not worth the work.
  if ((await oneTimeOf(token, now))?.purpose !== 'set-password') return linkEnded()
  const hash = await hashOfPassword(password)
  return write<Result<{ email: string }, 'link-ended'>>(async (tx) => {
    const what = await oneTimeOf(token, now, tx)
    if (what?.purpose !== 'set-password' || !(await spendOneTime(tx, token, now))) return linkEnded()
    await holdSociety(tx, what.societyId)
    await setPassword(tx, what.userId, hash, now)
    // Whoever was signed in with the password of before is not any more.
    await endSessionsOf(tx, what.userId)
    const ended = await endTheOther(tx, what, now)
    const subject = (await userName(what.userId, tx)) ?? what.userId
    const after = { Password: 'set by the one-time link', ...(ended ? { 'Duty taken over from': ended } : {}) }
    const record = { act: 'set-first-password', area: 'access' as const, subject, subjectId: what.userId, after }
    await recordAct(tx, { kind: 'server' }, record, now, what.societyId)
    const email = await emailOfUser(what.userId, tx)
    return email ? ok({ email }) : linkEnded()
  })
}

async function endTheOther(tx: Parameters<Parameters<typeof write>[0]>[0], what: SetPassword, now: Date) {
  if (what.endsDuty === null) return null
  const rows = await dutiesIn(what.societyId, tx)
  const old = rows.find((row) => row.dutyId === what.endsDuty)
  const stillMine = rows.some(
    (row) => row.userId === what.userId && row.duty === old?.duty && (row.until === null || row.until > now),
  )
  if (!old || !stillMine) return null
  if (old.duty === 'secretary' && !(await hasOtherSecretary(tx, what.societyId, old.dutyId, now))) return null
  return (await closeDuty(tx, what.societyId, old.dutyId, now)) ? old.name : null
}
