'use server'

import type { ActState } from '@/app/desk/_form/act-state'
import { answer } from '@/app/desk/_form/answer'
import type { PersonId } from '@/lib/facts/ids'
import { erasePerson as eraseSchema } from '@/lib/facts/privacy-commands'
import { erasePerson } from '@/lib/society/leave-society'
import { endPageKey, renewPageKey } from '@/lib/society/page-key'
import { parseInput } from '@/lib/society/parse-input'

export async function renewLink(
  society: string,
  personId: PersonId,
  before: ActState,
  form: FormData,
): Promise<ActState> {
  return answer(
    before,
    form,
    society,
    (actor) => renewPageKey(actor, { personId }),
    () => 'The link above is new; the old one has ended. Hand it over.',
  )
}

export async function endLink(
  society: string,
  personId: PersonId,
  before: ActState,
  form: FormData,
): Promise<ActState> {
  return answer(
    before,
    form,
    society,
    (actor) => endPageKey(actor, { personId }),
    () => 'The link has ended.',
  )
}

export async function erase(society: string, personId: PersonId, before: ActState, form: FormData): Promise<ActState> {
  return answer(
    before,
    form,
    society,
    async (actor) => {
      const asked = parseInput(eraseSchema, { personId, shownAs: form.get('shownAs') })
      return asked.ok ? erasePerson(actor, asked.value) : asked
    },
    () => 'Done, with its line in the record.',
  )
}
