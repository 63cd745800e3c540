// A link that leads nowhere is not the same as one that has ended: the phone keeps its scores and says which.

import type { Refused } from '@/lib/result'

export function noGroup(refused: Refused<'no-such-link' | 'link-ended'>): Response {
  return Response.json(refused, { status: refused.code === 'link-ended' ? 410 : 404 })
}
