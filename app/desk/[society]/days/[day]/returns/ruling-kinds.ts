// The rulings a committee may give, in the words of the form: what it does to the card, and the clause offered.

import type { RulingKind } from '@/lib/facts/day-record'

export interface KindOfRuling {
  readonly kind: RulingKind
  readonly label: string
  readonly consequence: string
  readonly clause: string
  readonly needs: readonly ('hole' | 'value' | 'index' | 'replaces')[]
  readonly valueLabel?: string
  readonly valueHint?: string
  /** Takes the player out of the standings: set in the danger tone. */
  readonly grave?: boolean
}

/** A side on one ball has one handicap; anybody else's own counts in each competition by its allowance. */
export const fitsCard = (kind: RulingKind, isSide: boolean) =>
  isSide ? kind !== 'handicap-index' && kind !== 'course-handicap' : kind !== 'playing-handicap'

export const KINDS_OF_RULING: readonly KindOfRuling[] = [
  {
    kind: 'hole-score',
    label: 'The score on a hole',
    consequence: 'This figure counts on the hole. Everything that was written stays beside it.',
    clause: 'Rules of Golf 3.3b',
    needs: ['hole', 'value'],
    valueLabel: 'Gross strokes that count',
    valueHint: 'Leave empty for no score.',
  },
  {
    kind: 'penalty-strokes',
    label: 'Penalty strokes',
    consequence: 'Added to the gross on the hole. Use it when the strokes written leave the penalty out.',
    clause: 'Rules of Golf 1.3c',
    needs: ['hole', 'value'],
    valueLabel: 'Strokes to add',
    valueHint: 'The general penalty is 2.',
  },
  {
    kind: 'penalty-points',
    label: 'Points off the total',
    consequence: 'Taken off the points in Stableford, off the holes up in par.',
    clause: 'Rules of Golf 21.1',
    needs: ['value'],
    valueLabel: 'Points to take off',
  },
  {
    kind: 'handicap-index',
    label: 'The handicap index',
    consequence: 'This index counts, and every competition is counted again by its own allowance.',
    clause: 'Rules of Golf 3.3b(4)',
    needs: ['index'],
    valueLabel: 'Handicap index that counts',
    valueHint: 'Write 12.6, or +2.1 for a plus handicap.',
  },
  {
    kind: 'course-handicap',
    label: 'The course handicap',
    consequence: 'This course handicap counts, and every competition is counted again by its own allowance.',
    clause: 'Rules of Golf 3.3b(4)',
    needs: ['value'],
    valueLabel: 'Course handicap that counts',
    valueHint: 'Plus two is written -2.',
  },
  {
    kind: 'playing-handicap',
    label: 'The playing handicap of the side',
    consequence: 'This playing handicap counts for the side, in every competition of the day.',
    clause: 'Rules of Golf 3.3b(4)',
    needs: ['value'],
    valueLabel: 'Playing handicap that counts',
    valueHint: 'Plus two is written -2.',
  },
  {
    kind: 'card-stands',
    label: 'The card stands',
    consequence:
      'Accepted as it is, although it is unsigned, late or otherwise not in order. It counts for a partner or a team too.',
    clause: 'Rules of Golf 3.3b(2), committee decision',
    needs: [],
  },
  {
    kind: 'no-return',
    label: 'No return',
    consequence: 'The card was not returned: no place, and it does not count for a partner or a team.',
    clause: 'Rules of Golf 3.3b(2)',
    needs: [],
    grave: true,
  },
  {
    kind: 'disqualified',
    label: 'Disqualified',
    consequence: 'The player has no place and wins no prize. The card is kept.',
    clause: 'Rules of Golf 3.3b(3)',
    needs: [],
    grave: true,
  },
  {
    kind: 'withdrawn',
    label: 'Withdrawn',
    consequence: 'The player stopped during the round and has no place.',
    clause: 'Rules of Golf 5.3, 5.7a',
    needs: [],
    grave: true,
  },
  {
    kind: 'withdrawn-ruling',
    label: 'Take an earlier ruling back',
    consequence: 'The earlier ruling counts no longer. It stays in the list with this reason.',
    clause: '',
    needs: ['replaces'],
  },
]
