// One `version` message for each change of the day, with what changed on the board. The browser resumes by itself and
// names the last version it saw.

import { boardStep } from '@/lib/society/board-steps'
import { dayToWatch, live } from '@/lib/society/live'
import { addStream, openStreams, streamFrom } from '../../open-streams'

export const dynamic = 'force-dynamic'

const HEARTBEAT = 15_000

export async function GET(request: Request, { params }: { params: Promise<{ society: string; day: string }> }) {
  const { society, day } = await params
  const found = await dayToWatch(society, day)
  if (!found.ok) return Response.json(found, { status: 404 })
  const { dayId, version } = found.value

  const encoder = new TextEncoder()
  let end = () => {}
  const stream = new ReadableStream<Uint8Array>({
    start(controller) {
      let seen = request.headers.get('last-event-id')
      let over = false
      const say = (text: string) => controller.enqueue(encoder.encode(text))
      const tell = (now: string) => {
        if (now === seen) return
        seen = now
        say(`id: ${now}\nevent: version\ndata: ${JSON.stringify({ version: now })}\n\n`)
      }
      // The same bytes for everybody who watches: they are made once.
      const heard = async (now: string) => {
        const step = await boardStep({ dayId, society, day }, now)
        if (over) return
        if (!step) return tell(now)
        if (step.version === seen) return
        seen = step.version
        controller.enqueue(step.message)
      }
      const unwatch = live().watch(dayId, heard, version)
      const heart = setInterval(() => say(': still here\n\n'), HEARTBEAT)
      end = () => {
        over = true
        clearInterval(heart)
        unwatch()
        openStreams().delete(mine)
      }
      const close = () => {
        end()
        controller.close()
      }
      const mine = { from: streamFrom(request.headers), say, close }
      addStream(mine)
      request.signal.addEventListener('abort', () => end(), { once: true })
      say('retry: 2000\n\n')
      tell(version)
    },
    cancel() {
      end()
    },
  })
  return new Response(stream, {
    headers: {
      'content-type': 'text/event-stream; charset=utf-8',
      'cache-control': 'no-cache, no-transform',
      'x-accel-buffering': 'no',
    },
  })
}
