// Looked at before anything else sees a request: methods nobody needs, host names that are none, and what a front server
// would add, which is believed only when the settings say that there is one.
import 'server-only'
import type { IncomingMessage } from 'node:http'
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

export function atTheDoor(request: IncomingMessage): void {
  const { headers } = request
  if (settingsOfInstallation().DAYBOOK_BEHIND_PROXY !== '1') {
    for (const name of FORWARDED) delete headers[name]
    // The one address that is sure: whoever holds the other end of the line.
    headers['x-forwarded-for'] = request.socket.remoteAddress ?? ''
  }
  const forwarded = headers['x-forwarded-host']
  const proto = headers['x-forwarded-proto']
  if (proto !== undefined && proto !== 'http' && proto !== 'https') delete headers['x-forwarded-proto']
  if (!METHODS.has(request.method ?? '')) turnAway(request, 'method')
  else if (!HOST.test(headers.host ?? '') || (forwarded !== undefined && !HOST.test(String(forwarded))))
    turnAway(request, 'host')
}

function turnAway(request: IncomingMessage, why: 'method' | 'host'): void {
  request.method = 'GET'
  request.url = `/api/not-understood?why=${why}`
  for (const name of Object.keys(request.headers)) delete request.headers[name]
  request.headers.host = 'localhost'
}
