// Where the server sends what it will not let in (lib/society/at-the-door.ts): a method or a host that is none.

import { refused } from '@/lib/result'

export const dynamic = 'force-dynamic'

const SENTENCES = {
  method: 'This address cannot be asked for that way.',
  host: 'The name of this server, as the request has it, is not one.',
} as const

export function GET(request: Request): Response {
  const why = new URL(request.url).searchParams.get('why') === 'method' ? 'method' : 'host'
  return Response.json(refused('not-understood', SENTENCES[why]), {
    status: why === 'method' ? 405 : 400,
    headers: why === 'method' ? { allow: 'GET, HEAD, POST, OPTIONS' } : {},
  })
}
