// Suspension of play, told to the group's phone while its card is open. Scores do not come this way: each of them would
// wake every phone of the day.

import { watchPlay } from '@/lib/society/watch-play'
import { scorerOf } from '@/lib/society/who-is-asking'
import { openStreams } from '../../../live/open-streams'
import { noGroup } from '../../no-group'

export const dynamic = 'force-dynamic'

const HEARTBEAT = 25_000

export async function GET(request: Request, { params }: { params: Promise<{ link: string }> }) {
  const { link } = await params
  const actor = await scorerOf(link)
  if (!actor.ok) return noGroup(actor)

  const encoder = new TextEncoder()
  let end = () => {}
  const stream = new ReadableStream<Uint8Array>({
    async start(controller) {
      let over = false
      const say = (text: string) => {
        if (!over) controller.enqueue(encoder.encode(text))
      }
      const close = () => {
        end()
        controller.close()
      }
      const heart = setInterval(() => say(': still here\n\n'), HEARTBEAT)
      let unwatch = () => {}
      end = () => {
        over = true
        clearInterval(heart)
        unwatch()
        openStreams().delete(close)
      }
      openStreams().add(close)
      request.signal.addEventListener('abort', () => end(), { once: true })
      say('retry: 5000\n\n')
      const watching = await watchPlay(actor.value, (play) =>
        say(`id: ${play.number}\nevent: play\ndata: ${JSON.stringify(play)}\n\n`),
      )
      if (!watching.ok) return close()
      if (over) watching.value()
      else unwatch = watching.value
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
