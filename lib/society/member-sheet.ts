// A member list out of a spreadsheet: which column is which, and what each row says. Plain decisions.

import { labelsIn } from '@/lib/facts/labels'
import type { Fault } from '@/lib/result'
import { plainHeading } from './table-file'

type Column =
  | 'name'
  | 'firstName'
  | 'familyName'
  | 'gender'
  | 'email'
  | 'phone'
  | 'memberSince'
  | 'source'
  | 'index'
  | 'societyFigure'
  | 'figure'
  | 'labels'

const HEADINGS: Readonly<Record<Column, readonly string[]>> = {
  name: ['name', 'player', 'member', 'fullname', 'playername', 'membername', 'golfer'],
  firstName: ['firstname', 'forename', 'first', 'givenname', 'forenames', 'christianname'],
  familyName: ['surname', 'lastname', 'familyname', 'last', 'secondname'],
  gender: ['gender', 'sex', 'mf', 'mw', 'menwomen', 'category'],
  email: ['email', 'emailaddress', 'mail'],
  phone: ['phone', 'mobile', 'telephone', 'tel', 'phonenumber', 'mobilenumber', 'contactnumber'],
  memberSince: ['membersince', 'joined', 'since', 'yearjoined'],
  source: ['source', 'handicapsource', 'handicapfrom'],
  index: ['handicapindex', 'hcpindex', 'hcapindex', 'index', 'whsindex', 'whs', 'hi', 'currentindex', 'hindex'],
  societyFigure: ['societyhandicap', 'societyhcap', 'societyhcp', 'ourhandicap'],
  /** Nobody can say from the heading whose figure it is: whoever is in the book keeps the source known there. */
  figure: ['handicap', 'hcap', 'hcp', 'hcapp', 'hdcp', 'exacthandicap', 'exacthcap', 'exacthcp', 'exact', 'figure'],
  labels: ['labels', 'label', 'words', 'markedwith', 'group', 'agegroup', 'groups'],
}

const READ_AS: Readonly<Record<Column, string>> = {
  name: 'Name',
  firstName: 'First name',
  familyName: 'Family name',
  gender: 'Men or women',
  email: 'E-mail',
  phone: 'Telephone',
  memberSince: 'Member since',
  source: 'Where the figure is kept',
  index: 'Handicap index',
  societyFigure: 'Society handicap',
  figure: 'Handicap, with the source the book knows',
  labels: 'Marked with the words',
}

export interface SheetColumns {
  readonly headingRow: number
  readonly at: Readonly<Partial<Record<Column, number>>>
  readonly shown: readonly { readonly heading: string; readonly readAs: string | null }[]
}

/** The first row that names a player column and one more. Null when no row of the first fifteen does. */
export function memberColumns(rows: readonly (readonly string[])[]): SheetColumns | null {
  for (const [headingRow, row] of rows.slice(0, 15).entries()) {
    const at: Partial<Record<Column, number>> = {}
    const shown = row.map((heading, column) => {
      const plain = plainHeading(heading)
      const found = (Object.keys(HEADINGS) as Column[]).find((one) => HEADINGS[one].includes(plain))
      if (!found || at[found] !== undefined) return { heading, readAs: null }
      at[found] = column
      return { heading, readAs: READ_AS[found] }
    })
    const named = at.name !== undefined || at.familyName !== undefined
    if (named && Object.keys(at).length >= 2) return { headingRow, at, shown }
  }
  return null
}

export interface SheetMember {
  readonly row: number
  readonly firstName: string
  readonly familyName: string
  readonly gender: 'men' | 'women' | null
  readonly indexTenths: number | null
  /** Null where the sheet does not say whose figure it is. */
  readonly source: 'home-club' | 'society' | null
  readonly email: string | null
  readonly phone: string | null
  readonly memberSince: number | null
  /** Null where the list has no such column: what the book says stays. */
  readonly labels: readonly string[] | null
  readonly faults: readonly Fault[]
}

export function membersIn(rows: readonly (readonly string[])[], columns: SheetColumns): readonly SheetMember[] {
  return rows.flatMap((row, at) => {
    if (at <= columns.headingRow || row.every((cell) => cell === '')) return []
    const cell = (column: Column) => {
      const index = columns.at[column]
      return index === undefined ? '' : (row[index] ?? '')
    }
    return [memberOf(at + 1, cell, columns.at.labels !== undefined)]
  })
}

function memberOf(row: number, cell: (column: Column) => string, hasLabels: boolean): SheetMember {
  const faults: Fault[] = []
  const fault = (column: Column, sentence: string) => {
    faults.push({ place: `row ${row}, ${READ_AS[column]}`, sentence })
    return null
  }
  const { firstName, familyName } = nameIn(cell)
  if (firstName === '' || familyName === '')
    fault(cell('name') === '' ? 'familyName' : 'name', 'A first name and a family name are needed.')
  if (firstName.length > 80 || familyName.length > 80) fault('name', 'A name has at most 80 letters.')
  const { column, written, kept } = figureCell(cell)
  const figure = figureIn(written)
  if (figure === 'fault') fault(column, `“${written}” is no handicap: 18.4, or +2.1 for a plus handicap.`)
  const email = cell('email') === '' ? null : cell('email')
  if (email !== null && !/^[^\s@]+@[^\s@]+\.[^\s@]+$/.test(email)) fault('email', `“${email}” is no e-mail address.`)
  const gender = genderIn(cell('gender'))
  if (gender === 'fault') fault('gender', `“${cell('gender')}” is neither men nor women.`)
  const labels = hasLabels ? labelsIn(cell('labels')) : null
  if (labels?.some((word) => word.length > 30) || (labels?.length ?? 0) > 8)
    fault('labels', 'At most eight words of 30 letters, with commas between them.')
  const year = /\b(19|20)\d\d\b/.exec(cell('memberSince'))?.[0]
  if (cell('memberSince') !== '' && year === undefined) fault('memberSince', 'A year is needed, such as 1998.')
  return {
    row,
    firstName,
    familyName,
    gender: gender === 'fault' ? null : gender,
    indexTenths: figure === 'fault' ? null : figure,
    source: figure === null || figure === 'fault' ? null : (sourceIn(cell('source')) ?? kept),
    email,
    phone: cell('phone') === '' ? null : cell('phone').slice(0, 40),
    memberSince: year === undefined ? null : Number(year),
    labels,
    faults,
  }
}

/** The column that says most about whose figure it is: an index, a society handicap, or just a handicap. */
function figureCell(cell: (column: Column) => string): {
  column: 'index' | 'societyFigure' | 'figure'
  written: string
  kept: SheetMember['source']
} {
  if (cell('index') !== '') return { column: 'index', written: cell('index'), kept: 'home-club' }
  if (cell('societyFigure') !== '') return { column: 'societyFigure', written: cell('societyFigure'), kept: 'society' }
  return { column: 'figure', written: cell('figure'), kept: null }
}

/** "Coldbrook, Emrys", "Mr Emrys Coldbrook", or two columns. */
function nameIn(cell: (column: Column) => string): { firstName: string; familyName: string } {
  const tidy = (name: string) => name.replace(/\s+/g, ' ').trim()
  if (cell('familyName') !== '' && cell('name') === '')
    return { firstName: tidy(cell('firstName')), familyName: tidy(cell('familyName')) }
  if (cell('firstName') !== '' && cell('familyName') !== '')
    return { firstName: tidy(cell('firstName')), familyName: tidy(cell('familyName')) }
  const whole = tidy(cell('name')).replace(/^(mr|mrs|ms|miss|dr)\.?\s+/i, '')
  const comma = whole.indexOf(',')
  if (comma >= 0) return { firstName: tidy(whole.slice(comma + 1)), familyName: tidy(whole.slice(0, comma)) }
  const space = whole.lastIndexOf(' ')
  return space < 0
    ? { firstName: '', familyName: whole }
    : { firstName: whole.slice(0, space), familyName: whole.slice(space + 1) }
}

/** Tenths; null for nobody has one yet. "18.4*", "18,4" and "18.4 R" are 18.4; "+2.1" and "-2.1" are plus two point one. */
export function figureIn(written: string): number | null | 'fault' {
  const plain = written.replace(/[−–]/g, '-').replace(/\s+/g, '')
  if (/^(|-|--|\/|n\/?a|nh|none|tb[ac]|\?)$/i.test(plain)) return null
  const match = /^([+-]?)(\d{1,2})(?:[.,](\d)0*)?(?:\*|[a-z]{1,2})?$/i.exec(plain)
  if (!match) return 'fault'
  const size = Number(match[2]) * 10 + Number(match[3] ?? 0)
  const tenths = match[1] === '' ? size : -size + 0
  return tenths > 540 || tenths < -150 ? 'fault' : tenths
}

function genderIn(written: string): 'men' | 'women' | null | 'fault' {
  const plain = plainHeading(written)
  if (plain === '') return null
  if (['m', 'man', 'men', 'mens', 'male', 'mr', 'gent', 'gents', 'gentleman'].includes(plain)) return 'men'
  if (['f', 'w', 'l', 'woman', 'women', 'womens', 'female', 'lady', 'ladies', 'mrs', 'ms', 'miss'].includes(plain))
    return 'women'
  return 'fault'
}

function sourceIn(written: string): 'home-club' | 'society' | null {
  const plain = plainHeading(written)
  if (plain.startsWith('h') || plain.includes('club') || plain.includes('whs')) return 'home-club'
  return plain.startsWith('s') ? 'society' : null
}
