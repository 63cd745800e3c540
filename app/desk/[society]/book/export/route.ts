import { headers } from 'next/headers'
import { exportSociety } from '@/lib/society/export-society'
import { noteOutcome } from '@/lib/society/request-log'
import { officerAt } from '@/lib/society/who-is-asking'

const STATUS = { 'not-allowed': 403, 'not-found': 404, 'too-many-tries': 429 } as const

/** The whole book of this society as plain files in one .zip. */
export async function GET(_request: Request, { params }: { params: Promise<{ society: string }> }) {
  const { society } = await params
  const actor = await officerAt(await headers(), society)
  if (!actor) return new Response('Sign in at the desk first.\n', { status: 401 })
  const file = await exportSociety(actor)
  noteOutcome(file.ok ? 'done' : file.code)
  if (!file.ok) return new Response(`${file.sentence}\n`, { status: STATUS[file.code] })
  return new Response(new Uint8Array(file.value.bytes), {
    headers: {
      'content-type': 'application/zip',
      'content-disposition': `attachment; filename="${file.value.fileName}"`,
      'cache-control': 'no-store',
    },
  })
}
