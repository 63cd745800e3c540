// 200 when the book opens, is up to date and has room on its disk; 503 with what is wrong, in single words, otherwise.

import { whatKeepsFromWork } from '@/lib/society/serving'

export const dynamic = 'force-dynamic'

export async function GET(): Promise<Response> {
  const wrong = await whatKeepsFromWork()
  return Response.json(
    { ready: wrong.length === 0, wrong },
    { status: wrong.length === 0 ? 200 : 503, headers: { 'cache-control': 'no-store' } },
  )
}
