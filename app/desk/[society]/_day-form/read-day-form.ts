// From the named fields of the form to what the use case asks for. Field names are the places of the faults, so that
// each fault is shown where it belongs.

import { isPublishedFor, proposedFor } from '@/lib/boards/format-of-competition'
import { type CompetitionTerms, PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { editionFor } from '@/lib/rules/editions/editions'
import type { FiveChoices } from '@/lib/rules/formats/format'
import { holesIn, MORE_FIELDS, type MoreDraft, termsOfMore } from './more-draft'
import { choicesOf, FIVE } from './own-format'
import { KEPT_AS_IT_IS, TIE_CHOICES } from './tie-rules'

const text = (form: FormData, name: string) => String(form.get(name) ?? '').trim()
const orNull = (form: FormData, name: string) => text(form, name) || null
const number = (form: FormData, name: string) => (text(form, name) === '' ? null : Number(text(form, name)))

function rowsOf(form: FormData, before: string): readonly number[] {
  const found = new Set<number>()
  for (const name of form.keys()) {
    if (!name.startsWith(`${before}[`)) continue
    const place = Number.parseInt(name.slice(before.length + 1), 10)
    if (Number.isInteger(place)) found.add(place)
  }
  return [...found].sort((one, other) => one - other)
}

/** "95" is a percentage; "35/15" or "35, 15" are shares of a side's handicaps, lowest first. */
export function readAllowance(written: string): number | readonly number[] | null {
  const parts = written
    .replaceAll('%', '')
    .split(/[/,; ]+/)
    .filter(Boolean)
    .map(Number)
  if (parts.length === 0 || parts.some((part) => !Number.isInteger(part))) return null
  return parts.length === 1 ? (parts[0] ?? null) : parts
}

export const writtenAllowance = (allowance: number | readonly number[]) =>
  typeof allowance === 'number' ? String(allowance) : allowance.join('/')

/** Raw, still to be parsed by the schema: what cannot be read is left as it is, for the schema to refuse in its place. */
export function readDayForm(form: FormData): unknown {
  const date = text(form, 'date')
  const expected = number(form, 'expected') ?? 0
  return {
    seasonId: text(form, 'seasonId'),
    name: text(form, 'name'),
    date,
    courseId: text(form, 'courseId'),
    holes: number(form, 'holes') ?? 18,
    startKind: text(form, 'startKind') || 'tee-times',
    firstTee: text(form, 'firstTee'),
    intervalMinutes: number(form, 'intervalMinutes') ?? 0,
    entriesCloseOn: orNull(form, 'entriesCloseOn'),
    places: number(form, 'places'),
    teeMen: orNull(form, 'teeMen'),
    teeWomen: orNull(form, 'teeWomen'),
    competitions: rowsOf(form, 'competitions').map((place) =>
      readCompetition(form, `competitions[${place}]`, expected, editionFor(date)),
    ),
  }
}

function readCompetition(form: FormData, at: string, expected: number, edition: string): unknown {
  const format = text(form, `${at}.format`)
  const written = readAllowance(text(form, `${at}.terms.allowance`))
  const own = form.has(`${at}.terms.custom.side`) ? readOwn(form, `${at}.terms.custom`) : {}
  const play = { format, ...(own.choices ? { custom: own.choices } : {}) }
  const published = proposedFor(play, expected, edition)
  const same = isPublishedFor(play, written, edition)
  const choice = TIE_CHOICES.find((one) => one.id === text(form, `${at}.ties`))
  const kept =
    text(form, `${at}.ties`) === KEPT_AS_IT_IS
      ? readKept<CompetitionTerms['ties']>(text(form, `${at}.ties.kept`))
      : null
  const cap = text(form, `${at}.terms.maximum`)
  const men = number(form, `${at}.terms.handicapLimit.men`)
  const women = number(form, `${at}.terms.handicapLimit.women`)
  const holes = text(form, `${at}.terms.namedHoles`)
  // Asked once for the whole day; every competition keeps it, so that each says what its prizes go by.
  const onePrize = text(form, 'onePrize')
  const sidesPrizes = text(form, 'sidesPrizes')
  return {
    name: text(form, `${at}.name`),
    format,
    terms: {
      ...termsOfMore(readMore(form, at), null),
      allowance: written ?? text(form, `${at}.terms.allowance`),
      allowanceFrom: same ? 'published' : 'house-choice',
      ...(same ? {} : { allowanceReason: text(form, `${at}.terms.allowanceReason`) || published.sentence }),
      ties: {
        ...(kept ?? { ...PUBLISHED_COUNTBACK, steps: choice?.steps ?? PUBLISHED_COUNTBACK.steps }),
        holesCount: text(form, `${at}.ties.holesCount`) || 'by-number',
        fractions: text(form, `${at}.ties.fractions`) || kept?.fractions || 'kept',
      },
      ...(cap ? { maximum: readCap(cap, number(form, `${at}.terms.maximum.strokes`)) } : {}),
      ...(holes ? { namedHoles: holesIn(holes) } : {}),
      ...(onePrize && onePrize !== 'by-order' ? { onePrize } : {}),
      ...(sidesPrizes && sidesPrizes !== 'apart' ? { sidesPrizes } : {}),
      ...(men === null && women === null
        ? {}
        : { handicapLimit: { ...(men === null ? {} : { men }), ...(women === null ? {} : { women }) } }),
      ...own.terms,
      guests: form.get(`${at}.guestPrizes`) ? 'for-every-prize' : 'guest-prize-only',
    },
    prizes: rowsOf(form, `${at}.prizes`)
      .map((place) => `${at}.prizes[${place}]`)
      .filter((prize) => text(form, `${prize}.name`) !== '')
      .map((prize) => ({
        name: text(form, `${prize}.name`),
        place: number(form, `${prize}.place`) ?? 1,
        eligible: text(form, `${prize}.eligible`) || 'members',
        division: orNull(form, `${prize}.division`),
        valuePence: readPounds(text(form, `${prize}.valuePence`)),
      })),
  }
}

/** What the form carries along unseen; nothing when somebody wrote over it. */
function readKept<T>(json: string): T | null {
  try {
    return JSON.parse(json)
  } catch {
    return null
  }
}

const readCap = (kind: string, strokes: number | null) => (kind === 'fixed' ? { kind, strokes } : { kind })

function readMore(form: FormData, at: string): MoreDraft {
  const fields = Object.fromEntries(MORE_FIELDS.map((field) => [field, text(form, `${at}.terms.${field}`)]))
  return {
    ...(fields as Omit<MoreDraft, 'divisions'>),
    divisions: rowsOf(form, `${at}.terms.divisions`).map((row) => {
      const read = (field: string) => text(form, `${at}.terms.divisions[${row}].${field}`)
      return {
        key: String(row),
        id: read('id'),
        name: read('name'),
        handicapFrom: read('handicapFrom'),
        handicapTo: read('handicapTo'),
        gender: read('gender'),
        guests: read('guests'),
        group: read('group'),
      }
    }),
  }
}

interface OwnRead {
  readonly choices?: FiveChoices
  readonly terms?: { readonly custom: unknown }
}

function readOwn(form: FormData, at: string): OwnRead {
  const [side = '', ball = '', strokes = '', value = '', count = ''] = FIVE.map((one) => text(form, `${at}.${one}`))
  const chosen = { side, ball, strokes, value, count }
  const choices = choicesOf({ chosen, before: readKept<FiveChoices>(text(form, `${at}.before`)) })
  return choices ? { choices, terms: { custom: choices } } : { terms: { custom: chosen } }
}

function readPounds(written: string): number | null {
  const clean = written.replace(/[£\s]/g, '').replace(',', '.')
  return clean === '' ? null : Math.round(Number(clean) * 100)
}
