// Rules of Golf 2023, 3.3b (scorecard), 3.2c (handicap in a match), 21.1 to 21.3 (other forms), 23.2 (four-ball), Model
// Local Rules L-1 and L-2: what may be wrong with a card and what follows. Data; the desk shows the choices.

import type { CardFault, CardRuling, Consequence, RulingChoice } from './ruling'

const choice = (
  id: string,
  name: string,
  consequence: Consequence,
  sentence: string,
  clause: string,
  isDefault = false,
): RulingChoice => ({ id, name, consequence, sentence, clause, isDefault })

const OWN = choice(
  'committee',
  'The committee’s own decision',
  { kind: 'committee' },
  'The committee decides otherwise and writes down why.',
  'Committee decision',
)

const LOWER_CLAUSE = 'Rules of Golf 3.3b(3)'
const L1 = 'Model Local Rule L-1'

export const RULINGS_ON_CARDS: readonly CardRuling[] = [
  {
    fault: 'score-higher',
    name: 'A score higher than it was',
    sentence: 'The card shows more strokes on a hole than were made.',
    choices: [
      choice('stands', 'The higher score stands', { kind: 'stands' }, 'What was handed in counts.', LOWER_CLAUSE, true),
      OWN,
    ],
  },
  {
    fault: 'score-lower',
    name: 'A score lower than it was',
    sentence: 'The card shows fewer strokes on a hole than were made.',
    choices: [
      choice(
        'disqualify',
        'Disqualify the card',
        { kind: 'disqualified' },
        'The card has no place.',
        LOWER_CLAUSE,
        true,
      ),
      choice(
        'no-effect',
        'No penalty: the hole comes out the same',
        { kind: 'no-effect' },
        'Where points, a maximum or holes up are counted, a score too low that changes nothing on the hole costs nothing.',
        'Rules of Golf 21.1b(2), 21.2b(2), 21.3b(2), exception',
      ),
      OWN,
    ],
  },
  {
    fault: 'score-lower-unknown-penalty',
    name: 'A penalty the player did not know of',
    sentence: 'The score is lower only because of penalty strokes the player did not know of when handing in.',
    choices: [
      choice(
        'add-penalty',
        'Add the penalty strokes',
        { kind: 'penalty-strokes', strokes: 2 },
        'The strokes are added to the hole and the card stands, when found before the competition is closed.',
        'Rules of Golf 3.3b(3), exception',
        true,
      ),
      OWN,
    ],
  },
  {
    fault: 'hole-missing',
    name: 'A hole without a score',
    sentence: 'The card was handed in with a hole blank.',
    choices: [
      choice(
        'no-return',
        'No score on the hole',
        { kind: 'no-score-on-hole' },
        'No points, a lost hole or the maximum; the card stands. Where every stroke counts it has no place.',
        'Rules of Golf 21.1b, 21.2b, 21.3b',
        true,
      ),
      choice(
        'disqualify',
        'Disqualify the card',
        { kind: 'disqualified' },
        'Where every stroke counts, a card without a score on every hole has no place.',
        LOWER_CLAUSE,
      ),
      OWN,
    ],
  },
  {
    fault: 'not-signed',
    name: 'Not signed',
    sentence: 'Player or marker has not certified the scores.',
    choices: [
      choice(
        'disqualify',
        'Disqualify the card',
        { kind: 'disqualified' },
        'The card has no place.',
        'Rules of Golf 3.3b(2)',
        true,
      ),
      choice(
        'two-strokes',
        'Two penalty strokes',
        { kind: 'penalty-strokes', strokes: 2 },
        'Where the local rule is in force: two strokes on the last hole, and the card stands.',
        L1,
      ),
      OWN,
    ],
  },
  {
    fault: 'wrong-total',
    name: 'Wrongly added up',
    sentence: 'The total or the points on the card are wrong.',
    choices: [
      choice(
        'correct',
        'Add it up again',
        { kind: 'corrected' },
        'Adding up is the committee’s: no penalty.',
        'Rules of Golf 3.3b(4)',
        true,
      ),
      OWN,
    ],
  },
  {
    fault: 'handicap-wrong',
    name: 'Wrong handicap on the card',
    sentence: 'The card shows another handicap than the player’s own, or none.',
    choices: [
      choice(
        'right-handicap',
        'Count with the right handicap',
        { kind: 'right-handicap' },
        'The handicap is the committee’s: no penalty. The right one counts in every competition, by its own allowance.',
        'Rules of Golf 3.3b(4)',
        true,
      ),
      choice(
        'disqualify',
        'Disqualify the card',
        { kind: 'disqualified' },
        'Only where the local rule makes players answer for their handicap, and only for one too high that changed the strokes received.',
        'Model Local Rule L-2',
      ),
      choice(
        'lower-stands',
        'The lower one stands',
        { kind: 'lower-handicap' },
        'Only where that local rule is in force and the handicap on the card is too low: it counts as shown, without penalty.',
        'Model Local Rule L-2',
      ),
      OWN,
    ],
  },
  {
    fault: 'handicap-too-high-in-match',
    name: 'Too high a handicap in a match',
    sentence: 'A player named a handicap that was too high, and it changed who had strokes.',
    choices: [
      choice(
        'disqualify',
        'Out of the match',
        { kind: 'disqualified' },
        'The opponent wins.',
        'Rules of Golf 3.2c(1)',
        true,
      ),
      OWN,
    ],
  },
  {
    fault: 'handicap-too-low-in-match',
    name: 'Too low a handicap in a match',
    sentence: 'A player named a handicap that was too low.',
    choices: [
      choice(
        'lower-handicap',
        'It counts as named',
        { kind: 'lower-handicap' },
        'The match is played off the lower figure.',
        'Rules of Golf 3.2c(1)',
        true,
      ),
      OWN,
    ],
  },
  {
    fault: 'side-score-not-identified',
    name: 'Whose score is not shown',
    sentence: 'A score of a four-ball card does not say which partner made it.',
    choices: [
      choice(
        'side-disqualified',
        'Disqualify the side',
        { kind: 'side-disqualified' },
        'The side has no place.',
        'Rules of Golf 23.2b',
        true,
      ),
      OWN,
    ],
  },
  {
    fault: 'one-partner-only',
    name: 'Only one partner’s score',
    sentence: 'A hole of a four-ball card has a score for one partner only.',
    choices: [
      choice(
        'stands',
        'That score counts',
        { kind: 'stands' },
        'One score a hole is enough.',
        'Rules of Golf 23.2b',
        true,
      ),
      OWN,
    ],
  },
  {
    fault: 'handed-in-late',
    name: 'Not handed in, or too late',
    sentence: 'The card did not come in when the terms say it must.',
    choices: [
      choice(
        'no-return',
        'No return',
        { kind: 'no-return' },
        'The card has no place, and does not count for a partner or a team either.',
        'Rules of Golf 3.3b(2), 23.2b',
        true,
      ),
      OWN,
    ],
  },
  {
    fault: 'started-late',
    name: 'Started late',
    sentence: 'The player was not ready at the time of starting, or joined the group during the round.',
    choices: [
      choice(
        'two-strokes',
        'Two penalty strokes on the first hole',
        { kind: 'penalty-strokes', strokes: 2 },
        'Ready to play within five minutes of the time: the general penalty on the first hole.',
        'Rules of Golf 5.3a, exception 1',
        true,
      ),
      choice(
        'disqualify',
        'Disqualify the card',
        { kind: 'disqualified' },
        'More than five minutes late: the card has no place.',
        'Rules of Golf 5.3a',
      ),
      choice(
        'no-score-before',
        'No score on the holes missed',
        { kind: 'no-score-before' },
        'The society lets the player join in: nothing counts on the holes before that, and the rest of the card stands.',
        'Committee decision',
      ),
      OWN,
    ],
  },
  {
    fault: 'two-cards',
    name: 'Two cards for one player',
    sentence: 'Two versions of the card came in, and they differ.',
    choices: [
      choice(
        'certified',
        'The certified one counts as a whole',
        { kind: 'one-version' },
        'Every hole on which they differ counts as that version has it; the other stays beside it.',
        'Rules of Golf 3.3b(2)',
        true,
      ),
      OWN,
    ],
  },
]

export function rulingOn(fault: CardFault): CardRuling {
  return RULINGS_ON_CARDS.find((one) => one.fault === fault)!
}

/** What the Rules say where the committee does not say otherwise. */
export function defaultChoice(fault: CardFault): RulingChoice {
  return rulingOn(fault).choices.find((one) => one.isDefault)!
}
