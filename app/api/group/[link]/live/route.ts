// What a group's phone is told while its card is open: suspension of play, and that the group's cards read otherwise. The
// cards themselves are fetched: one line says it to phones that have them and to phones that do not.

import { watchCards } from '@/lib/society/watch-cards'
import { watchPlay } from '@/lib/society/watch-play'
import { scorerOf } from '@/lib/society/who-is-asking'
import { addStream, openStreams, streamFrom } from '../../../live/open-streams'
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
      const unwatch: (() => void)[] = []
      end = () => {
        over = true
        clearInterval(heart)
        for (const stop of unwatch.splice(0)) stop()
        openStreams().delete(mine)
      }
      const mine = { from: streamFrom(request.headers), say, close }
      addStream(mine)
      request.signal.addEventListener('abort', () => end(), { once: true })
      say('retry: 2000\n\n')
      const play = await watchPlay(actor.value, (now) =>
        say(`id: ${now.number}\nevent: play\ndata: ${JSON.stringify(now)}\n\n`),
      )
      const cards = await watchCards(actor.value, (tag) => say(`event: cards\ndata: ${tag}\n\n`))
      for (const watching of [play, cards]) if (watching.ok) unwatch.push(watching.value)
      if (over) end()
      else if (!play.ok || !cards.ok) close()
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
