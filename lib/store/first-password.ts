import 'server-only'
import { randomBytes, randomUUID } from 'node:crypto'
import { book } from './client'
import { hashOfPassword } from './password'
import { write } from './write'

/** A password for somebody who has none here yet; told once and kept only as a digest. */
export async function firstPassword(userId: string, now: Date): Promise<string> {
  const password = randomBytes(12).toString('base64url')
  const digest = await hashOfPassword(password)
  await write(
    (tx) =>
      tx.account.create({
        data: {
          id: randomUUID(),
          accountId: userId,
          providerId: 'credential',
          userId,
          password: digest,
          createdAt: now,
          updatedAt: now,
        },
      }),
    book(),
  )
  return password
}
