// Everything the group's phone needs for a day without a signal.

import { cardPack } from '@/lib/society/card-pack'
import { notePhone } from '@/lib/society/note-phone'
import { scorerOf } from '@/lib/society/who-is-asking'
import { noGroup } from '../no-group'

export const dynamic = 'force-dynamic'

export async function GET(request: Request, { params }: { params: Promise<{ link: string }> }) {
  const { link } = await params
  const actor = await scorerOf(link)
  if (!actor.ok) return noGroup(actor)
  const pack = await cardPack(actor.value)
  if (!pack.ok) return Response.json(pack, { status: pack.code === 'no-such-group' ? 404 : 403 })
  await notePhone(actor.value, request.headers)
  return Response.json(pack.value, { headers: { 'cache-control': 'private, no-store' } })
}
