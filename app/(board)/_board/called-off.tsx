import { Notice } from '@/app/_parts/notice'
import { calledOffSentence } from '@/lib/boards/called-off'

/** Over the board and the start sheet of a day that was called off. */
export function CalledOff({ reason }: { reason: string | undefined }) {
  if (reason === undefined) return null
  return (
    <Notice kind="differs" word="Called off">
      <p>
        <b>{calledOffSentence(reason)}</b> The day is not played and there is no result.
      </p>
    </Notice>
  )
}
