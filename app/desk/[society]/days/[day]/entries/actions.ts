'use server'

import type { ActState } from '@/app/desk/_form/act-state'
import { answerForDay, type DayAddress, dayOfForm } from '@/app/desk/_form/answer-for-day'
import { count, list } from '@/app/desk/_frame/words'
import { enterGuest as enterGuestSchema, enterPlayers as enterPlayersSchema } from '@/lib/facts/commands'
import { enterGuest, enterPlayers } from '@/lib/society/enter-player'
import { parseInput } from '@/lib/society/parse-input'
import { readFigure } from '../../../_figures/read-figure'

/** The ticks of the list: who is ticked now and was not in is entered, who was in and is not ticked withdraws. */
export async function keepEntries(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  const ticked = form.getAll('enter').map(String)
  const shown = new Map(
    form.getAll('was').map((line) => {
      const [personId = '', entryId = ''] = String(line).split(' ')
      return [personId, entryId]
    }),
  )
  const tee = (personId: string) => String(form.get(`tee-${personId}`) ?? '') || null
  const gone = [...shown].filter(([personId]) => !ticked.includes(personId)).map(([, entryId]) => entryId)
  const fresh = ticked.filter((personId) => !shown.has(personId))
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const asked = parseInput(enterPlayersSchema, {
        ...dayOfForm(form),
        enter: ticked.map((personId) => ({ personId, roundTeeId: tee(personId) })),
        withdraw: gone,
      })
      return asked.ok ? enterPlayers(actor, asked.value) : asked
    },
    ({ waiting, movedUp }) =>
      `Kept: ${list([
        ...(fresh.length > 0 ? [`${fresh.length} entered`] : []),
        ...(gone.length > 0 ? [`${gone.length} withdrawn`] : []),
        `${count(ticked.length, 'player')} on the list`,
      ])}.${waiting.length > 0 ? ` The places are full: ${list(waiting)} ${waiting.length === 1 ? 'waits' : 'wait'}.` : ''}${movedUp.length > 0 ? ` ${list(movedUp)} moved up from the waiting list.` : ''}`,
  )
}

export async function addGuest(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const figure = readFigure(String(form.get('claimedTenths') ?? ''))
      if (!figure.ok) return figure
      const asked = parseInput(enterGuestSchema, {
        ...dayOfForm(form),
        hostId: form.get('hostId'),
        firstName: form.get('firstName'),
        familyName: form.get('familyName'),
        gender: form.get('gender') ?? 'men',
        claimedTenths: figure.value,
      })
      return asked.ok ? enterGuest(actor, asked.value) : asked
    },
    () => `${String(form.get('firstName'))} ${String(form.get('familyName'))} is entered as a guest.`,
  )
}
