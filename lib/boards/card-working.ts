// One figure of a card with its steps. The engine gives the arithmetic; who wrote a score and when, and where a figure
// was frozen, only the book knows.

import type { CompetitionRecord, DayRecord, EntryRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import type { Day } from '@/lib/rules/day'
import { editionOf } from '@/lib/rules/editions/editions'
import { formatOf } from '@/lib/rules/formats/catalogue'
import { scoreDay } from '@/lib/rules/score-day'
import type { Standing, WorkingStep } from '@/lib/rules/standings'
import { holeWorking } from '@/lib/rules/working/hole-working'
import { tieWorking, totalWorking } from '@/lib/rules/working/total-working'
import { dayHead } from './board'
import type { CardWorking } from './card-views'
import type { CurrentCard } from './current-card'
import { dayInWords, timeInWords } from './dates-in-words'
import { cardsAsTheyStand, dayOfRecord } from './day-of-record'
import { divisionStepsOf } from './day-working'
import { type Names, namesOf } from './entrant-names'
import { playerId } from './ids-from-engine'
import { asSentence, capital, listed, scoreInWords, scoreLong, scoreShort, type Unit } from './in-words'
import { opinionName } from './returns'
import { holesOfDay } from './row-extras'
import { tieSentence } from './tie-sentences'

interface Asked {
  readonly record: DayRecord
  readonly competition: CompetitionRecord
  readonly day: Day
  readonly cards: ReadonlyMap<string, CurrentCard>
  readonly names: Names
  readonly standing: Standing
  readonly zone: string
}

/** Null when there is no such card, competition or hole. */
export function cardWorkingOf(
  record: DayRecord,
  entryId: EntryId,
  of: { readonly competition: number; readonly hole: number | null },
  zone: string,
): CardWorking | null {
  const competition = record.competitions[of.competition - 1]
  const entry = record.entries.find((one) => one.id === entryId && one.status === 'entered')
  if (!competition || !entry) return null
  const cards = cardsAsTheyStand(record)
  const day = dayOfRecord(record)
  const result = scoreDay(day).find((one) => one.competition === competition.id)
  const standing = result?.standings.find((one) => one.players.includes(entryId))
  if (!result || !standing) return null
  const asked: Asked = { record, competition, day, cards, names: namesOf(record), standing, zone }
  const edition = editionOf(record.edition).title
  const head = {
    ...dayHead(record),
    entryId,
    name: asked.names.entrant(standing.entrant),
    competitionId: competition.id,
    competition: competition.name,
    formatName: formatOf(competition.format)?.name ?? competition.format,
    hole: of.hole,
    round: { holes: record.round.holes, firstHole: record.round.firstHole },
    unit: result.unit,
    edition,
    editionSentence: `${edition} and Rules of Golf 2023, as the terms of the day say.`,
  }
  if (of.hole === null) {
    const divisions = divisionStepsOf(day, competition, standing.entrant)
    return { ...head, ...ofTheCard(asked, result.unit), ...(divisions.length > 0 ? { divisions } : {}) }
  }
  const hole = ofTheHole(asked, of.hole)
  return hole && { ...head, ...hole }
}

type Figured = Pick<
  CardWorking,
  'figure' | 'sentence' | 'steps' | 'strokesAt' | 'strokesByIndex' | 'strokeIndex' | 'ifItHadBeen'
>

function ofTheCard({ competition, standing, names }: Asked, unit: Unit): Figured {
  const { score, out, in: back } = standing
  const nines = out !== null && back !== null ? `: ${scoreShort(out, unit)} out and ${scoreShort(back, unit)} in` : ''
  const total =
    score === null ? 'No total counts.' : `${capital(scoreLong(score, unit, competition.format !== 'gross'))}${nines}.`
  const tie = standing.tieBroken ? ` ${tieSentence(standing.tieBroken, standing.entrant, score ?? 0, unit, names)}` : ''
  return {
    figure: score === null ? '–' : scoreShort(score, unit),
    sentence: total + tie,
    steps: [
      ...totalWorking(standing, unit, competition.format),
      ...tieWorking(standing, (id) => names.entrantShort(id)),
    ],
    strokesAt: null,
    strokesByIndex: [],
    strokeIndex: null,
    ifItHadBeen: [],
  }
}

function ofTheHole(asked: Asked, hole: number): Figured | null {
  const { day, competition, standing, record } = asked
  const working = holeWorking(day, competition.id, standing.entrant, hole)
  if (!working) return null
  const line = holesOfDay(record, standing).find((one) => one.hole === hole)
  const whose = whoseCard(asked, line?.by?.[0])
  const several = working.steps.filter((step) => step.player !== undefined).length > 1
  const steps = working.steps.map((step) => {
    const entry = record.entries.find((one) => one.id === step.player)
    // Where the committee ruled, the step says so itself: the figure was not the one that was confirmed.
    const isRuled = entry !== undefined && (asked.cards.get(entry.id)?.indexTenths ?? null) !== null
    if (entry && !isRuled) {
      const origin = figureOrigin(record, entry, asked.zone)
      const name = several ? `${asked.names.full(entry.id)}: ` : ''
      return { ...step, ...origin, sentence: `${name}${origin.sentence}` }
    }
    if (step.label === 'Gross') return { ...step, sentence: `${grossOrigin(asked, whose, hole)} ${kept(step)}`.trim() }
    return step
  })
  const strokesAt = steps.findIndex((step) => step.label === `Strokes on hole ${hole}`)
  return {
    figure: working.figure,
    sentence: working.sentence,
    steps,
    strokesAt: strokesAt < 0 ? null : strokesAt,
    strokesByIndex: working.strokesByIndex,
    strokeIndex: working.strokeIndex,
    ifItHadBeen: working.ifItHadBeen.flatMap(({ value, ...one }) =>
      value === null ? [] : [{ ...one, value, here: one.gross === line?.gross }],
    ),
  }
}

/** The card a figure was written on: of a side's one ball the first of its players' on which anything is written. */
function whoseCard({ cards, standing }: Asked, by: string | undefined): EntryId {
  if (by !== undefined && cards.has(by)) return playerId(by)
  const own = standing.players.filter((id) => cards.has(id))
  const written = own.find((id) => cards.get(id)?.scores.some((score) => score !== null))
  return playerId(written ?? own[0] ?? standing.players[0] ?? '')
}

/** What the engine says beyond "as written": a penalty added by the committee. */
function kept(step: WorkingStep): string {
  return step.sum ? 'The committee added penalty strokes.' : ''
}

function figureOrigin(record: DayRecord, entry: EntryRecord, zone: string): Pick<WorkingStep, 'sentence' | 'clause'> {
  const source = {
    'home-club': 'The handicap index of the home club.',
    society: 'The society handicap, used as the index on this day.',
    claimed: 'Claimed for this day and accepted by the committee.',
  }[entry.handicapSource]
  const frozen =
    entry.frozen && record.frozenAt
      ? ` Frozen on ${dayInWords(record.frozenAt, zone)} at ${timeInWords(record.frozenAt, zone)}.`
      : ' Not frozen yet.'
  return { sentence: source + frozen, clause: 'Terms of the day' }
}

/** "Written by Emrys Coldbrook and by Una Tarrablane, 12.52 pm. They agree." */
function grossOrigin({ record, cards, names, zone }: Asked, entryId: EntryId, hole: number): string {
  const now = cards.get(entryId)?.holes.find((one) => one.hole === hole)
  if (!now) return 'Not played yet.'
  const ruling = record.rulings.find((one) => one.number === now.ruledBy)
  if (ruling) return `Ruled by ${ruling.byName} on ${dayInWords(ruling.ruledAt, zone)}: ${asSentence(ruling.reason)}`
  const [latest, ...others] = now.opinions
  if (!latest) return 'Nobody has written a score here yet.'
  const at = timeInWords(latest.writtenAt, zone)
  if (now.notAgreed)
    return `${capital(opinionName(names, latest, now.opinions))} wrote ${scoreInWords(latest.score)} at ${at}. ${capital(
      others.map((one) => `${opinionName(names, one, now.opinions)} wrote ${scoreInWords(one.score)}`).join(', '),
    )}. Not agreed: the latest counts until they agree or the committee rules.`
  const by = listed(now.opinions.map((one) => `by ${opinionName(names, one, now.opinions)}`))
  return `Written ${by}, ${at}.${others.length ? ' They agree.' : ''}`
}
