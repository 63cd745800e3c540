// Looked at before anything else sees a request: methods nobody needs, host names that are none, and what a front server
// would add, which is believed only when the settings say that there is one.
import 'server-only'
import type { IncomingMessage } from 'node:http'
import { isRouterState } from '@/lib/facts/router-state'
import { settingsOfInstallation } from '@/lib/store/settings'

const METHODS = new Set(['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS'])
const HOST = /^(?:[a-z0-9](?:[a-z0-9.-]{0,252})|\[[0-9a-f:.]{2,45}\])(?::\d{1,5})?$/i
const FORWARDED = [
  'x-forwarded-for',
  'x-forwarded-host',
  'x-forwarded-proto',
  'x-forwarded-port',
  'forwarded',
  'x-real-ip',
]

/** Addresses for machines that take something; everything else there, and every built file, is only read. */
const TAKES = [/^\/api\/auth\/./, /^\/api\/group\/[^/]+\/facts\/?$/]
const READS = new Set(['GET', 'HEAD', 'OPTIONS'])

export function atTheDoor(request: IncomingMessage): void {
  const { headers } = request
  if (settingsOfInstallation().DAYBOOK_BEHIND_PROXY !== '1') {
    for (const name of FORWARDED) delete headers[name]
    // The one address that is sure: whoever holds the other end of the line.
    headers['x-forwarded-for'] = request.socket.remoteAddress ?? ''
  }
  const proto = headers['x-forwarded-proto']
  if (proto !== undefined && proto !== 'http' && proto !== 'https') delete headers['x-forwarded-proto']
  const state = headers['next-router-state-tree']
  if (state !== undefined && !isRouterState(String(state))) delete headers['next-router-state-tree']
  const why = whyNot(request)
  if (why !== null) turnAway(request, why)
}

type Why = 'method' | 'host' | 'address' | 'kind'

function whyNot({ method = '', url = '', headers }: IncomingMessage): Why | null {
  if (!METHODS.has(method)) return 'method'
  const forwarded = headers['x-forwarded-host']
  if (!HOST.test(headers.host ?? '') || (forwarded !== undefined && !HOST.test(String(forwarded)))) return 'host'
  const path = readable(url.split('?', 1)[0] ?? '')
  if (path === null) return 'address'
  if (!/^\/(?:api|_next)(?:\/|$)/i.test(path) || READS.has(method)) return null
  if (!TAKES.some((address) => address.test(path))) return 'method'
  // No form of a page goes there: the framework would look for an act in it.
  delete headers['next-action']
  return (headers['content-type'] ?? '').startsWith('multipart/') ? 'kind' : null
}

/** An address with signs that stand for nothing is nobody's: "%", "%ff%fe". */
function readable(path: string): string | null {
  try {
    return decodeURIComponent(path)
  } catch {
    return null
  }
}

function turnAway(request: IncomingMessage, why: Why): void {
  request.method = 'GET'
  request.url = `/api/not-understood?why=${why}`
  for (const name of Object.keys(request.headers)) delete request.headers[name]
  request.headers.host = 'localhost'
}
