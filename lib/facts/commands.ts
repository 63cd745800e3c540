// What the desk asks for, one schema an act: the form and the use case parse with the same one.

import { z } from 'zod'
import { ABANDONED_COUNTS } from './day-rulings'
import {
  cardId,
  competitionId,
  courseId,
  dayId,
  deviceId,
  entryId,
  groupId,
  personId,
  roundTeeId,
  seasonId,
  teeId,
} from './ids'
import { PLAY_STOP_KINDS } from './play-stop'
import { competitionTerms } from './terms'
import { typedLine } from './typed-text'

export const isoDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'Write the date as year-month-day, 2026-06-13.')
export const clockTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'Write the time as 10:00.')
export const gender = z.enum(['men', 'women'])
const id = z.string().min(1).max(40)
const name = typedLine().min(1, 'A name is needed.').max(80, 'At most 80 letters.')
/** Tenths, as everything whose name ends so; the limits are said as somebody writes them. Plus figures negative. */
const INDEX_AT_MOST = 'A handicap may be at most 54.0.'
const INDEX_AT_LEAST = 'A plus handicap goes no further than +15.0.'
export const indexTenths = z.int().min(-150, INDEX_AT_LEAST).max(540, INDEX_AT_MOST)
const RATING_IN_WORDS = 'A course rating is between 20.0 and 90.0, such as 69.2 for eighteen holes or 34.6 for nine.'

export const foundSociety = z.strictObject({
  name,
  slug: z
    .string()
    .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'The address part takes small letters, figures and hyphens: fernbrake.')
    .max(40),
  foundedYear: z.int().min(1500).max(2200).nullable().default(null),
  isDemo: z.boolean().default(false),
  officer: z.strictObject({
    name,
    email: z.email('That is not an e-mail address.').max(120),
    password: z.string().min(12, 'A password needs at least 12 characters.').max(128),
  }),
})
export type FoundSociety = z.input<typeof foundSociety>

/** A further officer of an existing society. The password only for somebody who cannot sign in yet. */
export const giveDuty = z.strictObject({
  name,
  email: z.email('That is not an e-mail address.').max(120),
  password: z.string().min(12, 'A password needs at least 12 characters.').max(128).nullable().default(null),
  duty: z.enum(['secretary', 'handicap-secretary', 'treasurer', 'captain', 'committee']),
  personId: personId.nullable().default(null),
})
export type GiveDuty = z.input<typeof giveDuty>

export const openSeason = z.strictObject({ name, startsOn: isoDate, endsOn: isoDate })
export type OpenSeason = z.input<typeof openSeason>

export const holeInput = z.strictObject({
  hole: z.int().min(1).max(18),
  par: z.int().min(3).max(6),
  strokeIndex: z.int().min(1).max(18),
  yards: z.int().min(30).max(900).nullable(),
})
export const teeInput = z.strictObject({
  name,
  gender,
  courseRatingTenths: z.int(RATING_IN_WORDS).min(200, RATING_IN_WORDS).max(900, RATING_IN_WORDS),
  slopeRating: z.int().min(55).max(155),
  holes: z.array(holeInput).min(9).max(18),
})
const courseCard = z.strictObject({
  name,
  place: typedLine().max(80).nullable(),
  tees: z.array(teeInput).min(1).max(12),
})
export const keepCourse = courseCard.extend({
  /** Absent for a new course. */
  courseId: courseId.optional(),
  /** The version the edit was made on. */
  version: z.int().optional(),
  /** The card as that version had it: with it, what two desks changed in different places is kept of both. */
  was: courseCard.optional(),
  /** What both changed and the later desk has been told of: its own is kept. */
  overrule: z.array(z.string().max(120)).max(250).optional(),
})
export type KeepCourse = z.input<typeof keepCourse>

/** With the version that was on the screen: a card somebody has changed meanwhile is not deleted unseen. */
export const deleteCourse = z.strictObject({ courseId, version: z.int() })
export type DeleteCourse = z.input<typeof deleteCourse>

/** "senior", "first-timer": small letters, so that the same word is never two. */
const label = typedLine()
  .toLowerCase()
  .min(1)
  .max(30, 'A word has at most 30 letters.')
  .regex(/^[\p{L}\p{N}][\p{L}\p{N} '’-]*$/u, 'Write plain words with commas between them: senior, first-timer.')

/** The word that tells two people of one name apart; an empty field is none. */
const knownAs = typedLine()
  .max(30, 'A word or two: at most 30 letters.')
  .regex(/^[^()]*$/, 'Write it without brackets: they are put round it.')
  .transform((word) => word || null)
  .nullable()

const YEAR_IN_FULL = 'Write the year in full, such as 1996.'

/** The fields of a person as a form saw them; a field left out is taken as the form has it. */
export const personSeen = z.looseObject({
  firstName: z.string(),
  familyName: z.string(),
  gender: z.string(),
  kind: z.string(),
  regular: z.boolean(),
  email: z.string().nullable(),
  phone: z.string().nullable(),
  handicapSource: z.string(),
  memberSince: z.number().nullable(),
  leftOn: z.string().nullable(),
  knownAs: z.string().nullable().optional(),
  junior: z.boolean(),
})

export const keepPerson = z.strictObject({
  personId: personId.optional(),
  firstName: name,
  familyName: name,
  /** Left as it is when absent. */
  knownAs: knownAs.optional(),
  /** The answer to "There is already a Peter Marsh. Is this somebody else?" */
  isAnother: z.boolean().default(false),
  gender,
  kind: z.enum(['member', 'guest']),
  regular: z.boolean().default(true),
  email: z.email('That is not an e-mail address.').max(120).nullable().default(null),
  phone: typedLine().max(40).nullable().default(null),
  handicapSource: z.enum(['home-club', 'society', 'claimed']),
  indexTenths: indexTenths.nullable(),
  memberSince: z.int().min(1900, YEAR_IN_FULL).max(2200, YEAR_IN_FULL).nullable().default(null),
  /** As the society writes it, and where the handicap index is kept; left as they are when absent. */
  membershipNumber: typedLine().max(30, 'A membership number has at most 30 signs.').nullable().optional(),
  homeClub: typedLine().max(80, 'The name of a club has at most 80 letters.').nullable().optional(),
  /** Words the society sorts people by; left as they are when absent. */
  labels: z.array(label).max(8, 'At most eight words.').optional(),
  /** Last day as a member; whoever has left is on no list, but stays on the sheets of the days played. */
  leftOn: isoDate.nullable().default(null),
  /** Under 18: less is shown of a junior. Left as it is when absent. */
  junior: z.boolean().optional(),
  /** What the form was filled with: what another desk changed meanwhile is then told, or taken over. */
  was: personSeen.optional(),
  /** Fields on which mine is kept although another desk changed them too: its officer was told. */
  overrule: z.array(z.string().max(40)).max(20).optional(),
})
export type KeepPerson = z.input<typeof keepPerson>

/** For a person entered by mistake. */
export const deletePerson = z.strictObject({ personId })
export type DeletePerson = z.input<typeof deletePerson>

export const prizeInput = z.strictObject({
  name,
  place: z.int().min(1).max(50),
  eligible: z.enum(['everybody', 'members', 'guests']),
  valuePence: z
    .int('Write pounds, or pounds and pence: 20 or 12.50.')
    .min(0, 'A value may not be below nothing: write 20 or 12.50.')
    .max(1_000_000, 'A value may be at most £10,000.')
    .nullable(),
  /** Won among the players of this division of the terms. */
  division: id.nullable().optional(),
})
export const competitionInput = z.strictObject({
  name,
  format: typedLine().min(1, 'A form of play needs its name.').max(60, 'At most 60 letters.'),
  terms: competitionTerms,
  prizes: z.array(prizeInput).max(20),
})
export type CompetitionInput = z.infer<typeof competitionInput>

export const callDay = z.strictObject({
  seasonId,
  name,
  date: isoDate,
  courseId,
  holes: z.union([z.literal(9), z.literal(18)]).default(18),
  startKind: z.enum(['tee-times', 'shotgun']).default('tee-times'),
  firstTee: clockTime,
  intervalMinutes: z.int().min(5).max(30),
  entriesCloseOn: isoDate.nullable().default(null),
  /** How many may play; whoever enters after that waits. Null: as many as come. */
  places: z.int().min(2).max(200).nullable().default(null),
  /** Tee ids of the course that men and women get unless told otherwise. */
  teeMen: teeId.nullable(),
  teeWomen: teeId.nullable(),
  competitions: z.array(competitionInput).min(1).max(10),
})
export type CallDay = z.input<typeof callDay>

/** Same shape, on an existing day, with the version it was made on. Course, tees and terms only before the freeze. */
export const changeDay = z.strictObject({ dayId, version: z.int(), day: callDay })
export type ChangeDay = z.input<typeof changeDay>

/** The weather, the course closed: why, as everybody reads it. */
export const callOffDay = z.strictObject({
  dayId,
  version: z.int(),
  reason: typedLine().min(3, 'Write the reason: everybody reads it on the fixture list.').max(200),
})
export const putDayOn = z.strictObject({ dayId, version: z.int() })
export const deleteDay = z.strictObject({ dayId, version: z.int() })
/** Its cards are taken, and its result is published, before its date. */
export const playDayAhead = z.strictObject({ dayId, version: z.int() })

export const enterPlayers = z.strictObject({
  dayId,
  version: z.int(),
  /** Who is to be in, with the tee each plays from (null: the day's own for the gender). Others stay as they are. */
  enter: z.array(z.strictObject({ personId, roundTeeId: roundTeeId.nullable().default(null) })).max(200),
  /** Entries, not people: a screen shows entries. */
  withdraw: z.array(entryId).max(200).default([]),
})
export type EnterPlayers = z.input<typeof enterPlayers>

const hostId = z
  .string('Choose whose guest it is.')
  .min(1, 'Choose whose guest it is.')
  .max(40)
  .brand<'person', 'inout'>()

/** A guest typed in. */
export const enterGuest = z.strictObject({
  dayId,
  version: z.int(),
  hostId,
  firstName: name,
  familyName: name,
  knownAs: knownAs.default(null),
  /** Where the book knows the name already: the guest of an earlier day, or somebody else. */
  namesake: z.enum(['same', 'another']).nullable().default(null),
  gender,
  claimedTenths: indexTenths,
})
export type EnterGuest = z.input<typeof enterGuest>

/** A guest the book knows, from an earlier day or from the members' list. */
export const enterKnownGuest = z.strictObject({
  dayId,
  version: z.int(),
  hostId,
  personId: z.string('Choose the guest.').min(1, 'Choose the guest.').max(40).brand<'person', 'inout'>(),
  /** Null: the handicap the book has for the guest. */
  claimedTenths: indexTenths.nullable(),
})
export type EnterKnownGuest = z.input<typeof enterKnownGuest>

/** Another host for a guest who is entered. */
export const changeHost = z.strictObject({ dayId, version: z.int(), entryId, hostId })
export type ChangeHost = z.input<typeof changeHost>

/** What may be shown while the round is on; what is left out stays as it is. */
export const allowOnBoard = z.strictObject({
  dayId,
  version: z.int(),
  showsPosition: z.boolean().optional(),
  showsChances: z.boolean().optional(),
})
export type AllowOnBoard = z.input<typeof allowOnBoard>

export const freezeHandicaps = z.strictObject({
  dayId,
  version: z.int(),
  /**
   * How many were entered when the officer was told that the allowance is for a field of another size: with another
   * number it is asked again. Left out by whoever has nobody to ask.
   */
  fieldSizeSeen: z.int().min(0).optional(),
})
const whyRefrozen = typedLine().min(3, 'Write the reason: it stands in the record.').max(200)
export const unfreezeHandicaps = z.strictObject({ dayId, version: z.int(), reason: whyRefrozen })
/** Only these players, off the handicap they have now. */
export const refreezeHandicaps = z.strictObject({
  dayId,
  version: z.int(),
  entryIds: z.array(entryId).min(1, 'Tick the players whose handicap is to be frozen again.').max(200),
  reason: whyRefrozen,
})

export const makeDraw = z.strictObject({
  dayId,
  version: z.int(),
  way: z.enum(['random', 'by-handicap-mixed', 'by-handicap-banded', 'entry-order']),
  groupSize: z.int().min(2).max(4),
  seed: z.int().min(0).max(4_294_967_295),
  /** Where the smaller groups go. */
  threes: z.enum(['first', 'last']).default('last'),
  /** Where partners or opponents are drawn together, fours and a two are made; true for sizes as even as can be instead. */
  evenSizes: z.boolean().default(false),
})
export type MakeDraw = z.input<typeof makeDraw>

/** Groups as arranged by hand, in order; and the pairs inside them for competitions of sides. */
export const arrangeGroups = z.strictObject({
  dayId,
  version: z.int(),
  groups: z
    .array(
      z.strictObject({
        startTime: clockTime.optional(),
        startHole: z.int().min(1).max(18).optional(),
        entryIds: z.array(entryId).min(1).max(4),
      }),
    )
    .max(60),
})
export type ArrangeGroups = z.input<typeof arrangeGroups>

/** `draw`: the groups as the screen showed them (shown-draw.ts); they must be the ones that are saved. */
export const publishStart = z.strictObject({ dayId, version: z.int(), draw: z.string().max(20_000).optional() })
export const renewGroupLink = z.strictObject({ dayId, groupId })

/** A paper card keyed at the desk: only the holes that are there. */
const cardScores = z
  .array(z.union([z.int().min(1).max(30), z.literal('x'), z.null()]))
  .min(9)
  .max(18)
const NO_TOTAL = 'A total on the paper has up to three figures.'
const paperSum = z.int(NO_TOTAL).min(0, NO_TOTAL).max(999, NO_TOTAL).nullable()

export const keyCard = z.strictObject({
  dayId,
  cardId,
  scores: cardScores,
  /** The card as it stood when the officer began: what somebody else changed since is not written over. */
  was: cardScores.optional(),
  /** What the paper adds up to; left as it is when absent. */
  paper: z.strictObject({ out: paperSum, in: paperSum, total: paperSum }).optional(),
  /** Whose signature the paper bears. */
  signed: z.strictObject({ player: z.boolean(), marker: z.boolean() }).default({ player: false, marker: false }),
})
export type KeyCard = z.input<typeof keyCard>

/** `seen`: the scores the officer accepts; with others on the card by then it is not accepted. */
export const takeCardIn = z.strictObject({ dayId, cardId, seen: cardScores.optional() })
/** Every card that is handed in with nothing open on it, each as it was on the screen. */
export const takeCardsIn = z.strictObject({
  dayId,
  cards: z
    .array(z.strictObject({ cardId, seen: cardScores }))
    .min(1, 'No card is handed in.')
    .max(200),
})

/** The reason may stay empty until a result has been published. */
export const reopenCard = z.strictObject({ dayId, cardId, reason: typedLine().max(400).default('') })

const NO_SUCH_VALUE = 'No ruling holds a number like that. Look at it again.'
/** An index is in tenths, strokes and points are whole: each kind of ruling has its own limits (ruling-in-book.ts). */
const valueRuled = z.int().min(-999, NO_SUCH_VALUE).max(999, NO_SUCH_VALUE).nullable().default(null)

export const ruleOnCard = z.strictObject({
  dayId,
  cardId,
  kind: z.enum([
    'hole-score',
    'penalty-strokes',
    'penalty-points',
    'no-return',
    'disqualified',
    'withdrawn',
    'card-stands',
    'handicap-index',
    'course-handicap',
    'playing-handicap',
    'withdrawn-ruling',
  ]),
  hole: z.int().min(1).max(18).nullable().default(null),
  value: valueRuled,
  clause: typedLine().max(120).default(''),
  reason: typedLine().min(3, 'Write the reason: it is kept with the card.').max(400),
  replaces: z.int().nullable().default(null),
})
export type RuleOnCard = z.input<typeof ruleOnCard>

/** What was wrong with the card and which answer is given to it; the acts that carry it out follow from the two. */
export const ruleByChoice = z.strictObject({
  dayId,
  cardId,
  fault: z.string().min(1).max(40),
  choice: z.string().min(1).max(40),
  /** The hole it is about; of a late start the hole with which the player began. */
  hole: z.int().min(1).max(18).nullable().default(null),
  /** Strokes of a penalty, strokes that were made, or the handicap that counts (an index in tenths). */
  value: valueRuled,
  /** Which handicap the value is; a side on one ball has its playing handicap only. */
  measure: z.enum(['index', 'course', 'playing']).default('index'),
  /** Whose version of the card counts: an entry id, or 'desk'. */
  /** A key of lib/facts/writer.ts. */
  writer: z.string().max(80).nullable().default(null),
  reason: typedLine().min(3, 'Write the reason: it is kept with the card.').max(400),
})
export type RuleByChoice = z.input<typeof ruleByChoice>

export const ruleOnDay = z.strictObject({
  dayId,
  version: z.int(),
  ruling: z.discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('play-off'),
      competitionId,
      order: z.array(id).min(2, 'A play-off has at least two in it.').max(40),
    }),
    z.strictObject({
      kind: z.literal('abandoned'),
      afterHole: z.int('Write the number of the hole.').min(0).max(18),
      counts: z.enum(ABANDONED_COUNTS),
    }),
    z.strictObject({ kind: z.literal('taken-back'), replaces: z.int().min(1) }),
  ]),
  reason: typedLine().min(3, 'Write the reason: it stands on the sheet.').max(400),
})
export type RuleOnDay = z.input<typeof ruleOnDay>

export const closeDay = z.strictObject({
  dayId,
  version: z.int(),
  /** How many cards the officer was told are still out and lets count as not returned. Another number: asked again. */
  notReturned: z.int().min(0).default(0),
})
export const reopenDay = z.strictObject({ dayId, version: z.int(), reason: typedLine().min(3).max(400) })
export const publishResult = z.strictObject({
  dayId,
  version: z.int(),
  /** Needed from sheet 2 on. */
  reason: typedLine().max(400).nullable().default(null),
  /** Why it goes out although nobody has a result in a competition; refused without it. */
  without: typedLine().min(3, 'Write why it is published without it.').max(400).nullable().default(null),
})
export type PublishResult = z.input<typeof publishResult>

export const changeHandicap = z.strictObject({
  personId,
  indexTenths,
  source: z.enum(['home-club', 'society', 'claimed']),
  from: isoDate,
  reason: typedLine().min(3, 'Write the reason: the member will ask.').max(200),
})
export type ChangeHandicap = z.input<typeof changeHandicap>

/** Suspension of play, told to everybody on the course. */
export const stopPlay = z.strictObject({
  dayId,
  kind: z.enum(PLAY_STOP_KINDS),
  reason: typedLine().min(3, 'Write the reason: everybody on the course reads it.').max(120),
})
export type StopPlay = z.input<typeof stopPlay>

/** What a phone brought after its link had ended. */
export const takeLateScores = z.strictObject({ dayId, deviceId })
