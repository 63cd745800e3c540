import type { UserId } from '@/lib/facts/ids'
import 'server-only'
import { randomUUID } from 'node:crypto'
import {
  type AuthenticationResponseJSON,
  generateAuthenticationOptions,
  generateRegistrationOptions,
  type RegistrationResponseJSON,
  verifyAuthenticationResponse,
  verifyRegistrationResponse,
} from '@simplewebauthn/server'
import type { BetterAuthPlugin } from 'better-auth'
import { APIError, createAuthEndpoint, freshSessionMiddleware } from 'better-auth/api'
import { setSessionCookie } from 'better-auth/cookies'
import { z } from 'zod'
import { typedLine } from '@/lib/facts/typed-text'
import { recordOfAccountIn } from './account-record'
import { type Book, book, type Tx } from './client'
import { settingsOfInstallation } from './settings'
import { write } from './write'

const MINUTES = 5
const MOST_PASSKEYS = 10
const CHALLENGE_COOKIE = 'passkey_challenge'

// Only what is handed to the library is looked at here; it checks every field of the answer itself.
const browserAnswer = z.looseObject({ id: z.string().min(1).max(1400), type: z.literal('public-key') })

export interface PasskeyLine {
  readonly passkeyId: string
  readonly name: string
  readonly since: string | null
}

export async function passkeysOf(userId: UserId, on: Book | Tx = book()): Promise<readonly PasskeyLine[]> {
  const rows = await on.passkey.findMany({ where: { userId }, orderBy: { createdAt: 'asc' } })
  return rows.map((row) => ({
    passkeyId: row.id,
    name: row.name ?? 'Passkey',
    since: row.createdAt?.toISOString() ?? null,
  }))
}

export async function removePasskey(tx: Tx, userId: UserId, passkeyId: string): Promise<boolean> {
  return (await tx.passkey.deleteMany({ where: { id: passkeyId, userId } })).count === 1
}

/** The address the browser is at, if it is ours: a passkey belongs to it. */
function ownOrigin(headers: Headers | undefined): URL {
  const set = settingsOfInstallation().DAYBOOK_ORIGIN
  const said = headers?.get('origin')
  const host = headers?.get('host')
  if (said && URL.canParse(said)) {
    const origin = new URL(said)
    if (origin.origin === set || origin.host === host) return origin
  }
  throw new APIError('FORBIDDEN', { message: 'The request does not come from this address.' })
}

async function keepChallenge(challenge: string, forWhat: string, now: Date): Promise<string> {
  const id = randomUUID()
  const expiresAt = new Date(now.getTime() + MINUTES * 60_000)
  await book().verification.create({
    data: { id, identifier: `passkey ${forWhat}`, value: challenge, expiresAt, createdAt: now, updatedAt: now },
  })
  return id
}

/** A challenge serves once, whatever comes of it. */
async function takeChallenge(id: string | null | undefined | false, forWhat: string, now: Date): Promise<string> {
  const challenge = await write(async (tx) => {
    if (!id) return null
    const where = { id, identifier: `passkey ${forWhat}`, expiresAt: { gt: now } }
    const row = await tx.verification.findFirst({ where, select: { value: true } })
    return row && (await tx.verification.deleteMany({ where })).count === 1 ? row.value : null
  })
  if (challenge === null) throw new APIError('BAD_REQUEST', { message: 'That took too long. Begin again.' })
  return challenge
}

const notAccepted = () => new APIError('UNAUTHORIZED', { message: 'That passkey opens no desk here.' })

/** Registering and signing in with a passkey, as part of the sign-in library: its sessions, cookies and limits hold. */
export function passkeyPlugin() {
  return {
    id: 'daybook-passkey',
    endpoints: {
      beginPasskey: createAuthEndpoint(
        '/passkey/register/begin',
        { method: 'POST', use: [freshSessionMiddleware] },
        async (context) => {
          const { user } = context.context.session
          const userId = user.id as UserId
          const { hostname } = ownOrigin(context.headers)
          const known = await book().passkey.findMany({ where: { userId }, select: { credentialID: true } })
          if (known.length >= MOST_PASSKEYS)
            throw new APIError('BAD_REQUEST', { message: 'Ten passkeys are enough. Remove one first.' })
          const options = await generateRegistrationOptions({
            rpName: 'Daybook',
            rpID: hostname,
            userID: new TextEncoder().encode(user.id),
            userName: user.email,
            userDisplayName: user.name,
            attestationType: 'none',
            excludeCredentials: known.map((one) => ({ id: one.credentialID })),
            authenticatorSelection: { residentKey: 'required', userVerification: 'required' },
          })
          await setChallengeCookie(context, await keepChallenge(options.challenge, `of ${user.id}`, new Date()))
          return context.json(options)
        },
      ),
      keepPasskey: createAuthEndpoint(
        '/passkey/register',
        {
          method: 'POST',
          use: [freshSessionMiddleware],
          body: z.object({ name: typedLine().min(1).max(60), response: browserAnswer }),
        },
        async (context) => {
          const { user } = context.context.session
          const userId = user.id as UserId
          const origin = ownOrigin(context.headers)
          const now = new Date()
          const challenge = await takeChallenge(await challengeCookie(context), `of ${user.id}`, now)
          const checked = await verifyRegistrationResponse({
            response: context.body.response as unknown as RegistrationResponseJSON,
            expectedChallenge: challenge,
            expectedOrigin: origin.origin,
            expectedRPID: origin.hostname,
            requireUserVerification: true,
          }).catch(() => null)
          if (!checked?.verified) throw notAccepted()
          const { credential, credentialDeviceType, credentialBackedUp, aaguid } = checked.registrationInfo
          await write(async (tx) => {
            await tx.passkey.create({
              data: {
                id: randomUUID(),
                name: context.body.name,
                userId,
                credentialID: credential.id,
                publicKey: Buffer.from(credential.publicKey).toString('base64url'),
                counter: credential.counter,
                deviceType: credentialDeviceType,
                backedUp: credentialBackedUp,
                transports: credential.transports?.join(',') ?? null,
                createdAt: now,
                aaguid,
              },
            })
            const from = context.headers?.get('x-forwarded-for')?.split(',')[0]?.trim()
            await recordOfAccountIn(tx, { userId, name: user.name }, { Passkey: 'added' }, from, now)
          })
          return context.json({ kept: true })
        },
      ),
      beginPasskeySignIn: createAuthEndpoint('/passkey/sign-in/begin', { method: 'POST' }, async (context) => {
        const { hostname } = ownOrigin(context.headers)
        // No list of credentials: an answer that named them would tell who has an account.
        const options = await generateAuthenticationOptions({ rpID: hostname, userVerification: 'required' })
        await setChallengeCookie(context, await keepChallenge(options.challenge, 'for signing in', new Date()))
        return context.json(options)
      }),
      signInPasskey: createAuthEndpoint(
        '/passkey/sign-in',
        { method: 'POST', body: z.object({ response: browserAnswer }) },
        async (context) => {
          const origin = ownOrigin(context.headers)
          const challenge = await takeChallenge(await challengeCookie(context), 'for signing in', new Date())
          const row = await book().passkey.findFirst({
            where: { credentialID: context.body.response.id },
            include: { user: true },
          })
          if (!row) throw notAccepted()
          const checked = await verifyAuthenticationResponse({
            response: context.body.response as unknown as AuthenticationResponseJSON,
            expectedChallenge: challenge,
            expectedOrigin: origin.origin,
            expectedRPID: origin.hostname,
            requireUserVerification: true,
            credential: {
              id: row.credentialID,
              publicKey: new Uint8Array(Buffer.from(row.publicKey, 'base64url')),
              counter: row.counter,
            },
          }).catch(() => null)
          if (!checked?.verified) throw notAccepted()
          const { newCounter } = checked.authenticationInfo
          // A counter that somebody else moved on meanwhile is a copy of the key at work.
          const moved = await book().passkey.updateMany({
            where: { id: row.id, counter: row.counter },
            data: { counter: newCounter },
          })
          if (moved.count !== 1) throw notAccepted()
          const session = await context.context.internalAdapter.createSession(row.userId)
          await setSessionCookie(context, { session, user: row.user })
          return context.json({ signedIn: true })
        },
      ),
    },
    rateLimit: [{ pathMatcher: (path) => path.startsWith('/passkey/'), window: 60, max: 30 }],
  } satisfies BetterAuthPlugin
}

type Context = Parameters<typeof setSessionCookie>[0]

function cookieOf(context: Context) {
  return context.context.createAuthCookie(CHALLENGE_COOKIE, { maxAge: MINUTES * 60 })
}

async function setChallengeCookie(context: Context, id: string): Promise<void> {
  const cookie = cookieOf(context)
  await context.setSignedCookie(cookie.name, id, context.context.secret, cookie.attributes)
}

async function challengeCookie(context: Context) {
  return context.getSignedCookie(cookieOf(context).name, context.context.secret)
}
