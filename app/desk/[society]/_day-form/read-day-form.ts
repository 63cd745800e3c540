// From the named fields of the form to what the use case asks for. Field names are the places of the faults, so that
// each fault is shown where it belongs.

import { isPublishedFor, proposedFor } from '@/lib/boards/format-of-competition'
import { type CompetitionTerms, PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { editionFor } from '@/lib/rules/editions/editions'
import type { FiveChoices } from '@/lib/rules/formats/format'
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
  return {
    name: text(form, `${at}.name`),
    format,
    terms: {
      ...readKept<Partial<CompetitionTerms>>(text(form, `${at}.terms.kept`)),
      allowance: written ?? text(form, `${at}.terms.allowance`),
      allowanceFrom: same ? 'published' : 'house-choice',
      ...(same ? {} : { allowanceReason: text(form, `${at}.terms.allowanceReason`) || published.sentence }),
      ties: {
        ...(kept ?? { ...PUBLISHED_COUNTBACK, steps: choice?.steps ?? PUBLISHED_COUNTBACK.steps }),
        holesCount: text(form, `${at}.ties.holesCount`) || 'by-number',
      },
      ...(cap ? { maximum: readCap(cap, number(form, `${at}.terms.maximum.strokes`)) } : {}),
      ...(holes ? { namedHoles: readHoles(holes) } : {}),
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
        valuePence: readPounds(text(form, `${prize}.value`)),
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

/** "3, 7, 18"; anything else is left as it is, for the schema to refuse. */
function readHoles(written: string): readonly number[] | string {
  const holes = written
    .split(/[,; ]+/)
    .filter(Boolean)
    .map(Number)
  return holes.every(Number.isInteger) ? [...new Set(holes)] : written
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
