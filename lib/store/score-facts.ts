import type { CardId, DayId, DeviceId, EntryId, GroupId, RoundId, SocietyId, UserId } from '@/lib/facts/ids'
import 'server-only'
import type { CardRecord, DayStatus, FactRecord, RulingRecord, SignatureRecord } from '@/lib/facts/day-record'
import { stoppedBy } from '@/lib/facts/day-rulings'
import { fullName } from '@/lib/facts/person-name'
import type { DeviceFact, FactAnswer, WrittenScore } from '@/lib/facts/score-fact'
import type { ReplacedScore } from '@/lib/facts/writer'
import { lateBalls } from './ball-facts'
import { calledOffOf } from './called-off'
import type { Tx } from './client'
import { lateConcessions } from './concessions'
import { cardOf, factsOf, PAPER_COLUMNS, rulingsOf, signaturesOf } from './day-cards'
import { dayRulingsOf } from './day-rulings'
import type { DayNow } from './day-versions'

/** One row for the desk of each officer in each society: keyed cards have a sequence as phones have. */
export function deskDevice(societyId: SocietyId, userId: UserId): DeviceId {
  return `desk.${societyId}.${userId}` as DeviceId
}

/** What a phone tells of itself with whatever it sends. */
export interface PhoneSays {
  readonly unsent?: number
  readonly appVersion?: string
}

/**
 * Takes the device's row, and with it the write lock, before anything is read. Answers the last number we have; null
 * when the group it should belong to is not there.
 */
export async function takeDevice(
  tx: Tx,
  device: { readonly id: DeviceId; readonly societyId: SocietyId; readonly groupId: GroupId | null },
  now: Date,
  says: PhoneSays = {},
): Promise<number | null> {
  const seen = await tx.device.updateMany({ where: { id: device.id }, data: { lastSeen: now, ...says } })
  if (seen.count === 0) {
    const { groupId, societyId } = device
    if (groupId !== null && (await tx.group.count({ where: { id: groupId, societyId } })) === 0) return null
    await tx.device.create({ data: { ...device, ...says, lastSeq: 0, firstSeen: now, lastSeen: now } })
    return 0
  }
  const row = await tx.device.findUniqueOrThrow({ where: { id: device.id }, select: { lastSeq: true } })
  return row.lastSeq
}

/** Moves the device's number on. False when somebody else did so meanwhile: then nothing of the transaction may stand. */
export async function moveDevice(tx: Tx, id: DeviceId, from: number, to: number): Promise<boolean> {
  const moved = await tx.device.updateMany({ where: { id, lastSeq: from }, data: { lastSeq: to } })
  return moved.count === 1
}

/** The first answers of numbers that were settled before. */
export async function earlierAnswers(
  tx: Tx,
  deviceId: DeviceId,
  seqs: readonly number[],
): Promise<ReadonlyMap<number, FactAnswer>> {
  if (!seqs.length) return new Map()
  const where = { deviceId, seq: { in: [...seqs] } }
  const late = await tx.scoreFact.findMany({ where: { ...where, late: true }, select: { seq: true } })
  const lateToo = [...(await lateBalls(tx, deviceId, seqs)), ...(await lateConcessions(tx, deviceId, seqs))]
  const refused = await tx.refusedFact.findMany({ where, select: { seq: true, code: true, sentence: true } })
  const takenIn = await takenAfterEnd(tx, deviceId, refused)
  const answers = new Map<number, FactAnswer>(seqs.map((seq) => [seq, { seq, answer: 'received' }]))
  for (const seq of [...late.map((one) => one.seq), ...lateToo])
    answers.set(seq, { seq, answer: 'late', sentence: LATE_BEFORE })
  for (const one of refused) if (!takenIn.has(one.seq)) answers.set(one.seq, { ...one, answer: 'refused' })
  return answers
}

/** What came after the link's end was refused then; what the desk took in since is answered as taken. */
export const AFTER_END = 'link-ended'

async function takenAfterEnd(
  tx: Tx,
  deviceId: DeviceId,
  refused: readonly { readonly seq: number; readonly code: string }[],
): Promise<ReadonlySet<number>> {
  const seqs = refused.filter((one) => one.code === AFTER_END).map((one) => one.seq)
  if (!seqs.length) return new Set()
  const where = { deviceId, seq: { in: seqs } }
  const scores = await tx.scoreFact.findMany({ where, select: { seq: true } })
  const signatures = await tx.signature.findMany({ where, select: { seq: true } })
  const balls = await tx.ballFact.findMany({ where, select: { seq: true } })
  const conceded = await tx.concession.findMany({ where, select: { seq: true } })
  return new Set([...scores, ...signatures, ...balls, ...conceded].map((one) => one.seq))
}

const LATE_BEFORE = 'The score came after the card was closed. It is kept as a late fact for the desk.'

export interface GroupSources {
  readonly dayId: DayId
  readonly status: DayStatus
  readonly startPublished: boolean
  /** Why the day was called off. */
  readonly calledOff: string | null
  readonly scoreVersion: number
  readonly holes: number
  readonly firstHole: number
  readonly entryIds: readonly EntryId[]
  readonly nameOf: Readonly<Record<string, string>>
  readonly cards: readonly CardRecord[]
  readonly facts: readonly FactRecord[]
  readonly rulings: readonly RulingRecord[]
  readonly signatures: readonly SignatureRecord[]
}

interface GroupRow {
  readonly status: string
  readonly started: number | bigint
  readonly calledOff: string | null
  readonly scoreVersion: number | bigint
  readonly holes: number | bigint
  readonly firstHole: number | bigint
  readonly entryId: EntryId
  readonly firstName: string
  readonly familyName: string
  readonly knownAs: string | null
  readonly cardId: CardId | null
  readonly markerId: EntryId | null
  readonly state: string | null
}

/**
 * Everything that decides about scores on these cards of the group, from inside the transaction. One statement for the
 * group, in SQL that both databases speak: this is what every delivery waits for.
 */
export async function groupSources(
  tx: Tx,
  which: { readonly societyId: SocietyId; readonly dayId: DayId; readonly groupId: GroupId },
  touched: ReadonlySet<string> | 'all',
): Promise<GroupSources | null> {
  const rows = await tx.$queryRaw<GroupRow[]>`
    SELECT d."status", CASE WHEN d."startPublishedAt" IS NULL THEN 0 ELSE 1 END AS "started",
      d."calledOffReason" AS "calledOff", d."scoreVersion",
      r."holes",
      COALESCE((SELECT MIN(h."hole") FROM "RoundTee" t JOIN "RoundTeeHole" h ON h."roundTeeId" = t."id"
        WHERE t."roundId" = r."id"), 1) AS "firstHole",
      e."id" AS "entryId", p."firstName", p."familyName", p."knownAs", c."id" AS "cardId", c."markerId", c."state"
    FROM "Group" g
    JOIN "Round" r ON r."id" = g."roundId"
    JOIN "Day" d ON d."id" = r."dayId"
    JOIN "GroupPlace" s ON s."groupId" = g."id"
    JOIN "Entry" e ON e."id" = s."entryId"
    JOIN "Person" p ON p."id" = e."personId"
    LEFT JOIN "Card" c ON c."entryId" = e."id" AND c."roundId" = r."id"
    WHERE g."id" = ${which.groupId} AND g."societyId" = ${which.societyId} AND d."id" = ${which.dayId}
    ORDER BY s."position"`
  const [first] = rows
  if (!first) return null
  const cards = rows.flatMap(({ cardId, entryId, markerId, state }): CardRecord[] =>
    cardId === null ? [] : [{ id: cardId, entryId, markerId, state: state as CardRecord['state'], takenInAt: null }],
  )
  const cardIds = cards.map((card) => card.id).filter((id) => touched === 'all' || touched.has(id))
  return {
    dayId: which.dayId,
    status: first.status as DayStatus,
    startPublished: Number(first.started) === 1,
    calledOff: first.calledOff,
    scoreVersion: Number(first.scoreVersion),
    holes: Number(first.holes),
    firstHole: Number(first.firstHole),
    entryIds: rows.map((row) => row.entryId),
    nameOf: Object.fromEntries(rows.map((row) => [row.entryId, fullName(row)])),
    cards,
    facts: await factsOf(tx, cardIds),
    rulings: await rulingsOf(tx, which.dayId, cardIds),
    signatures: await signaturesOf(tx, cardIds),
  }
}

export interface OneCardSources {
  readonly day: Pick<DayNow, 'date' | 'calledOff' | 'playedAheadAt'>
  readonly status: DayStatus
  readonly scoreVersion: number
  readonly holes: number
  readonly firstHole: number
  readonly card: CardRecord
  /** The round was abandoned by a ruling on the day. */
  readonly abandoned: 'nothing' | 'counts' | undefined
  readonly facts: readonly FactRecord[]
  readonly rulings: readonly RulingRecord[]
  readonly signatures: readonly SignatureRecord[]
}

/** The same for one card at the desk; null when it is not a card of that day and society. */
export async function cardSources(
  tx: Tx,
  which: { readonly societyId: SocietyId; readonly dayId: DayId; readonly cardId: CardId },
): Promise<OneCardSources | null> {
  const row = await tx.card.findFirst({
    where: { id: which.cardId, societyId: which.societyId, round: { dayId: which.dayId } },
    select: {
      id: true,
      entryId: true,
      markerId: true,
      state: true,
      takenInAt: true,
      ...PAPER_COLUMNS,
      round: {
        select: {
          id: true,
          holes: true,
          day: {
            select: {
              status: true,
              scoreVersion: true,
              date: true,
              calledOffAt: true,
              calledOffReason: true,
              playedAheadAt: true,
            },
          },
        },
      },
    },
  })
  if (!row) return null
  const { round, ...card } = row
  const { date, playedAheadAt } = round.day
  return {
    day: { date, playedAheadAt, calledOff: calledOffOf(round.day) },
    status: round.day.status as DayStatus,
    scoreVersion: round.day.scoreVersion,
    holes: round.holes,
    firstHole: await firstHoleOf(tx, round.id),
    card: cardOf(card),
    abandoned: stoppedBy(await dayRulingsOf(tx, which.dayId)),
    facts: await factsOf(tx, [card.id]),
    rulings: await rulingsOf(tx, which.dayId, [card.id]),
    signatures: await signaturesOf(tx, [card.id]),
  }
}

/** Number on the first flag of the round's cards. */
async function firstHoleOf(tx: Tx, roundId: RoundId): Promise<number> {
  const first = await tx.roundTeeHole.aggregate({ where: { roundTee: { roundId } }, _min: { hole: true } })
  return first._min.hole ?? 1
}

export interface NewFact {
  readonly societyId: SocietyId
  readonly cardId: CardId
  readonly hole: number
  readonly score: WrittenScore
  /** Entry id, or null for the desk. */
  readonly writerId: EntryId | null
  readonly userId: UserId | null
  readonly deviceId: DeviceId
  readonly seq: number
  /** Null for the desk: it takes the place of whatever it wrote before. */
  readonly replaces: readonly ReplacedScore[] | null
  readonly writtenAt: Date
  readonly receivedAt: Date
  readonly late: boolean
}

/** In the order given: the row's own number is the order of arrival. */
export async function addFacts(tx: Tx, facts: readonly NewFact[]): Promise<void> {
  if (!facts.length) return
  await tx.scoreFact.createMany({
    data: facts.map(({ score, replaces, ...fact }) => ({
      ...fact,
      replaces: replaces && JSON.stringify(replaces),
      strokes: typeof score === 'number' ? score : null,
      outcome: typeof score === 'number' ? 'holed' : score === 'x' ? 'no-score' : 'cleared',
      writer: fact.writerId === null ? 'desk' : 'entry',
    })),
  })
}

export interface NewSignature {
  readonly id: string
  readonly societyId: SocietyId
  readonly cardId: CardId
  readonly role: 'player' | 'marker'
  readonly entryId: EntryId | null
  readonly scores: readonly WrittenScore[]
  readonly deviceId: DeviceId
  readonly seq: number
  readonly signedAt: Date
  readonly receivedAt: Date
  readonly withdrawnAt: Date | null
}

export async function addSignatures(tx: Tx, signatures: readonly NewSignature[]): Promise<void> {
  if (!signatures.length) return
  await tx.signature.createMany({ data: signatures.map((one) => ({ ...one, scores: JSON.stringify(one.scores) })) })
}

export async function withdrawSignatures(tx: Tx, cardId: CardId, role: 'player' | 'marker', now: Date): Promise<void> {
  await tx.signature.updateMany({ where: { cardId, role, withdrawnAt: null }, data: { withdrawnAt: now } })
}

export interface RefusedOnce {
  readonly societyId: SocietyId
  readonly deviceId: DeviceId
  readonly fact: DeviceFact
  readonly code: string
  readonly sentence: string
  readonly refusedAt: Date
}

export async function addRefused(tx: Tx, refused: readonly RefusedOnce[]): Promise<void> {
  if (!refused.length) return
  await tx.refusedFact.createMany({
    data: refused.map(({ fact, ...one }) => ({ ...one, seq: fact.seq, fact: JSON.stringify(fact) })),
  })
}

/** Only a card that is still out: answers whether it was. */
export async function handInCard(tx: Tx, societyId: SocietyId, cardId: CardId): Promise<boolean> {
  const changed = await tx.card.updateMany({
    where: { id: cardId, societyId, state: 'out' },
    data: { state: 'handed-in' },
  })
  return changed.count === 1
}

/** One step on for the whole delivery; the first score also puts a frozen day in play. */
export async function moveScores(
  tx: Tx,
  dayId: DayId,
  startsPlay: boolean,
): Promise<{ readonly version: number; readonly scoreVersion: number }> {
  if (startsPlay) await tx.day.updateMany({ where: { id: dayId, status: 'frozen' }, data: { status: 'in-play' } })
  return tx.day.update({
    where: { id: dayId },
    data: { scoreVersion: { increment: 1 } },
    select: { version: true, scoreVersion: true },
  })
}
