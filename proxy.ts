// Every page gets its own number for its own scripts; see lib/facts/content-policy.ts. Next reads the number from the
// request's header and writes it on the scripts it puts into the page. What is posted to a page must be a form of ours.
import { type NextRequest, NextResponse } from 'next/server'
import { contentPolicy, NONCE_HEADER } from '@/lib/facts/content-policy'
import { isPlainForm, isScriptedForm } from '@/lib/facts/form-request'
import { readAtMost } from '@/lib/facts/read-body'

const MOST_BYTES = 3 * 1024 * 1024

export async function proxy(request: NextRequest): Promise<NextResponse> {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    const status = await refusedWith(request)
    if (status !== null) return new NextResponse(null, { status, headers: { 'cache-control': 'no-store' } })
  }
  const nonce = Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString('base64')
  const policy = contentPolicy(nonce, process.env.NODE_ENV === 'development')
  const headers = new Headers(request.headers)
  headers.set(NONCE_HEADER, nonce)
  headers.set('content-security-policy', policy)
  const response = NextResponse.next({ request: { headers } })
  response.headers.set('content-security-policy', policy)
  return response
}

async function refusedWith(request: NextRequest): Promise<number | null> {
  if (request.method !== 'POST') return 405
  if (!isSameOrigin(request)) return 403
  const action = request.headers.get('next-action')
  const kind = request.headers.get('content-type') ?? ''
  try {
    if (kind.startsWith('multipart/form-data')) {
      const bytes = await readAtMost(request.clone(), MOST_BYTES)
      if (bytes === 'too-long') return 413
      const parts = await new Response(bytes, { headers: { 'content-type': kind } }).formData()
      // A part without a name is read differently by whoever reads it next.
      if ([...parts.keys()].includes('')) return 400
      return (action === null ? isPlainForm(parts) : isScriptedForm(action, parts)) ? null : 400
    }
  } catch {
    // A body that is not what its header says is refused like any other that is not understood.
    return 400
  }
  // Every act of ours takes a form: what a script would send as text is none of them.
  return 415
}

/** A browser says where a form comes from; a form from another site is not ours, whatever it asks for. */
function isSameOrigin(request: NextRequest): boolean {
  const site = request.headers.get('sec-fetch-site')
  if (site !== null && site !== 'same-origin' && site !== 'none') return false
  const origin = request.headers.get('origin')
  if (origin === null) return true
  const host = request.headers.get('x-forwarded-host') ?? request.headers.get('host')
  return URL.canParse(origin) && new URL(origin).host === host
}

// Not for what holds no page: addresses for machines, built files, icons. They get a fixed policy in next.config.js.
export const config = {
  matcher: ['/((?!api/|_next/static/|_next/image|card-worker\\.js|manifest\\.webmanifest|.*\\.(?:svg|png|ico)$).*)'],
}
