// The process is alive and answers, and which version it is. Nothing is looked at: see /api/ready for whether it can work.

export const dynamic = 'force-dynamic'

export function GET(): Response {
  return Response.json(
    { alive: true, version: process.env.DAYBOOK_VERSION },
    { headers: { 'cache-control': 'no-store' } },
  )
}
