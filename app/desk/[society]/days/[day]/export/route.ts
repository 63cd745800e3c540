import { headers } from 'next/headers'
import { deskDay } from '@/lib/society/desk-day'
import { dayFileOf } from '@/lib/society/export-day'
import { officerAt } from '@/lib/society/who-is-asking'

/** The whole day as one documented JSON file, to keep, to send, or to score without the web. */
export async function GET(_request: Request, { params }: { params: Promise<{ society: string; day: string }> }) {
  const { society, day } = await params
  const actor = await officerAt(await headers(), society)
  if (!actor) return new Response('Sign in at the desk first.\n', { status: 401 })
  const found = await deskDay(actor, day)
  if (!found.ok) return new Response(`${found.sentence}\n`, { status: 404 })
  const file = await dayFileOf(actor, found.value.record.id)
  if (!file.ok) return new Response(`${file.sentence}\n`, { status: file.code === 'not-allowed' ? 403 : 409 })
  return new Response(`${JSON.stringify(file.value.dayFile, null, 2)}\n`, {
    headers: {
      'content-type': 'application/json; charset=utf-8',
      'content-disposition': `attachment; filename="${file.value.fileName.replace(/[^\w.-]/g, '-')}"`,
      'cache-control': 'no-store',
    },
  })
}
