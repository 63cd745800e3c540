// Play is stopped: said above everything else of the board, with whose word decides.

import { Notice } from '@/app/_parts/notice'
import { PLAY_CAUTION, playSentence } from '@/lib/boards/play-in-words'
import { isStopped, type PlayNow } from '@/lib/facts/play-stop'

export function PlayNotice({ play, zone }: { readonly play: PlayNow | null | undefined; readonly zone: string }) {
  if (!isStopped(play)) return null
  return (
    <Notice kind="differs" word="Stopped" announced>
      <p>
        <b>{playSentence(play, zone)}</b> {PLAY_CAUTION[0]} {PLAY_CAUTION[2]}
      </p>
    </Notice>
  )
}
