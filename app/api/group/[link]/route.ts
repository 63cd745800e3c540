// Everything the group's phone needs for a day without a signal; 304 when it has that already.

import { SCORE_VERSION } from '@/lib/facts/card-pack'
import { servedPack } from '@/lib/society/card-pack'
import { notePhone } from '@/lib/society/note-phone'
import { scorerOf } from '@/lib/society/who-is-asking'
import { noGroup } from '../no-group'

export const dynamic = 'force-dynamic'

export async function GET(request: Request, { params }: { params: Promise<{ link: string }> }) {
  const { link } = await params
  const actor = await scorerOf(link)
  if (!actor.ok) return noGroup(actor)
  // First what the phone says of itself: the answer names whose phones there are.
  await notePhone(actor.value, request.headers)
  const served = await servedPack(actor.value)
  if (!served.ok) return Response.json(served, { status: served.code === 'no-such-group' ? 404 : 403 })
  const { pack, tag, text } = served.value
  const headers = { 'cache-control': 'private, no-store', etag: tag, [SCORE_VERSION]: String(pack.scoreVersion) }
  // A proxy that packs the answer marks the tag as weak; it names the same cards.
  const has = request.headers.get('if-none-match')?.replace(/^W\//, '')
  if (has === tag) return new Response(null, { status: 304, headers })
  return new Response(text, { headers: { ...headers, 'content-type': 'application/json' } })
}
