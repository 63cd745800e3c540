// A member list out of a spreadsheet: what each row says, and which rows are no people. Plain decisions.

import { labelsIn } from '@/lib/facts/labels'
import { MENDABLE, type MemberColumn, type MemberImportChoices, type Mendable } from '@/lib/facts/member-import'
import { CANNOT_BE_SHOWN, hasNoSign } from '@/lib/facts/typed-text'
import { genderWord, type SheetColumns } from './member-headings'
import { plainHeading } from './table-file'

type Rows = readonly (readonly string[])[]

export interface CellFault {
  /** The cell to put right. */
  readonly cell: Mendable
  /** What it reads now. */
  readonly written: string
  readonly sentence: string
}

export interface SheetMember {
  /** As the spreadsheet numbers it. */
  readonly row: number
  readonly firstName: string
  readonly familyName: string
  /** The word that tells people of one name apart. */
  readonly knownAs: string | null
  readonly gender: 'men' | 'women' | null
  readonly indexTenths: number | null
  /** Null where the sheet does not say whose figure it is. */
  readonly source: 'home-club' | 'society' | null
  readonly email: string | null
  readonly phone: string | null
  readonly memberSince: number | null
  readonly membershipNumber: string | null
  readonly homeClub: string | null
  /** Null where the list has no such column: what the book says stays. */
  readonly labels: readonly string[] | null
  readonly faults: readonly CellFault[]
}

export interface RowLeftOut {
  readonly row: number
  readonly reads: string
  readonly why: string
}

export interface SheetRows {
  readonly members: readonly SheetMember[]
  /** Rows that are no people: totals, headings between the rows, leavers. They can be brought back. */
  readonly leftOut: readonly RowLeftOut[]
  readonly blank: number
}

export function membersIn(
  rows: Rows,
  columns: SheetColumns,
  choices: Pick<MemberImportChoices, 'mended' | 'broughtBack'>,
): SheetRows {
  const headings = columns.headingRow === 0 ? null : rows[columns.headingRow - 1]
  const place = (as: MemberColumn) => columns.columns.find((column) => column.as === as)?.at
  const members: SheetMember[] = []
  const leftOut: RowLeftOut[] = []
  let blank = 0
  rows.forEach((cells, at) => {
    const row = at + 1
    if (row <= columns.headingRow) return
    if (cells.every((cell) => cell === '')) {
      // Blank rows at the foot are nothing that anybody would look for.
      if (rows.slice(at).some((later) => later.some((cell) => cell !== ''))) blank++
      return
    }
    const cell = (as: MemberColumn) => cells[place(as) ?? -1] ?? ''
    const why = choices.broughtBack.includes(row) ? null : noPerson(cells, cell, headings)
    if (why === null) members.push(memberOf(row, cell, (as) => place(as) !== undefined, choices))
    else
      leftOut.push({
        row,
        reads: cells
          .filter((one) => one !== '')
          .join(', ')
          .slice(0, 120),
        why,
      })
  })
  return { members, leftOut, blank }
}

const TOTAL =
  /^(grand |sub-?)?totals?\b|^(number|no\.?|count|sum|average|mean) of\b|^(count|sum|average|mean)\b\W*$|^\d+ (members|players|people)$/i
const SECTION =
  /^(ladies|gents|men|women|juniors?|seniors?|guests?|visitors?|committee|(full|honorary|life|country|social|lady|gentlemen|past|former|lapsed|new|paid|unpaid|playing)? ?members?( \(.*\))?)\W*$/i

/** Why a row is no person; null where it is one. */
function noPerson(
  cells: readonly string[],
  cell: (as: MemberColumn) => string,
  headings: readonly string[] | null | undefined,
): string | null {
  const filled = cells.filter((one) => one !== '')
  if (filled.some((one, at) => TOTAL.test(one) && (at === 0 || filled.length <= 3))) return 'a total, not a person'
  if (headings && filled.length > 1 && cells.every((one, at) => one === '' || one === headings[at]))
    return 'the headings again'
  if (filled.length === 1 && SECTION.test(filled[0]!)) return 'a heading, not a person'
  if (/^(guest|visitor)/i.test(cell('kind'))) return 'a guest, not a member'
  return cell('leftOn') === '' ? null : 'somebody who has left'
}

function memberOf(
  row: number,
  read: (as: MemberColumn) => string,
  has: (as: MemberColumn) => boolean,
  choices: Pick<MemberImportChoices, 'mended'>,
): SheetMember {
  const faults: CellFault[] = []
  const mended = choices.mended[String(row)] ?? {}
  const named = nameIn(read)
  const figured = figureCell(read)
  const cell = (which: Mendable): string => {
    const right = mended[which]
    if (right !== undefined) return right.trim()
    if (which === 'firstName' || which === 'familyName') return named[which]
    return which === 'figure' ? figured.written : read(which)
  }
  const fault = (which: Mendable, sentence: string) => {
    faults.push({ cell: which, written: cell(which), sentence })
    return null
  }
  const [firstName, familyName] = [cell('firstName'), cell('familyName')]
  if (firstName === '') fault('firstName', 'The first name is missing.')
  if (familyName === '') fault('familyName', 'The family name is missing.')
  for (const name of ['firstName', 'familyName'] as const)
    if (cell(name).length > 80) fault(name, 'A name has at most 80 letters.')
  if (cell('knownAs').length > 30 || /[()]/.test(cell('knownAs')))
    fault('knownAs', 'Told apart by a word or two: at most 30 letters, without brackets.')
  const figure = figureIn(cell('figure'))
  if (figure === 'fault')
    fault(
      'figure',
      `The handicap reads “${cell('figure')}”. A number is needed, such as 18.4, or +2.1 for a plus handicap.`,
    )
  const email = cell('email') === '' ? null : cell('email').replace(/^mailto:/i, '')
  if (email !== null && (!/^[^\s@]+@[^\s@]+\.[^\s@.]{2,}$/.test(email) || email.length > 120))
    fault('email', `“${email.slice(0, 60)}” is not a whole e-mail address.`)
  const gender = genderIn(cell('gender'))
  if (gender === 'fault') fault('gender', `“${cell('gender').slice(0, 40)}” is neither men nor women.`)
  const labels = has('labels') || mended.labels !== undefined ? labelsIn(cell('labels').replace(/["[\]]/g, '')) : null
  if (labels?.some((word) => word.length > 30) || (labels?.length ?? 0) > 8)
    fault('labels', 'Tags: at most eight words of 30 letters, with commas between them.')
  const year = /\b(19|20)\d\d\b/.exec(cell('memberSince'))?.[0]
  if (cell('memberSince') !== '' && year === undefined)
    fault('memberSince', `Member since “${cell('memberSince').slice(0, 40)}”: a year is needed, such as 1998.`)
  if (cell('membershipNumber').length > 30) fault('membershipNumber', 'A membership number has at most 30 signs.')
  if (cell('homeClub').length > 80) fault('homeClub', 'The name of a club has at most 80 letters.')
  for (const which of MENDABLE)
    if (hasNoSign(cell(which)) && !faults.some((one) => one.cell === which)) fault(which, CANNOT_BE_SHOWN)
  const nothing = (written: string) => (written === '' ? null : written)
  return {
    row,
    firstName,
    familyName,
    knownAs: nothing(cell('knownAs')),
    gender: gender === 'fault' ? null : gender,
    indexTenths: figure === 'fault' ? null : figure,
    source: figure === null || figure === 'fault' ? null : (sourceIn(read('source')) ?? figured.kept),
    email,
    phone: nothing(cell('phone').slice(0, 40)),
    memberSince: year === undefined ? null : Number(year),
    membershipNumber: nothing(cell('membershipNumber')),
    homeClub: nothing(cell('homeClub')),
    labels,
    faults,
  }
}

/** The column that says most about whose figure it is: an index, a society handicap, or just a handicap. */
function figureCell(read: (as: MemberColumn) => string): { written: string; kept: SheetMember['source'] } {
  if (read('index') !== '') return { written: read('index'), kept: 'home-club' }
  if (read('society') !== '') return { written: read('society'), kept: 'society' }
  return { written: read('figure'), kept: null }
}

const tidy = (name: string) => name.replace(/\s+/g, ' ').trim()
const PARTICLES = [
  'van',
  'von',
  'de',
  'der',
  'den',
  'du',
  'la',
  'le',
  'di',
  'da',
  'del',
  'della',
  'st',
  'st.',
  'ap',
  'ab',
]

/** "Coldbrook, Emrys", "Coldbrook Emrys", "Mr Emrys Coldbrook", or two columns. */
function nameIn(read: (as: MemberColumn) => string): { firstName: string; familyName: string } {
  const apart = { firstName: tidy(read('firstName')), familyName: tidy(read('familyName')) }
  const written = read('surnameFirst') === '' ? read('firstSurname') : read('surnameFirst')
  if (written === '') return apart
  const { firstName, familyName } = splitName(written, read('surnameFirst') !== '')
  return { firstName: apart.firstName || firstName, familyName: apart.familyName || familyName }
}

export function splitName(written: string, surnameFirst: boolean): { firstName: string; familyName: string } {
  const whole = tidy(written)
  const comma = whole.indexOf(',')
  const plain = (name: string) => tidy(name).replace(/^(mr|mrs|ms|miss|dr|rev|prof|sir|capt)\b\.?\s+/i, '')
  if (comma >= 0) return { firstName: plain(whole.slice(comma + 1)), familyName: plain(tidy(whole.slice(0, comma))) }
  const words = plain(whole).split(' ')
  if (words.length < 2) return { firstName: '', familyName: words[0] ?? '' }
  const particle = words.findIndex(
    (word, at) => (surnameFirst || at > 0) && at < words.length - 1 && PARTICLES.includes(word.toLowerCase()),
  )
  if (surnameFirst) {
    let end = 1
    if (particle === 0) while (end < words.length - 1 && PARTICLES.includes(words[end - 1]!.toLowerCase())) end++
    return { firstName: words.slice(end).join(' '), familyName: words.slice(0, end).join(' ') }
  }
  const begin = particle > 0 ? particle : words.length - 1
  return { firstName: words.slice(0, begin).join(' '), familyName: words.slice(begin).join(' ') }
}

/** Tenths; null for nobody has one yet. "18.4*", "18,4" and "18.4 R" are 18.4; "+2.1" and "-2.1" are plus two point one. */
export function figureIn(written: string): number | null | 'fault' {
  const plain = written.replace(/[−–]/g, '-').replace(/\s+/g, '')
  if (/^(|-|--|\/|n\/?a|nh|none|noneyet|nohandicapyet|nohandicap|tb[ac]|\?)$/i.test(plain)) return null
  const match = /^([+-]?)(\d{1,2})(?:[.,](\d)0*)?(?:\*|[a-z]{1,2})?$/i.exec(plain)
  if (!match) return 'fault'
  const size = Number(match[2]) * 10 + Number(match[3] ?? 0)
  const tenths = match[1] === '' ? size : -size + 0
  return tenths > 540 || tenths < -150 ? 'fault' : tenths
}

/** A title that says neither is no fault: the question is asked for that row. */
function genderIn(written: string): 'men' | 'women' | null | 'fault' {
  const plain = plainHeading(written)
  if (plain === '' || ['dr', 'prof', 'rev', 'sir', 'capt', 'major', 'col'].includes(plain)) return null
  return genderWord(written) ?? 'fault'
}

function sourceIn(written: string): 'home-club' | 'society' | null {
  const plain = plainHeading(written)
  if (plain.startsWith('h') || plain.includes('club') || plain.includes('whs')) return 'home-club'
  return plain.startsWith('s') || plain.startsWith('aso') ? 'society' : null
}
