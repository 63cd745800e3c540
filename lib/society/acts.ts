// One table: which duty may do which act. A use case asks it first; a test walks every act and every duty.

import type { Actor, Duty } from '@/lib/facts/actor'
import { dutiesOf } from '@/lib/facts/actor'
import { type Refused, refused } from '@/lib/result'

const DESK = ['secretary', 'captain'] as const

export const ACTS = {
  'read-desk': ['secretary', 'captain', 'handicap-secretary', 'treasurer', 'committee'],
  'read-record': ['secretary', 'captain', 'handicap-secretary', 'treasurer', 'committee'],
  'give-duty': DESK,
  'end-duty': DESK,
  'end-sessions': ['secretary'],
  'keep-account': ['secretary', 'captain', 'handicap-secretary', 'treasurer', 'committee'],
  'open-season': DESK,
  'keep-course': DESK,
  'delete-course': DESK,
  'keep-people': ['secretary', 'captain', 'handicap-secretary'],
  'delete-person': DESK,
  'call-day': DESK,
  'change-day': DESK,
  'call-off-day': DESK,
  'put-day-on': DESK,
  'delete-day': DESK,
  'play-day-ahead': DESK,
  'enter-player': DESK,
  'freeze-handicaps': ['secretary', 'captain', 'handicap-secretary'],
  'unfreeze-handicaps': ['secretary', 'captain', 'handicap-secretary'],
  'refreeze-handicaps': ['secretary', 'captain', 'handicap-secretary'],
  'change-handicap': ['handicap-secretary', 'secretary'],
  'make-draw': DESK,
  'arrange-sides': DESK,
  'arrange-pairings': DESK,
  'arrange-teams': DESK,
  'end-match': ['secretary', 'captain', 'committee'],
  'publish-start': DESK,
  'renew-group-link': DESK,
  'enter-score': ['scorer', ...DESK],
  'sign-card': ['scorer'],
  'take-card-in': DESK,
  'reopen-card': DESK,
  'rule-on-card': ['secretary', 'captain', 'committee'],
  'stop-play': ['secretary', 'captain', 'committee'],
  'resume-play': ['secretary', 'captain', 'committee'],
  'allow-on-board': ['secretary', 'captain', 'committee'],
  'rule-on-day': ['secretary', 'captain', 'committee'],
  'close-day': DESK,
  'reopen-day': DESK,
  'publish-result': DESK,
  'keep-copies': DESK,
  'take-export': DESK,
  'read-group': ['scorer', ...DESK],
  'read-own-page': ['member'],
  'renew-page-key': ['member', 'secretary', 'captain', 'handicap-secretary'],
  'end-page-key': ['secretary', 'captain', 'handicap-secretary'],
  'correct-own-details': ['member'],
  'leave-society': ['member', 'secretary', 'captain'],
  'erase-person': ['secretary', 'captain'],
  'keep-privacy': DESK,
  'read-board': [
    'anybody',
    'member',
    'guest',
    'scorer',
    'secretary',
    'captain',
    'handicap-secretary',
    'treasurer',
    'committee',
  ],
} as const satisfies Record<string, readonly Duty[]>

export type Act = keyof typeof ACTS

/** What no duty does: the server itself, or whoever holds a one-time link. They stand in the record of acts all the same. */
export const ACTS_WITHOUT_DUTY = ['found-society', 'set-first-password', 'carry-out-retention'] as const

/** Null when the actor may; otherwise the refusal to hand back. */
export function mayNot(actor: Actor, act: Act): Refused<'not-allowed'> | null {
  const allowed: readonly Duty[] = ACTS[act]
  if (dutiesOf(actor).some((duty) => allowed.includes(duty))) return null
  return refused(
    'not-allowed',
    `That is for the ${allowed[0]?.replace('-', ' ') ?? 'officers'}. Ask one of the officers to do it.`,
  )
}
