// Which row of a member list has the headings, and what each column probably is. A guess: the officer has the last word.

import type { MemberColumn, MemberImportChoices } from '@/lib/facts/member-import'
import { plainHeading } from './table-file'

type Rows = readonly (readonly string[])[]

/** Headings as `plainHeading` leaves them: small letters and digits only. */
const HEADINGS: Readonly<Record<Exclude<MemberColumn, 'out' | 'surnameFirst' | 'firstSurname'>, readonly string[]>> = {
  firstName: [
    ...['firstname', 'firstnames', 'forename', 'forenames', 'first', 'givenname', 'givennames', 'christianname'],
    ...['knownas', 'preferredname', 'fname', 'memberfirstname', 'playerfirstname'],
  ],
  familyName: [
    ...['surname', 'lastname', 'familyname', 'last', 'secondname', 'sname', 'lname', 'membersurname', 'playersurname'],
  ],
  knownAs: ['toldapartby', 'suffix', 'seniororjunior'],
  gender: [
    ...['gender', 'sex', 'mf', 'mw', 'ml', 'menwomen', 'menorwomen', 'malefemale', 'ladiesgents', 'gentslady', 'sexmf'],
    ...['gendermf', 'gendermw', 'sexmw', 'genderml', 'ladygent', 'title', 'tees', 'playsfromthetees', 'ratedfor'],
    ...['playsfromthetesfor', 'playsfromtheteesfor', 'teesmenorwomen', 'teesfor'],
  ],
  email: ['email', 'emailaddress', 'mail', 'emails', 'emailadd', 'memberemail', 'contactemail'],
  phone: [
    ...['phone', 'mobile', 'telephone', 'tel', 'phonenumber', 'mobilenumber', 'contactnumber', 'mobileno', 'phoneno'],
    ...['telno', 'telephonenumber', 'telephoneno', 'mob', 'cell', 'mobilephone', 'contactno', 'contact', 'homephone'],
  ],
  memberSince: [
    ...['membersince', 'joined', 'since', 'yearjoined', 'datejoined', 'joiningdate', 'joindate', 'yearofjoining'],
    ...['memberfrom', 'joinedin', 'startdate'],
  ],
  source: [
    'source',
    'handicapsource',
    'handicapfrom',
    'from',
    'thefigureis',
    'thehandicapis',
    'handicaptype',
    'kindofhandicap',
  ],
  index: [
    ...['handicapindex', 'hcpindex', 'hcapindex', 'index', 'whsindex', 'whs', 'hi', 'currentindex', 'hindex', 'whshi'],
    ...['handicapindexhomeclub', 'homeclubindex', 'homeclubhandicap', 'homeclubhandicapindex', 'whshandicap'],
    ...['whshandicapindex', 'officialhandicap', 'clubhandicap', 'hcpidx', 'cdhindex', 'indexhomeclub'],
  ],
  society: [
    'societyhandicap',
    'societyhcap',
    'societyhcp',
    'ourhandicap',
    'sochcap',
    'sochcp',
    'sochandicap',
    'societyindex',
  ],
  figure: [
    ...['handicap', 'hcap', 'hcp', 'hcapp', 'hdcp', 'exacthandicap', 'exacthcap', 'exacthcp', 'exact', 'figure'],
    ...['hc', 'hicap', 'hcaps', 'handicaps', 'currenthandicap', 'currenthcap', 'playinghandicap', 'playingoff', 'off'],
    ...['handicap2026', 'newhandicap', 'presenthandicap', 'hcpexact'],
  ],
  membershipNumber: [
    ...[
      'membershipnumber',
      'membershipno',
      'memberno',
      'membernumber',
      'memno',
      'memnumber',
      'membershipid',
      'memberid',
    ],
    ...['cdh', 'cdhnumber', 'cdhno', 'cdhid', 'number', 'no', 'id', 'ref'],
  ],
  homeClub: ['homeclub', 'club', 'homecourse', 'golfclub', 'memberof', 'clubname', 'homegolfclub'],
  labels: [
    'labels',
    'label',
    'words',
    'markedwith',
    'markedwiththewords',
    'group',
    'agegroup',
    'groups',
    'tags',
    'tag',
  ],
  kind: ['kind', 'isa', 'memberorguest', 'guest', 'membertype', 'type'],
  leftOn: ['lefton', 'left', 'dateleft', 'leaver'],
}

const WHOLE = /^(full|whole|players?|members?|golfers?|society)?(names?|players?|members?|golfers?)$/

/** What a heading says by itself; null where it says nothing we know. */
export function columnOf(heading: string): MemberColumn | null {
  const plain = plainHeading(heading)
  if (plain === '') return null
  // Our own export; by people "Known as" is meant of the first name.
  if (heading === 'knownAs') return 'knownAs'
  const exact = (Object.keys(HEADINGS) as (keyof typeof HEADINGS)[]).find((one) => HEADINGS[one].includes(plain))
  if (exact) return exact
  const first = plain.search(/first|forename|given|christian/)
  const last = plain.search(/surname|lastname|familyname|secondname/)
  if (first >= 0 && last >= 0) return last < first ? 'surnameFirst' : 'firstSurname'
  if (WHOLE.test(plain)) return 'firstSurname'
  // "Player name & surname" has both; "Surname of member" has one.
  if (last >= 0)
    return plain.replace(/surname|lastname|familyname|secondname/, '').includes('name') ? 'firstSurname' : 'familyName'
  if (first >= 0) return 'firstName'
  // "Handicap (WHS)", "H'cap 2026", "Society handicap 1 March": the words decide, whatever stands beside them.
  const handicap = /handicap|hcap|hcp/.test(plain)
  if (handicap && /society|our/.test(plain)) return 'society'
  if (/whs|handicapindex|hcpindex|homeclub/.test(plain) && (handicap || /index|whs/.test(plain))) return 'index'
  if (handicap) return 'figure'
  if (plain.includes('email')) return 'email'
  if (/mobile|telephone|phone/.test(plain)) return 'phone'
  if (/^(sex|gender)/.test(plain)) return 'gender'
  if (/member(ship)?(no|number)/.test(plain)) return 'membershipNumber'
  return null
}

export interface SheetColumn {
  readonly at: number
  readonly heading: string
  readonly as: MemberColumn
  /** True where the officer said so. */
  readonly said: boolean
}

export interface SheetColumns {
  /** As the spreadsheet numbers it; 0 where the file has no headings. */
  readonly headingRow: number
  readonly columns: readonly SheetColumn[]
}

/** The row of the first thirty that names most columns. Where none names two, the file has no headings that we know. */
function headingRowOf(rows: Rows): number {
  const known = (row: readonly string[]) => new Set(row.map(columnOf).filter((one) => one !== null)).size
  const best = rows
    .slice(0, 30)
    .map((row, at) => ({ at, count: known(row) }))
    .reduce((most, one) => (one.count > most.count ? one : most), { at: -1, count: 1 })
  if (best.count >= 2) return best.at + 1
  // A list of one column has one heading.
  const only = rows.findIndex((row) => row.some((cell) => cell !== ''))
  if (only >= 0 && rows[only]!.some((cell) => columnOf(cell) !== null)) return only + 1
  // Headings in words of its own are still headings: a first full row without a digit or an address in it.
  const first = rows.findIndex((row) => row.filter((cell) => cell !== '').length >= 2)
  const words = first >= 0 && rows[first]!.every((cell) => !/\d|@/.test(cell))
  const below = rows.slice(first + 1).some((row) => row.some((cell) => /\d|@/.test(cell)))
  return words && below ? first + 1 : 0
}

export function memberColumns(rows: Rows, choices: Pick<MemberImportChoices, 'headingRow' | 'columns'>): SheetColumns {
  const headingRow = Math.min(choices.headingRow ?? headingRowOf(rows), rows.length)
  const headings = headingRow === 0 ? [] : (rows[headingRow - 1] ?? [])
  const below = rows.slice(headingRow)
  const width = Math.max(headings.length, ...below.map((row) => row.length), 0)
  const taken = new Set<MemberColumn>()
  const columns: SheetColumn[] = []
  const weak = (heading: string) => ['title', 'tees'].includes(plainHeading(heading))
  const saysGender = headings.some((heading) => columnOf(heading) === 'gender' && !weak(heading))
  for (let at = 0; at < width; at++) {
    const heading = headings[at] ?? ''
    const values = below.map((row) => row[at] ?? '').filter((cell) => cell !== '')
    if (heading === '' && values.length === 0) continue
    const said = choices.columns[String(at)]
    const guess = said ?? (saysGender && weak(heading) ? 'out' : guessed(heading, values))
    // Of two columns that look alike the first counts; the second is there to be pointed at.
    const as = said === undefined && guess !== 'out' && taken.has(guess) ? 'out' : guess
    taken.add(as)
    columns.push({ at, heading, as, said: said !== undefined })
  }
  return { headingRow, columns: withOneName(columns) }
}

/** First and family name in columns of their own say more than one column with both. */
function withOneName(columns: readonly SheetColumn[]): readonly SheetColumn[] {
  const both = ['firstName', 'familyName'].every((one) => columns.some((column) => column.as === one))
  if (!both) {
    // "Name" beside "First name" is the surname.
    const first = columns.some((column) => column.as === 'firstName')
    const family = columns.some((column) => column.as === 'familyName')
    return columns.map((column) =>
      !column.said && (column.as === 'firstSurname' || column.as === 'surnameFirst') && first && !family
        ? { ...column, as: 'familyName' }
        : !column.said && (column.as === 'firstSurname' || column.as === 'surnameFirst') && family && !first
          ? { ...column, as: 'firstName' }
          : column,
    )
  }
  return columns.map((column) =>
    !column.said && (column.as === 'firstSurname' || column.as === 'surnameFirst') ? { ...column, as: 'out' } : column,
  )
}

function guessed(heading: string, values: readonly string[]): MemberColumn {
  const named = columnOf(heading)
  const most = (test: (value: string) => boolean) =>
    values.length > 0 && values.filter(test).length * 3 >= values.length * 2
  if (named === 'firstSurname' || named === 'surnameFirst')
    return most((value) => /^[^,]+,[^,]+$/.test(value)) ? 'surnameFirst' : named
  // "Mr" and "Mrs" say who is who; a column of "Captain" and "Dr" does not, and "Yellow" names tees.
  if (named === 'gender' && !values.some((value) => genderWord(value) !== null)) return 'out'
  if (named === 'membershipNumber' && ['no', 'number', 'id', 'ref'].includes(plainHeading(heading)))
    return values.every((value, at) => value === String(at + 1)) ? 'out' : 'membershipNumber'
  if (named !== null) return named
  if (heading !== '' && !/^\d/.test(heading)) return most((value) => /^\S+@\S+\.\S+$/.test(value)) ? 'email' : 'out'
  if (most((value) => /^\S+@\S+$/.test(value))) return 'email'
  if (most((value) => genderWord(value) !== null)) return 'gender'
  if (most((value) => /^[+-]?\d{1,2}[.,]\d\*?$/.test(value))) return 'figure'
  if (most((value) => /^[^,\d]+, ?[^,\d]+$/.test(value))) return 'surnameFirst'
  if (most((value) => /^\p{L}[\p{L}'’.-]+( [\p{L}'’.-]+)+$/u.test(value))) return 'firstSurname'
  return 'out'
}

const MEN = ['m', 'man', 'men', 'mens', 'male', 'males', 'mr', 'gent', 'gents', 'gentleman', 'gentlemen', 'g', 'boy']
const WOMEN = [
  ...['f', 'w', 'l', 'woman', 'women', 'womens', 'female', 'females', 'lady', 'ladies', 'ladys', 'mrs', 'ms', 'miss'],
  'girl',
]

export function genderWord(written: string): 'men' | 'women' | null {
  const plain = plainHeading(written)
  if (MEN.includes(plain)) return 'men'
  return WOMEN.includes(plain) ? 'women' : null
}
