// The process is alive and answers. Nothing is looked at: see /api/ready for whether it can work.

export const dynamic = 'force-dynamic'

export function GET(): Response {
  return Response.json({ alive: true }, { headers: { 'cache-control': 'no-store' } })
}
