// One line for each request that does something: to an address for machines, or a form that was sent. Pages that are only
// read are not listed unless they fail.
import 'server-only'
import { AsyncLocalStorage } from 'node:async_hooks'
import { subscribe } from 'node:diagnostics_channel'
import type { IncomingMessage, ServerResponse } from 'node:http'
import { logRequest } from '@/lib/store/log'
import { atTheDoor } from './at-the-door'

// Every word that stands in an address of ours. Anything else is somebody's or something's own name, or a key.
const WORDS = new Set(
  (
    'api auth board group facts live health ready not-understood sign-in sign-out email change-password get-session passkey list-sessions ' +
    'revoke-session card card-worker.js desk member house-style days bar cards match start result how-we-count new-day members ' +
    'new import courses change entries draw handicaps returns print export book copies account course data file first link matches officers privacy record working _next static manifest.webmanifest'
  ).split(' '),
)

export function addressForLog(url: string): string {
  const path = url.split(/[?#]/, 1)[0] ?? ''
  const parts = path.split('/').filter(Boolean)
  if (parts.length === 0) return '/'
  const shown = parts.slice(0, 8).map((part) => (WORDS.has(part) ? part : '…'))
  return `/${shown.join('/')}${parts.length > 8 ? '/…' : ''}`
}

const METHODS = new Set(['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS'])

interface Seen {
  readonly began: number
  outcome?: string
}

// Kept on the global object: the screens and the start of the server are built apart and would each have their own.
const kept = globalThis as { daybookSeen?: AsyncLocalStorage<Seen>; daybookListening?: boolean }
kept.daybookSeen ??= new AsyncLocalStorage<Seen>()

/** How the act ended, in one stable word: read by the line this request gets in the log. */
export function noteOutcome(outcome: string): void {
  const seen = kept.daybookSeen?.getStore()
  if (seen) seen.outcome = outcome
}

const open = new Set<ServerResponse>()
let lastAnswers = false

/**
 * Every line is hung up after the answer it waits for. A phone that goes on delivering over the same line would otherwise
 * keep a stopping server alive for as long as it has something to say.
 */
export function hangUpAfterAnswers(): void {
  lastAnswers = true
  for (const response of open) hangUp(response)
}

function hangUp(response: ServerResponse): void {
  if (!response.headersSent) response.shouldKeepAlive = false
}

/** Listens to Node's own announcements, so that nothing stands between a request and its answer. */
export function logRequests(): void {
  if (kept.daybookListening) return
  kept.daybookListening = true
  subscribe('http.server.request.start', (message) => {
    const { request, response } = message as { request: IncomingMessage; response: ServerResponse }
    atTheDoor(request)
    open.add(response)
    if (lastAnswers) hangUp(response)
    const seen: Seen = { began: performance.now() }
    kept.daybookSeen?.enterWith(seen)
    // 'close' and not 'finish': an answer that was cut off is told too.
    response.once('close', () => {
      open.delete(response)
      tell(request, response, seen)
    })
  })
}

function tell(request: IncomingMessage, response: ServerResponse, seen: Seen): void {
  const url = request.url ?? '/'
  const method = METHODS.has(request.method ?? '') ? request.method! : 'other'
  const isAct = method !== 'GET' && method !== 'HEAD'
  const status = response.statusCode
  if (!isAct && !url.startsWith('/api/') && status < 500) return
  if (/^\/api\/(health|ready)\b/.test(url) && status < 500) return
  const outcome = seen.outcome ?? (response.writableFinished ? undefined : 'cut-off')
  logRequest({
    method,
    address: addressForLog(url),
    status,
    ms: Math.round(performance.now() - seen.began),
    ...(outcome ? { outcome } : {}),
  })
}
