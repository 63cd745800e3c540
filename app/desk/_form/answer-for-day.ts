import type { DayId } from '@/lib/facts/ids'
import 'server-only'
import { glanceOf, readGlance, whatChanged } from '@/app/desk/_frame/day-glance'
import type { Actor } from '@/lib/facts/actor'
import type { Result } from '@/lib/result'
import { deskDay } from '@/lib/society/desk-day'
import { toldMeanwhile } from '@/lib/society/told-meanwhile'
import type { ActState } from './act-state'
import { answer } from './answer'
import { idIn } from './form-ids'

export interface DayAddress {
  readonly society: string
  readonly day: string
}

/** An act on a day: when another desk was quicker, the refusal says what it changed. */
export function answerForDay<T>(
  where: DayAddress,
  before: ActState,
  form: FormData,
  act: (actor: Actor) => Promise<Result<T>>,
  said: (value: T) => string,
): Promise<ActState> {
  return answer(before, form, where.society, act, said, async (actor) => {
    const now = await deskDay(actor, where.day)
    if (!now.ok) return []
    // Who and when out of the record; what it comes to, for whoever saw it in another shape.
    const { dayId: subjectId, version } = dayOfForm(form)
    const told = await toldMeanwhile(actor, { subjectId, version })
    if (told.ok && told.value.length > 0) return told.value
    return whatChanged(readGlance(String(form.get('seen') ?? '{}')), glanceOf(now.value.record))
  })
}

export const dayOfForm = (form: FormData) => ({
  dayId: idIn<DayId>(form, 'dayId'),
  version: Number(form.get('version') ?? 0),
})
