import { headers } from 'next/headers'
import { ownDataFile } from '@/lib/society/own-data'
import { memberOf } from '@/lib/society/who-is-asking'

/** What is held about a member, as a file to take away. */
export async function GET(request: Request, { params }: { params: Promise<{ key: string }> }) {
  const { key } = await params
  const actor = await memberOf(key, await headers())
  if (!actor.ok) return new Response(`${actor.sentence}\n`, { status: 404 })
  const as = new URL(request.url).searchParams.get('as') === 'json' ? 'json' : 'csv'
  const file = await ownDataFile(actor.value, as)
  if (!file.ok) return new Response(`${file.sentence}\n`, { status: 404 })
  return new Response(file.value.text, {
    headers: {
      'content-type': as === 'json' ? 'application/json; charset=utf-8' : 'text/csv; charset=utf-8',
      'content-disposition': `attachment; filename="${file.value.fileName}"`,
      'cache-control': 'private, no-store',
    },
  })
}
