'use server'

import type { ActState } from '@/app/desk/_form/act-state'
import { answer } from '@/app/desk/_form/answer'
import { copyBook } from '@/lib/society/keep-copies'

export async function copyTheBook(society: string, before: ActState, form: FormData): Promise<ActState> {
  return answer(
    before,
    form,
    society,
    (actor) => copyBook(actor),
    () => 'A copy is made and checked. It stays on the server.',
  )
}
