// Every rule the engine knows, with its clause, its edition, whether it is done, and where we depart from it. The docs
// and the page "How we count" print this list; a rule without cases fails the build.

export interface RegisteredRule {
  readonly id: string
  readonly name: string
  readonly clause: string
  readonly edition: string
  readonly status: 'done' | 'not-done'
  /** Where we differ from the clause, or choose where it leaves a choice; empty when we do not. */
  readonly departures: readonly string[]
  /** File of the rule, from the root of the project. */
  readonly file: string
}

const ROH = 'Rules of Handicapping 2024'
const ROG = 'Rules of Golf 2023'
const CUSTOM = 'Society custom, not published'

export const REGISTER: readonly RegisteredRule[] = [
  {
    id: 'course-handicap',
    name: 'Course handicap, 18 and 9 holes',
    clause: '6.1a, 6.1b',
    edition: `${ROH}; 2020 and 2020 in Great Britain and Ireland`,
    status: 'done',
    departures: ['A nine is entered as a tee of its own with the ratings of that nine.'],
    file: 'lib/rules/handicap/course-handicap.ts',
  },
  {
    id: 'playing-handicap',
    name: 'Playing handicap',
    clause: '6.2a',
    edition: `${ROH}; 2020 and 2020 in Great Britain and Ireland`,
    status: 'done',
    departures: [],
    file: 'lib/rules/handicap/playing-handicap.ts',
  },
  {
    id: 'par-difference',
    name: 'Difference in par between tees',
    clause: '6.2b',
    edition: ROH,
    status: 'done',
    departures: [
      'Under the 2020 edition of Great Britain and Ireland the same difference is given; the correction by course rating then in use is set by hand.',
      'A playing handicap set by hand is final and gets no difference.',
    ],
    file: 'lib/rules/handicap/par-difference.ts',
  },
  {
    id: 'side-handicap',
    name: 'Handicap of a side with one ball',
    clause: 'Appendix C',
    edition: ROH,
    status: 'done',
    departures: [
      'Where partners play from different tees, the committee names the tees whose card the side plays to; where it names none, those with the lowest par of its players, of equal par those with the lower course rating: a house rule.',
    ],
    file: 'lib/rules/handicap/side-handicap.ts',
  },
  {
    id: 'allowances',
    name: 'Handicap allowances',
    clause: 'Appendix C, C/1',
    edition: ROH,
    status: 'done',
    departures: ['The 2020 figures are from memory.', 'The field of fewer than 30 is from a club’s copy of C/1.'],
    file: 'lib/rules/editions/allowances.ts',
  },
  {
    id: 'match-strokes',
    name: 'Strokes in a match',
    clause: 'Appendix C',
    edition: ROH,
    status: 'done',
    departures: [
      'Between sides the difference is taken before the allowance since 2024, between players from rounded handicaps; the terms may say otherwise.',
    ],
    file: 'lib/rules/handicap/match-strokes.ts',
  },
  {
    id: 'strokes-on-holes',
    name: 'Strokes by stroke index',
    clause: 'Appendix E',
    edition: ROH,
    status: 'done',
    departures: ['Below plus 18 the giving back begins again at the highest index; no source says so.'],
    file: 'lib/rules/strokes/strokes-on-holes.ts',
  },
  {
    id: 'value-on-hole',
    name: 'Net score, points, maximum, against par',
    clause: '3.1c, 21.1b, 21.2b, 21.3b',
    edition: ROG,
    status: 'done',
    departures: [],
    file: 'lib/rules/values/value-on-hole.ts',
  },
  {
    id: 'count-on-hole',
    name: 'Which scores of a side count',
    clause: '23.2',
    edition: ROG,
    status: 'done',
    departures: ['While partners are still out, a hole counts as soon as enough scores are in.'],
    file: 'lib/rules/count/count-on-hole.ts',
  },
  {
    id: 'places',
    name: 'Places',
    clause: '3.3, 21, 23',
    edition: ROG,
    status: 'done',
    departures: ['Cards still out on strokes are ranked against level par.'],
    file: 'lib/rules/score/rank.ts',
  },
  {
    id: 'countback',
    name: 'Ties: countback, handicap, lot, play-off',
    clause: 'Committee Procedures 5A(6)',
    edition: 'Committee Procedures 2023',
    status: 'done',
    departures: [
      'Fractions of the handicap are kept unless the terms round them.',
      'A round of nine holes drops the windows that are the whole round.',
    ],
    file: 'lib/rules/ties/break-ties.ts',
  },
  {
    id: 'match',
    name: 'Match play',
    clause: '3.2, 23.2a',
    edition: ROG,
    status: 'done',
    departures: ['When no ball of either side is holed, the hole is halved; who picked up last is not asked.'],
    file: 'lib/rules/matches/play-match.ts',
  },
  {
    id: 'match-endings',
    name: 'Matches conceded, given by walkover, abandoned, on extra holes',
    clause: '3.2a, 3.2b, 1.3c',
    edition: ROG,
    status: 'done',
    departures: ['Extra holes of a four-ball are written as the better net score.'],
    file: 'lib/rules/matches/match-endings.ts',
  },
  {
    id: 'match-parts',
    name: 'Match in parts given up, by walkover, abandoned',
    clause: 'Society custom; 3.2b(1), 1.3c',
    edition: CUSTOM,
    status: 'done',
    departures: [
      'A part that was decided before the match was given up stands, the others go with the match.',
      'A walkover and a disqualification take every part; extra holes decide the whole only.',
    ],
    file: 'lib/rules/matches/match-parts.ts',
  },
  {
    id: 'team-match',
    name: 'Match between teams, one point and a half',
    clause: 'Society custom',
    edition: CUSTOM,
    status: 'done',
    departures: [],
    file: 'lib/rules/matches/team-match.ts',
  },
  {
    id: 'handicap-limit',
    name: 'Handicap limit, divided handicaps, figures set by hand',
    clause: '7.2',
    edition: ROH,
    status: 'done',
    departures: [
      'The limit is put on the playing handicap; where a side plays one ball, on each player’s course handicap.',
    ],
    file: 'lib/rules/score/handicap-of-ball.ts',
  },
  {
    id: 'short-sides',
    name: 'Sides short of a player: ghost, the best again, drawn by lot',
    clause: 'Society custom',
    edition: CUSTOM,
    status: 'done',
    departures: [],
    file: 'lib/rules/score/short-sides.ts',
  },
  {
    id: 'shared-holes',
    name: 'Skins and split sixes',
    clause: 'Society custom',
    edition: CUSTOM,
    status: 'done',
    departures: [
      'A hole is shared out once everybody in the group has finished it.',
      'A tied hole is carried to the next in the order of play; a hole that does not count carries nothing.',
    ],
    file: 'lib/rules/score/shared-holes.ts',
  },
  {
    id: 'rounds',
    name: 'Several rounds added up',
    clause: 'Committee Procedures 5A(6)',
    edition: 'Committee Procedures 2023',
    status: 'done',
    departures: [
      'A handicap shown for several rounds is that of the last.',
      'Whoever missed a round has no total on strokes, and on points that of the rounds played.',
    ],
    file: 'lib/rules/score/rounds.ts',
  },
  {
    id: 'divisions',
    name: 'Divisions by handicap, gender, guests, group',
    clause: 'Society custom',
    edition: CUSTOM,
    status: 'done',
    departures: [],
    file: 'lib/rules/score/divisions.ts',
  },
  {
    id: 'field-divisions',
    name: 'Divisions proposed by the size of the field',
    clause: 'Society custom',
    edition: CUSTOM,
    status: 'done',
    departures: ['The limits are put where they make the divisions about equal; the terms have the last word.'],
    file: 'lib/rules/score/field-divisions.ts',
  },
  {
    id: 'card-readings',
    name: 'Any card under any format, any two or four as a match',
    clause: '3.2, 3.3, 21 to 23',
    edition: ROG,
    status: 'done',
    departures: ['A single card is read in the field of its day; a side put together for the occasion stands alone.'],
    file: 'lib/rules/readings/read-card-as.ts',
  },
  {
    id: 'net-double-bogey',
    name: 'Net double bogey',
    clause: '3.1',
    edition: ROH,
    status: 'done',
    departures: ['A hole not played is left open: the expected score of 2024 is not published.'],
    file: 'lib/rules/handicap/net-double-bogey.ts',
  },
  {
    id: 'rulings-on-cards',
    name: 'Rulings on cards',
    clause: '3.2c, 3.3b, 21, 23.2b',
    edition: ROG,
    status: 'done',
    departures: ['The numbers of the sub-clauses of 3.3b and the penalty of Model Local Rule L-1 are from memory.'],
    file: 'lib/rules/rulings/rulings-on-cards.ts',
  },
  {
    id: 'custom-format',
    name: 'A format of the society’s own, read back as a sentence',
    clause: 'Society custom',
    edition: CUSTOM,
    status: 'done',
    departures: [],
    file: 'lib/rules/formats/read-back.ts',
  },
  {
    id: 'first-place',
    name: 'What first place still hangs on: best and worst score, possible, certain',
    clause: 'Arithmetic of the format, no source; ties by Committee Procedures 5A(6)',
    edition: 'None',
    status: 'done',
    departures: [
      'Possible means by the Rules: the best on a hole is a hole in one, the worst no score.',
      'Cards count as they stand: no ruling, penalty or withdrawal from here.',
      'Skins, split sixes, a named ball and a card drawn by lot have no bounds, and none are given.',
    ],
    file: 'lib/rules/insight/first-place.ts',
  },
  {
    id: 'needed',
    name: 'What is needed on the holes left to tie or to win',
    clause: 'Arithmetic of the format, no source; ties by Committee Procedures 5A(6)',
    edition: 'None',
    status: 'done',
    departures: [
      'A card still out is caught as it stands now, on strokes against level par, and without a countback.',
      'Not given for several rounds added up, nor for a side whose lowest score counts again.',
    ],
    file: 'lib/rules/insight/needed.ts',
  },
  {
    id: 'match-chances',
    name: 'What a match still hangs on: dormie, holes needed, won',
    clause: '3.2a',
    edition: ROG,
    status: 'done',
    departures: [
      'Extra holes are left out: level after the round is halved.',
      'Nothing is said of the parts of a match in parts.',
    ],
    file: 'lib/rules/insight/match-chances.ts',
  },
]
