'use server'

import type { ActState } from '@/app/desk/_form/act-state'
import { answer } from '@/app/desk/_form/answer'
import { keepPrivacy } from '@/lib/society/keep-privacy'

const text = (form: FormData, name: string) => String(form.get(name) ?? '').trim()
/** Anything but a whole number is left as it is, for the schema to refuse with its sentence. */
const days = (form: FormData, name: string) =>
  /^\d{1,5}$/.test(text(form, name)) ? Number(text(form, name)) : text(form, name)

export async function keepChoices(society: string, before: ActState, form: FormData): Promise<ActState> {
  const state = await answer(
    before,
    form,
    society,
    (actor) =>
      keepPrivacy(actor, {
        retention: {
          leaversContact: days(form, 'leaversContact'),
          leaversPage: days(form, 'leaversPage'),
          guestsContact: days(form, 'guestsContact'),
          guestsNames: text(form, 'guestsNames') === '' ? null : days(form, 'guestsNames'),
        },
        leaversShownAs: form.get('leaversShownAs'),
        juniorsShownAs: form.get('juniorsShownAs'),
        searchEngines: form.get('searchEngines') === 'yes',
        privacyContact: text(form, 'privacyContact'),
        noticeMore: text(form, 'noticeMore'),
      }),
    () => 'Kept. The notice says so already.',
  )
  if (!state.refused) return state
  // The fields stand in the form without the part they belong to.
  const faults = state.refused.faults.map((fault) => ({ ...fault, place: fault.place.replace(/^retention\./, '') }))
  return { ...state, refused: { ...state.refused, faults } }
}
