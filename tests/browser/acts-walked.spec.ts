// Promise: there is no act without its walk. Every form of the build has been sent by a story from the screen it stands on
// and was accepted, the phone's facts too, and every act of the table is among them. Runs when all the stories have ended.

import { ACTS, type Act } from '@/lib/society/acts'
import { builtActions } from '../safety/http/client'
import { ACTIONS } from '../safety/http/rows'
import { expect, test, walkedSoFar } from './walk'

/** Acts without a form of the desk's own: the fact of the phone, the form, or the address by which a story does them. */
const OTHERWISE: Partial<Readonly<Record<Act, { fact?: string; form?: string; page?: RegExp }>>> = {
  'read-desk': { page: /^\/desk\/[^/]+$/ },
  'read-record': { page: /^\/desk\/[^/]+\/record$/ },
  'read-group': { page: /^\/card\/[^/]+$/ },
  'read-own-page': { page: /^\/member\/[^/]+$/ },
  'read-board': { page: /^\/[^/]+\/days\/[^/]+$/ },
  'take-export': { page: /^\/desk\/[^/]+\/book\/(copy|export)/ },
  'enter-score': { fact: 'score' },
  'sign-card': { fact: 'signature' },
  'keep-account': { form: 'newPassword' },
  'correct-own-details': { form: 'correct' },
  'leave-society': { form: 'leave' },
}

test('every form of the build, and every act, is walked from its screen by a story', () => {
  const walked = walkedSoFar()
  const sent = new Set(walked.filter((one) => one.what === 'action').map((one) => one.name))
  const built = builtActions()
  const forms = built.filter((action) => sent.has(action.id))
  expect
    .soft(
      built.filter((action) => !sent.has(action.id)).map((action) => `${action.name} of ${action.file}`),
      'forms that no story has sent',
    )
    .toEqual([])

  const done = (act: Act): boolean => {
    const { fact, form, page } = OTHERWISE[act] ?? {}
    if (fact) return walked.some((one) => one.what === 'fact' && one.name === fact)
    if (form) return forms.some((action) => action.name === form)
    if (page) return walked.some((one) => one.what === 'page' && page.test(one.name))
    return ACTIONS.some((row) => row.act === act && forms.some((action) => action.name === row.action))
  }
  const acts = Object.keys(ACTS) as Act[]
  expect
    .soft(
      acts.filter((act) => !done(act)),
      'acts that no story has done',
    )
    .toEqual([])
})
