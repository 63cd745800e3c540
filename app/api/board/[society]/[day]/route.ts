// The finished board as JSON. A reader who has this version already gets 304 and no body.

import { countedBoard } from '@/lib/society/read-board'

export const dynamic = 'force-dynamic'

export async function GET(request: Request, { params }: { params: Promise<{ society: string; day: string }> }) {
  const { society, day } = await params
  const counted = await countedBoard(society, day)
  if (!counted.ok) return Response.json(counted, { status: 404 })
  const { version, text } = counted.value
  const headers = { etag: `"${version}"`, 'cache-control': 'no-cache' }
  const has = (request.headers.get('if-none-match') ?? '').split(',').map((one) => one.trim().replace(/^W\//, ''))
  if (has.includes(headers.etag)) return new Response(null, { status: 304, headers })
  return new Response(text, { headers: { ...headers, 'content-type': 'application/json; charset=utf-8' } })
}
