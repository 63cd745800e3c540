'use server'

import type { ActState } from '@/app/desk/_form/act-state'
import { answerForDay, type DayAddress, dayOfForm } from '@/app/desk/_form/answer-for-day'
import { idIn } from '@/app/desk/_form/form-ids'
import { count, list } from '@/app/desk/_frame/words'
import {
  changeHost as changeHostSchema,
  enterGuest as enterGuestSchema,
  enterKnownGuest as enterKnownGuestSchema,
  enterPlayers as enterPlayersSchema,
} from '@/lib/facts/commands'
import type { EntryId, PersonId, RoundTeeId } from '@/lib/facts/ids'
import { changeHost } from '@/lib/society/change-host'
import { enterGuest, enterKnownGuest } from '@/lib/society/enter-guest'
import { enterPlayers } from '@/lib/society/enter-players'
import type { Entered } from '@/lib/society/entry-list'
import { parseInput } from '@/lib/society/parse-input'
import { readFigure } from '../../../_figures/read-figure'

/** The ticks of the list: who is ticked now and was not in is entered, who was in and is not ticked withdraws. */
export async function keepEntries(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  const ticked = form.getAll('enter').map((id) => String(id) as PersonId)
  const entryOf = new Map(
    form.getAll('was').map((line) => {
      const [personId = '', entryId = ''] = String(line).split(' ')
      return [personId as PersonId, entryId as EntryId]
    }),
  )
  // Offered where somebody has no tee: the others are entered, and those stay ticked on the screen.
  const without = String(form.get('without') ?? '').split(' ')
  const enter = ticked.filter((personId) => !without.includes(personId))
  const tee = (personId: PersonId) => idIn<RoundTeeId>(form, `tee-${personId}`) || null
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const asked = parseInput(enterPlayersSchema, {
        ...dayOfForm(form),
        enter: enter.map((personId) => ({ personId, roundTeeId: tee(personId) })),
        withdraw: [...entryOf].filter(([personId]) => !ticked.includes(personId)).map(([, entryId]) => entryId),
      })
      return asked.ok ? enterPlayers(actor, asked.value) : asked
    },
    saidOf,
  )
}

/** The way back after a withdrawal. */
export async function enterAgain(
  where: DayAddress,
  personId: PersonId,
  before: ActState,
  form: FormData,
): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    (actor) => enterPlayers(actor, { ...dayOfForm(form), enter: [{ personId }] }),
    saidOf,
  )
}

export async function addGuest(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const figure = readFigure(String(form.get('claimedTenths') ?? ''), 'claimedTenths')
      if (!figure.ok) return figure
      const asked = parseInput(enterGuestSchema, {
        ...dayOfForm(form),
        hostId: form.get('hostId') ?? '',
        firstName: form.get('firstName'),
        familyName: form.get('familyName'),
        knownAs: form.get('knownAs') ?? '',
        namesake: form.get('namesake'),
        gender: form.get('gender') ?? 'men',
        claimedTenths: figure.value,
      })
      return asked.ok ? enterGuest(actor, asked.value) : asked
    },
    guestSaid,
  )
}

export async function addKnownGuest(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const written = String(form.get('claimedTenths') ?? '').trim()
      const figure = written === '' ? null : readFigure(written, 'claimedTenths')
      if (figure && !figure.ok) return figure
      const asked = parseInput(enterKnownGuestSchema, {
        ...dayOfForm(form),
        hostId: form.get('hostId') ?? '',
        personId: form.get('personId') ?? '',
        claimedTenths: figure ? figure.value : null,
      })
      return asked.ok ? enterKnownGuest(actor, asked.value) : asked
    },
    guestSaid,
  )
}

export async function changeTheHost(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const asked = parseInput(changeHostSchema, {
        ...dayOfForm(form),
        entryId: form.get('entryId'),
        hostId: form.get('hostId') ?? '',
      })
      return asked.ok ? changeHost(actor, asked.value) : asked
    },
    ({ guest, host }) => `${guest} is now the guest of ${host}.`,
  )
}

function saidOf({ entered, withdrawn, waiting, movedUp }: Omit<Entered, 'version'>): string {
  const parts = [
    ...(entered > 0 ? [`${count(entered, 'player')} entered.`] : []),
    ...(withdrawn.length > 0 ? [`${list(withdrawn)} ${withdrawn.length === 1 ? 'is' : 'are'} withdrawn.`] : []),
    ...(movedUp.length > 0 ? [`${list(movedUp)} moved up from the waiting list.`] : []),
    ...(waiting.length > 0
      ? [`The places are full: ${list(waiting)} ${waiting.length === 1 ? 'is' : 'are'} on the waiting list.`]
      : []),
  ]
  return parts.length > 0 ? `Saved. ${parts.join(' ')}` : 'Saved.'
}

const guestSaid = ({ name, waiting }: { name: string; waiting: readonly string[] }) =>
  waiting.length > 0
    ? `The places are full: ${name} is on the waiting list, as a guest.`
    : `${name} is entered as a guest.`
