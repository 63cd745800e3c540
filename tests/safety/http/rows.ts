// Which act is asked for by which address or form, with a form that is understood. `own` is the asker's society; `of` is
// whose day, card or person the form names: the asker's own, or another society's.
import type { Act } from '@/lib/society/acts'
import type { Targets } from './prepared'

export interface ActionRow {
  readonly act: Act
  /** Name of the server action in the build. */
  readonly action: string
  /** Part of the file's name, where two files have an action of this name. */
  readonly file?: string
  /** What comes before the form. */
  readonly bound: (own: Targets, of: Targets) => readonly unknown[]
  readonly form: (of: Targets) => Readonly<Record<string, string | Blob>>
  /** The form names nothing of any society: the second society's turn is the same as the first. */
  readonly namesNothing?: true
  /** How a stranger is answered, where it is not the desk's "signed out". */
  readonly signedOut?: string
  /** The form is not understood even by whoever may: the act is asked for before the form is read to its end. */
  readonly neverUnderstood?: true
}

// Version 0 is always behind: who may act is told that the day moved on, and nothing is changed.
const day = (of: Targets) => ({ dayId: of.dayId, version: '0', seen: '{}' })
const where = (own: Targets, of: Targets) => [{ society: own.slug, day: of.daySlug }]
const society = (own: Targets) => [own.slug]

const onDay = (act: Act, action: string, more: (of: Targets) => Record<string, string> = () => ({})): ActionRow => ({
  act,
  action,
  bound: where,
  form: (of) => ({ ...day(of), ...more(of) }),
})

const person = {
  firstName: 'Zeb',
  familyName: 'Applethwaite',
  gender: 'men',
  kind: 'member',
  handicapSource: 'society',
  indexTenths: '18.0',
}

const holes = Array.from({ length: 18 }, (_, n) => ({ hole: n + 1, par: 4, strokeIndex: n + 1, yards: 300 }))
const tee = { name: 'Yellow', gender: 'men', courseRatingTenths: 692, slopeRating: 125, holes }

const file = (text: string) => new Blob([text], { type: 'text/csv' })

export const ACTIONS: readonly ActionRow[] = [
  {
    act: 'open-season',
    action: 'openTheSeason',
    bound: society,
    form: () => ({ name: '2032', startsOn: '2032-01-01', endsOn: '2032-12-31' }),
    namesNothing: true,
  },
  {
    act: 'call-day',
    action: 'callTheDay',
    bound: society,
    form: (of) => ({ ...dayForm(of), seasonId: 'no-such-season' }),
    namesNothing: true,
  },
  onDay('change-day', 'changeTheDay', (of) => dayForm(of)),
  {
    act: 'keep-course',
    action: 'keepTheCourse',
    bound: society,
    form: (of) => ({
      course: JSON.stringify({ courseId: of.courseId, version: 0, name: 'Another Course', place: null, tees: [tee] }),
    }),
  },
  {
    act: 'keep-course',
    action: 'readCourseIn',
    bound: society,
    form: () => ({ file: file('Hole,Par\n1,4\n') }),
    namesNothing: true,
  },
  {
    act: 'delete-course',
    action: 'deleteTheCourse',
    bound: society,
    form: (of) => ({ courseId: of.courseId, version: '0' }),
  },
  {
    act: 'keep-people',
    action: 'keepMember',
    bound: society,
    form: () => ({ ...person, personId: 'no-such-person' }),
    namesNothing: true,
  },
  {
    act: 'delete-person',
    action: 'deleteTheMember',
    bound: society,
    form: (of) => ({ personId: of.personId }),
  },
  {
    act: 'keep-people',
    action: 'readMembersIn',
    bound: society,
    form: () => ({ file: file('Name\nZeb\n') }),
    namesNothing: true,
  },
  {
    act: 'change-handicap',
    action: 'changeFigure',
    bound: society,
    form: () => ({
      personId: 'no-such-person',
      indexTenths: '17.0',
      source: 'society',
      from: '2031-06-15',
      reason: 'Reviewed',
    }),
    namesNothing: true,
  },
  onDay('enter-player', 'keepEntries', (of) => ({ enter: of.personId })),
  {
    act: 'enter-player',
    action: 'enterAgain',
    bound: (own, of) => [...where(own, of), of.personId],
    form: day,
  },
  onDay('enter-player', 'addKnownGuest', (of) => ({
    hostId: of.personId,
    personId: of.personId,
    claimedTenths: '20',
  })),
  onDay('enter-player', 'addGuest', (of) => ({
    hostId: of.personId,
    firstName: 'Gus',
    familyName: 'Teasdale',
    gender: 'men',
    claimedTenths: '20',
  })),
  onDay('enter-player', 'changeTheHost', (of) => ({ entryId: of.entryId, hostId: of.personId })),
  onDay('freeze-handicaps', 'freezeTheDay'),
  onDay('unfreeze-handicaps', 'unfreezeTheDay', () => ({ reason: 'Too early' })),
  onDay('refreeze-handicaps', 'freezeAgain', (of) => ({ entry: of.entryId, reason: 'A corrected handicap' })),
  onDay('call-off-day', 'callOffTheDay', () => ({ reason: 'Fog' })),
  onDay('put-day-on', 'putTheDayOn'),
  onDay('delete-day', 'deleteTheDay'),
  onDay('play-day-ahead', 'playTheDayAhead'),
  onDay('make-draw', 'drawGroups', () => ({ way: 'random', groupSize: '4', threes: 'last', seed: '7' })),
  onDay('make-draw', 'keepGroups', (of) => ({ groups: JSON.stringify([{ entryIds: [of.entryId] }]) })),
  onDay('arrange-sides', 'keepSides', (of) => ({ competitionId: of.competitionId })),
  onDay('publish-start', 'publishTheStart'),
  {
    act: 'renew-group-link',
    action: 'renewLink',
    file: 'draw/actions',
    bound: where,
    form: (of) => ({ dayId: of.dayId, groupId: 'no-such-group' }),
  },
  {
    act: 'enter-score',
    action: 'keepCard',
    bound: where,
    form: (of) => ({ cardId: of.cardId, 'hole-1': '5', 'signed-player': '1' }),
  },
  {
    act: 'take-card-in',
    action: 'keepCard',
    bound: where,
    form: (of) =>
      Object.fromEntries([
        ['cardId', of.cardId],
        ['then', 'take-in'],
      ]),
  },
  {
    act: 'take-card-in',
    action: 'acceptHandedIn',
    bound: where,
    form: (of) => ({ dayId: of.dayId, card: `${of.cardId} ${Array(18).fill('5').join(' ')}` }),
  },
  {
    act: 'reopen-card',
    action: 'openCardAgain',
    bound: where,
    form: (of) => ({ cardId: of.cardId, reason: 'A slip of the hand' }),
  },
  {
    act: 'rule-on-card',
    action: 'giveRuling',
    bound: where,
    form: (of) => ({ cardId: of.cardId, kind: 'hole-score', hole: '3', value: '', reason: 'Looked at again' }),
  },
  {
    act: 'resume-play',
    action: 'tellTheCourse',
    bound: (own, of) => [{ society: own.slug, dayId: of.dayId }],
    form: () => ({ kind: 'resume', reason: 'Nothing was stopped' }),
  },
  {
    act: 'stop-play',
    action: 'tellTheCourse',
    bound: (own, of) => [{ society: own.slug, dayId: of.dayId }],
    form: () => ({ kind: 'stop-at-once', reason: 'Lightning' }),
  },
  {
    act: 'take-card-in',
    action: 'takeTheLate',
    bound: (own, of) => [{ society: own.slug, dayId: of.dayId, deviceId: 'no-such-device' }],
    form: () => ({}),
  },
  { act: 'keep-copies', action: 'copyTheBook', bound: society, form: () => ({}), namesNothing: true },
  onDay('close-day', 'closeTheDay'),
  onDay('publish-result', 'publishTheResult', () => ({ reason: 'A correction' })),
  onDay('reopen-day', 'reopenTheDay', () => ({ reason: 'A correction' })),
  onDay('rule-on-day', 'ruleAbandoned', () => ({ afterHole: '12', counts: 'first-holes', reason: 'Lightning' })),
  onDay('rule-on-day', 'takeDayRulingBack', () => ({ replaces: '1', reason: 'A mistake' })),
  onDay('rule-on-day', 'enterPlayOff', (of) => ({
    competitionId: of.competitionId,
    [`place ${of.entryId}`]: '1',
    'place another': '2',
    reason: 'Played off',
  })),
  {
    act: 'rule-on-card',
    action: 'giveChosenRuling',
    bound: where,
    form: (of) => ({ cardId: of.cardId, fault: 'no-such-fault', choice: 'none', reason: 'Looked at again' }),
    neverUnderstood: true,
  },
  onDay('allow-on-board', 'allowIt', () => ({ what: 'showsPosition', show: 'yes' })),
  onDay('arrange-teams', 'keepTeams', (of) => ({ team: 'Reds', [`in-team-${of.entryId}`]: '1' })),
  onDay('arrange-sides', 'keepListedSides', (of) => ({ competitionId: of.competitionId })),
  onDay('arrange-pairings', 'keepPairings', (of) => ({ competitionId: of.competitionId })),
  onDay('end-match', 'keepEnding', (of) => ({ competitionId: of.competitionId, matchId: 'no-such-match' })),
  onDay('change-day', 'keepCountedDays', (of) => ({ competitionId: of.competitionId })),
  onDay('call-day', 'callNextRound', (of) => ({
    name: 'Second round',
    date: '2031-06-15',
    firstTee: '10:00',
    courseId: of.courseId,
    holes: '18',
  })),
  { act: 'enter-score', action: 'keepBall', bound: where, form: (of) => ({ dayId: of.dayId, sideId: 'no-such-side' }) },
  {
    act: 'give-duty',
    action: 'giveTheDuty',
    bound: society,
    form: () => ({ name: 'Nell Wetherby', email: 'new@wetherlam.example.org', duty: 'committee' }),
    namesNothing: true,
  },
  {
    act: 'give-duty',
    action: 'handTheDutyOver',
    bound: dutyOf,
    form: () => ({ name: 'Nell Wetherby', email: 'new@wetherlam.example.org' }),
  },
  { act: 'give-duty', action: 'newLink', bound: userOf, form: () => ({}) },
  { act: 'end-duty', action: 'endTheDuty', bound: dutyOf, form: () => ({}) },
  { act: 'end-sessions', action: 'signThemOut', bound: userOf, form: () => ({}) },
  { act: 'renew-page-key', action: 'renewLink', file: 'privacy-actions', bound: personOf, form: () => ({}) },
  { act: 'end-page-key', action: 'endLink', bound: personOf, form: () => ({}) },
  { act: 'erase-person', action: 'erase', bound: personOf, form: () => ({ shownAs: 'initials' }) },
  {
    act: 'keep-privacy',
    action: 'keepChoices',
    bound: society,
    form: () => ({
      leaversContact: '365',
      leaversPage: '365',
      guestsContact: '365',
      guestsNames: '',
      leaversShownAs: 'name',
      juniorsShownAs: 'initials',
      searchEngines: 'no',
      privacyContact: '',
      noticeMore: '',
    }),
    namesNothing: true,
  },
]

// Nobody is signed out or put out of office for good in one's own society: the form names somebody who is not there.
function dutyOf(own: Targets, of: Targets): readonly unknown[] {
  return [own.slug, own === of ? 'no-such-duty' : of.dutyId]
}
function personOf(own: Targets, of: Targets): readonly unknown[] {
  return [own.slug, own === of ? 'no-such-person' : of.personId]
}
function userOf(own: Targets, of: Targets): readonly unknown[] {
  return [own.slug, own === of ? 'no-such-user' : of.userId]
}

function dayForm(of: Targets): Record<string, string> {
  return {
    seasonId: of.seasonId,
    name: 'Fell Day',
    date: '2031-06-14',
    courseId: of.courseId,
    holes: '18',
    startKind: 'tee-times',
    firstTee: '10:00',
    intervalMinutes: '8',
    'competitions[0].name': 'Singles',
    'competitions[0].format': 'stableford',
    'competitions[0].terms.allowance': '95',
  }
}

/** Forms that belong to no act of the table, and why. */
export const NOT_WALKED: Readonly<Record<string, string>> = {
  enterDesk: 'signing in',
  leaveDesk: 'signing out',
  openByCode: 'typing the code of a group',
  setOwnPassword: 'behind a one-time link, which is the key',
  foundYourSociety: 'behind the one-time link of the first start',
  endThisOne: 'one’s own sessions',
  endOthers: 'one’s own sessions',
  takePasskeyAway: 'one’s own passkeys',
  newPassword: 'one’s own password',
  correct: 'with the link of a member, walked there',
  ask: 'with the link of a member, walked there',
  leave: 'with the link of a member, walked there',
  renewOwnLink: 'with the link of a member, walked there',
}

/** Acts without a form or an address of their own at the desk. */
export const WALKED_ELSEWHERE: Readonly<Record<string, string>> = {
  'read-group': 'with the link of a group',
  'sign-card': 'with the link of a group',
  'read-own-page': 'with the link of a member',
  'read-board': 'the public pages',
  'keep-account': 'one’s own account',
  'correct-own-details': 'with the link of a member',
  'leave-society': 'with the link of a member',
}
