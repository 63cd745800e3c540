// An open line to the server while somebody looks at the card: in a pocket it would only empty the battery. It says that
// play is stopped, and that the group's cards have moved on; that it opened at all says that there is a way through.

import type { PlayNow } from '@/lib/facts/play-stop'
import { isPlayNow } from './check'
import { address } from './post'

export interface LineEars {
  readonly opened: () => void
  readonly play: (play: PlayNow) => void
  /** The group's cards read otherwise now; their tag is the one the cards are served with. */
  readonly cards: (tag: string) => void
}

// The browser tries again by itself unless something answered that is no line, as a proxy does while the server starts.
const REFUSED_MS = 10_000

export function liveLine(link: string, ears: LineEars): () => void {
  let line: EventSource | null = null
  let retry: ReturnType<typeof setTimeout> | undefined
  const open = () => {
    if (line || document.visibilityState !== 'visible' || typeof EventSource === 'undefined') return
    line = new EventSource(`${address(link)}/live`)
    line.addEventListener('open', ears.opened)
    line.addEventListener('play', (event) => {
      try {
        const play: unknown = JSON.parse(event.data)
        if (isPlayNow(play)) ears.play(play)
      } catch {
        // Not a word of ours: the next look at the server tells how things stand.
      }
    })
    line.addEventListener('cards', (event) => ears.cards(String(event.data)))
    line.addEventListener('error', () => {
      if (line?.readyState !== EventSource.CLOSED) return
      line = null
      clearTimeout(retry)
      retry = setTimeout(open, REFUSED_MS)
    })
  }
  const close = () => {
    clearTimeout(retry)
    line?.close()
    line = null
  }
  const turn = () => (document.visibilityState === 'visible' ? open() : close())
  open()
  document.addEventListener('visibilitychange', turn)
  window.addEventListener('online', turn)
  return () => {
    close()
    document.removeEventListener('visibilitychange', turn)
    window.removeEventListener('online', turn)
  }
}
