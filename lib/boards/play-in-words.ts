// Rules of Golf 2023, Rule 5.7a-c and Committee Procedures 6E(3): what a suspension means, the signals, and the caution
// that goes with them. One text for card, board, bar and desk.

import type { PlayNow, PlayStopKind } from '@/lib/facts/play-stop'
import { timeInWords } from './dates-in-words'

export interface PlayWords {
  /** For a heading. */
  readonly title: string
  /** What a player does now. */
  readonly orders: readonly string[]
  readonly clause: string
}

export const PLAY_WORDS: Readonly<Record<PlayStopKind, PlayWords>> = {
  'stop-at-once': {
    title: 'Stop play at once',
    orders: [
      'Make no further stroke until play is resumed.',
      'Mark your ball and lift it, or leave it where it lies.',
      'In lightning seek shelter now. Do not wait for a phone to tell you.',
    ],
    clause: 'Rules of Golf 5.7b(1)',
  },
  'stop-after-hole': {
    title: 'Stop when the hole is finished',
    orders: [
      'Between two holes: start no other hole.',
      'During a hole: stop now, or finish the hole and then stop. Decide within two minutes.',
      'Go on only while your marker stays to mark your card.',
    ],
    clause: 'Rules of Golf 5.7b(2)',
  },
  resume: {
    title: 'Play is resumed',
    orders: ['Be at your ball when play is resumed, and go on from where you stopped.'],
    clause: 'Rules of Golf 5.7c',
  },
}

export const PLAY_SIGNALS: readonly {
  readonly signal: string
  readonly meaning: string
  readonly kind: PlayStopKind
}[] = [
  { signal: 'one prolonged note', meaning: 'stop at once', kind: 'stop-at-once' },
  { signal: 'three consecutive notes, repeatedly', meaning: 'stop', kind: 'stop-after-hole' },
  { signal: 'two short notes, repeatedly', meaning: 'play on', kind: 'resume' },
]
export const SIGNALS_FROM = 'Rules of Golf 2023, Committee Procedures 6E(3)'

/** Nobody may rely on a screen. */
export const PLAY_CAUTION = [
  'The course’s own warning decides: a siren there counts although nothing stands here, and phones may have no signal.',
  'Any player may stop for lightning without asking (Rule 5.7a).',
  'Play on only when the course says so.',
] as const

/** "Play is stopped at once since 12.53 pm: lightning." */
export function playSentence(play: PlayNow, zone: string): string {
  const at = timeInWords(play.toldAt, zone)
  const why = play.reason.replace(/[.\s]+$/, '')
  if (play.kind === 'resume') return `Play was resumed at ${at}: ${why}.`
  const how = play.kind === 'stop-at-once' ? 'stopped at once' : 'stopped, each group when its hole is finished,'
  return `Play is ${how} since ${at}: ${why}.`
}
