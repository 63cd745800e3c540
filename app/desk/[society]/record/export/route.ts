import { headers } from 'next/headers'
import { exportRecord } from '@/lib/society/read-record'
import { officerAt } from '@/lib/society/who-is-asking'

/** The record of acts as a table for a spreadsheet, with the choices of the page. */
export async function GET(request: Request, { params }: { params: Promise<{ society: string }> }) {
  const { society } = await params
  const actor = await officerAt(await headers(), society)
  if (!actor) return new Response('Sign in at the desk first.\n', { status: 401 })
  const asked = Object.fromEntries(new URL(request.url).searchParams)
  const file = await exportRecord(actor, asked)
  if (!file.ok) return new Response(`${file.sentence}\n`, { status: 403 })
  return new Response(`\uFEFF${file.value.csv}\r\n`, {
    headers: {
      'content-type': 'text/csv; charset=utf-8',
      'content-disposition': `attachment; filename="${society.replace(/[^\w-]/g, '-')}-record.csv"`,
      'cache-control': 'no-store',
    },
  })
}
