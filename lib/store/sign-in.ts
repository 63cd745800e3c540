import 'server-only'
import { randomUUID } from 'node:crypto'
import { betterAuth } from 'better-auth'
import { prismaAdapter } from 'better-auth/adapters/prisma'
import { APIError, createAuthMiddleware } from 'better-auth/api'
import { parseSetCookieHeader } from 'better-auth/cookies'
import { shortened } from '@/lib/facts/act-record'
import { mayTry } from './attempts'
import { type Book, book } from './client'
import { logFault } from './log'
import { passkeyPlugin } from './passkeys'
import { secretOfInstallation, settingsOfInstallation } from './settings'

/** Tries for one e-mail address in a quarter of an hour, wherever they come from. */
const TRIES_PER_ADDRESS = 20
const QUARTER_HOUR = 15 * 60_000
/** Characters of an e-mail address: RFC 5321, 4.5.3.1.3, without the brackets. */
const LONGEST_ADDRESS = 254
/** Characters of what a browser says of itself. */
const LONGEST_AGENT = 300

function openSignIn(kept: Book) {
  const origin = settingsOfInstallation().DAYBOOK_ORIGIN
  return betterAuth({
    appName: 'Daybook',
    basePath: '/api/auth',
    ...(origin ? { baseURL: origin } : {}),
    secret: secretOfInstallation(),
    database: prismaAdapter(kept, { provider: 'sqlite', transaction: true }),
    // Officers are made by another officer or at the first start, never by a visitor.
    emailAndPassword: { enabled: true, disableSignUp: true, minPasswordLength: 12, maxPasswordLength: 128 },
    disabledPaths: [
      '/sign-up/email',
      '/sign-in/social',
      '/request-password-reset',
      '/reset-password',
      '/send-verification-email',
      '/verify-email',
      '/change-email',
      '/update-user',
      '/delete-user',
      '/link-social',
      '/unlink-account',
    ],
    session: { expiresIn: 30 * 86_400, updateAge: 86_400 },
    rateLimit: {
      enabled: true,
      storage: 'database',
      window: 60,
      max: 120,
      customRules: { '/sign-in/email': { window: 60, max: 20 }, '/get-session': false },
    },
    // A request whose origin is the host it was sent to comes from our own pages; everything else is refused.
    trustedOrigins: (request) => {
      const host = request?.headers.get('host')
      return host ? [`http://${host}`, `https://${host}`] : []
    },
    advanced: {
      // Said outright: the library would otherwise leave both checks out while tests run.
      disableOriginCheck: false,
      disableCSRFCheck: false,
      useSecureCookies: origin?.startsWith('https:') ?? false,
      defaultCookieAttributes: { sameSite: 'lax', httpOnly: true },
      database: { generateId: () => randomUUID() },
    },
    hooks: {
      before: createAuthMiddleware(async (context) => {
        if (context.path !== '/sign-in/email') return
        const email = String(context.body?.email ?? '').toLowerCase()
        if (email.length > LONGEST_ADDRESS) throw new APIError('BAD_REQUEST', { message: 'Invalid email' })
        if (await mayTry(`sign-in ${email}`, TRIES_PER_ADDRESS, QUARTER_HOUR, new Date())) return
        throw new APIError('TOO_MANY_REQUESTS', { message: 'Too many tries. Wait a quarter of an hour.' })
      }),
    },
    plugins: [passkeyPlugin()],
    databaseHooks: {
      session: {
        create: {
          // Enough to see that a session is not one's own; too little to follow anybody by.
          before: async (session) => ({
            data: {
              ...session,
              ipAddress: shortened(session.ipAddress) ?? '',
              userAgent: session.userAgent?.slice(0, LONGEST_AGENT) ?? null,
            },
          }),
        },
      },
    },
    // The library's own lines hold what a visitor sent: what fails is said through our log, by its kind.
    logger: { disabled: true },
    onAPIError: {
      onError: (cause) => {
        if (!(cause instanceof APIError) || cause.statusCode >= 500) logFault('signing in', cause)
      },
    },
    telemetry: { enabled: false },
  })
}

export type SignIn = ReturnType<typeof openSignIn>

// Kept with the book it belongs to: a test opens another book, and must not be signed in to the last one.
const opened = new WeakMap<Book, SignIn>()

export function signIn(): SignIn {
  const kept = book()
  let one = opened.get(kept)
  if (!one) {
    one = openSignIn(kept)
    opened.set(kept, one)
  }
  return one
}

/** A cookie as the answer should carry it. */
export interface CookieToSet {
  readonly name: string
  readonly value: string
  readonly path: string
  readonly httpOnly: boolean
  readonly secure: boolean
  readonly sameSite: 'lax' | 'strict' | 'none'
  readonly maxAge?: number
}

/** Values decoded: whoever sets them encodes them again. */
export function cookiesIn(answer: Response): readonly CookieToSet[] {
  return answer.headers.getSetCookie().flatMap((line) =>
    [...parseSetCookieHeader(line)].map(([name, cookie]) => ({
      name,
      value: decodeURIComponent(cookie.value),
      path: cookie.path ?? '/',
      httpOnly: cookie.httponly ?? true,
      secure: cookie.secure ?? false,
      sameSite: cookie.samesite ?? 'lax',
      ...(cookie['max-age'] === undefined ? {} : { maxAge: cookie['max-age'] }),
    })),
  )
}
