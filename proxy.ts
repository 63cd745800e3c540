// Every page gets its own number for its own scripts; see lib/facts/content-policy.ts. Next reads the number from the
// request's header and writes it on the scripts it puts into the page.
import { type NextRequest, NextResponse } from 'next/server'
import { contentPolicy, NONCE_HEADER } from '@/lib/facts/content-policy'

export function proxy(request: NextRequest): NextResponse {
  const nonce = Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString('base64')
  const policy = contentPolicy(nonce, process.env.NODE_ENV === 'development')
  const headers = new Headers(request.headers)
  headers.set(NONCE_HEADER, nonce)
  headers.set('content-security-policy', policy)
  const response = NextResponse.next({ request: { headers } })
  response.headers.set('content-security-policy', policy)
  return response
}

// Not for what holds no page: addresses for machines, built files, icons. They get a fixed policy in next.config.js.
export const config = {
  matcher: ['/((?!api/|_next/static/|_next/image|card-worker\\.js|manifest\\.webmanifest|.*\\.(?:svg|png|ico)$).*)'],
}
