'use server'

import type { ActState } from '@/app/desk/_form/act-state'
import { answerForDay, type DayAddress, dayOfForm } from '@/app/desk/_form/answer-for-day'
import { count } from '@/app/desk/_frame/words'
import { allowOnBoard } from '@/lib/society/allow-on-board'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { publishStart } from '@/lib/society/publish-start'

export async function freezeTheDay(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  const many = Number(form.get('many') ?? 0)
  return answerForDay(
    where,
    before,
    form,
    (actor) => freezeHandicaps(actor, { ...dayOfForm(form), fieldSizeSeen: sizeSeen(form) }),
    () => `${count(many, 'handicap')} ${many === 1 ? 'is' : 'are'} frozen into the day.`,
  )
}

/** Told of the size of the field, the officer froze all the same; nobody was told of a field of none. */
const sizeSeen = (form: FormData) => Number(form.get('fieldSizeSeen') ?? 0)

export async function publishTheStart(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    (actor) => publishStart(actor, { ...dayOfForm(form), draw: String(form.get('draw') ?? '') }),
    () => 'The start sheet is out, with a link and a code for each group.',
  )
}

export async function allowIt(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  const show = form.get('show') === 'yes'
  const what = form.get('what') === 'showsPosition' ? 'showsPosition' : 'showsChances'
  return answerForDay(
    where,
    before,
    form,
    (actor) => allowOnBoard(actor, { ...dayOfForm(form), [what]: show }),
    () => (show ? 'It is shown from now on.' : 'It is not shown any more.'),
  )
}
