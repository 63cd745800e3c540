// A delivery from a group's phone. 200 settles what it answers; 400 will never be taken; anything else is tried again.

import { refused } from '@/lib/result'
import { scoresNotSaved } from '@/lib/society/cannot-save'
import { deliverFacts } from '@/lib/society/enter-score'
import { holdLateScores } from '@/lib/society/hold-late-scores'
import { scorerOf } from '@/lib/society/who-is-asking'
import { bodyOf } from '../../delivery-body'
import { mayDeliver } from '../../delivery-rate'
import { noGroup } from '../../no-group'

export const dynamic = 'force-dynamic'

const STATUS = { 'not-understood': 400, 'not-allowed': 403, 'no-such-group': 404, gap: 409 } as const

export async function POST(request: Request, { params }: { params: Promise<{ link: string }> }) {
  try {
    return await answerTo(request, (await params).link)
  } catch (cause) {
    const no = scoresNotSaved(cause)
    if (no === null) throw cause
    return Response.json(no, { status: 503, headers: { 'retry-after': '30' } })
  }
}

async function answerTo(request: Request, link: string): Promise<Response> {
  const actor = await scorerOf(link)
  if (!actor.ok) {
    const knock = await bodyOf(request)
    const held = typeof knock === 'string' ? null : await holdLateScores(link, knock.json)
    return held ? Response.json(held, { headers: { 'cache-control': 'no-store' } }) : noGroup(actor)
  }
  if (!mayDeliver(actor.value.groupId, Date.now()))
    return Response.json(refused('too-many-tries', 'Too many deliveries at once. The scores are kept on the phone.'), {
      status: 429,
      headers: { 'retry-after': '10' },
    })
  const body = await bodyOf(request)
  if (body === 'too-long')
    return Response.json(refused('too-long', 'That is more than one delivery may hold. Send fewer scores at a time.'), {
      status: 413,
    })
  if (body === 'not-json')
    return Response.json(refused('not-understood', 'That is not a delivery of scores.'), { status: 400 })
  const answer = await deliverFacts(actor.value, body.json, new Date())
  if (!answer.ok) return Response.json(answer, { status: STATUS[answer.code] })
  return Response.json(answer.value, { headers: { 'cache-control': 'no-store' } })
}
