// The card's background worker, put into one script when the house is built.

import path from 'node:path'

export const dynamic = 'force-static'

export async function GET() {
  // Asked for here and not at the top: outside the build nothing of it is loaded.
  const { build } = await import('esbuild')
  const built = await build({
    entryPoints: [path.join(process.cwd(), 'lib/outbox/worker/worker.ts')],
    bundle: true,
    write: false,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    minify: process.env.NODE_ENV === 'production',
    define: {
      FILES_NEVER_CHANGE: String(process.env.NODE_ENV === 'production'),
      'process.env.DAYBOOK_APP_BUILD': JSON.stringify(process.env.DAYBOOK_APP_BUILD ?? ''),
    },
  })
  return new Response(built.outputFiles[0]?.text, {
    headers: { 'content-type': 'text/javascript; charset=utf-8', 'cache-control': 'no-cache' },
  })
}
