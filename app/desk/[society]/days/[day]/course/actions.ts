'use server'

import type { ActState } from '@/app/desk/_form/act-state'
import { answer } from '@/app/desk/_form/answer'
import { count } from '@/app/desk/_frame/words'
import type { DayId, DeviceId } from '@/lib/facts/ids'
import { PLAY_STOP_KINDS } from '@/lib/facts/play-stop'
import { stopPlay } from '@/lib/society/stop-play'
import { takeLateScores } from '@/lib/society/take-late-scores'

interface Where {
  readonly society: string
  readonly dayId: DayId
}

export async function tellTheCourse(where: Where, before: ActState, form: FormData): Promise<ActState> {
  const kind = PLAY_STOP_KINDS.find((one) => one === form.get('kind')) ?? 'stop-at-once'
  const reason = String(form.get('reason') ?? '')
  return answer(
    before,
    form,
    where.society,
    (actor) => stopPlay(actor, { dayId: where.dayId, kind, reason }),
    (play) =>
      play.kind === 'resume'
        ? 'Told: play is resumed. Open cards say it now, the others with their next signal.'
        : 'Told: play is stopped. Open cards say it now, the others with their next signal.',
  )
}

export async function takeTheLate(
  where: Where & { readonly deviceId: DeviceId },
  before: ActState,
  form: FormData,
): Promise<ActState> {
  return answer(
    before,
    form,
    where.society,
    (actor) => takeLateScores(actor, { dayId: where.dayId, deviceId: where.deviceId }),
    ({ taken, late, refused }) =>
      [
        `${count(taken, 'score')} taken in.`,
        late > 0 ? `${count(late, 'late fact')} kept and not counted: the card is closed.` : '',
        refused > 0 ? `${refused} could not be taken.` : '',
      ]
        .filter(Boolean)
        .join(' '),
  )
}
