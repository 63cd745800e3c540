// Where the server sends what it will not let in (lib/society/at-the-door.ts): a method, a host or an address that is none.

import { refused } from '@/lib/result'

export const dynamic = 'force-dynamic'

const ANSWERS = {
  method: { status: 405, sentence: 'This address cannot be asked for that way.' },
  host: { status: 400, sentence: 'The name of this server, as the request has it, is not one.' },
  address: {
    status: 400,
    sentence: 'This address has signs in it that stand for nothing. Copy the link again, whole.',
  },
  kind: { status: 415, sentence: 'Nothing of that kind is taken at this address.' },
} as const

export function GET(request: Request): Response {
  const asked = new URL(request.url).searchParams.get('why') ?? ''
  const why = Object.hasOwn(ANSWERS, asked) ? (asked as keyof typeof ANSWERS) : 'host'
  const { status, sentence } = ANSWERS[why]
  return Response.json(refused('not-understood', sentence), {
    status,
    headers: why === 'method' ? { allow: 'GET, HEAD, POST, OPTIONS' } : {},
  })
}
