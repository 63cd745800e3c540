// Promise: the headings people really use are recognised, a missing column is one question or one sentence, rows that are
// no people leave themselves out, people of one name are asked about once, and nobody's kind of handicap is guessed.
import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { importMembers, previewMembers } from '@/lib/society/import-members'
import { keepPerson, memberList } from '@/lib/society/keep-person'
import { columnOf, memberColumns } from '@/lib/society/member-headings'
import { splitName } from '@/lib/society/member-sheet'
import type { Book } from '@/lib/store/client'
import { ownBook } from '../../setup/copy'
import { got, type World, world } from './world'

let close: () => Promise<void>
let book: Book
let w: World
beforeAll(async () => {
  const own = await ownBook()
  close = own.close
  book = own.book
  w = await world()
})
afterAll(() => close())

const csv = (text: string, choices: object = {}) => ({
  fileName: 'members.csv',
  bytes: new TextEncoder().encode(text),
  choices,
})
const preview = async (text: string, choices: object = {}) => got(await previewMembers(w.actor, csv(text, choices)))
async function imported(text: string, choices: object = {}) {
  const { digest } = await preview(text, choices)
  return got(await importMembers(w.actor, { ...csv(text, choices), digest }))
}

describe('a heading', () => {
  it.each([
    ['Surname, First name', 'surnameFirst'],
    ['Surname & first name', 'surnameFirst'],
    ['First name / Surname', 'firstSurname'],
    ['Player name & surname', 'firstSurname'],
    ['Player', 'firstSurname'],
    ['Full Name', 'firstSurname'],
    ['Forename', 'firstName'],
    ['Known as', 'firstName'],
    ['LAST NAME', 'familyName'],
    ['Sex (M/F)', 'gender'],
    ['Gender', 'gender'],
    ['Rated for', 'gender'],
    ['Plays from the tees for', 'gender'],
    ["H'cap", 'figure'],
    ['Handicap (March)', 'figure'],
    ['Handicap Index', 'index'],
    ['WHS HI', 'index'],
    ['Handicap (WHS)', 'index'],
    ['Society h’cap', 'society'],
    ['The figure is', 'source'],
    ['E-Mail address', 'email'],
    ['Mobile No.', 'phone'],
    ['Year joined', 'memberSince'],
    ['Mem. No.', 'membershipNumber'],
    ['CDH number', 'membershipNumber'],
    ['Home Club', 'homeClub'],
    ['Marked with the words', 'labels'],
    ['Locker', null],
  ] as const)('%j', (heading, column) => {
    expect(columnOf(heading)).toBe(column)
  })

  it('of our own export is recognised, every one of a person', () => {
    const schema = readFileSync('prisma/schema.prisma', 'utf8')
    const person = /model Person \{([^}]*)\}/.exec(schema)![1]!
    const names = [...person.matchAll(/^\s+(\w+)\s+(?:String|Int|Boolean|DateTime)/gm)].map((one) => one[1]!)
    expect(names).toContain('membershipNumber')
    const rows = [names, names.map((name) => (name === 'gender' ? 'men' : name === 'labels' ? '["senior"]' : '1'))]
    const read = memberColumns(rows, { headingRow: null, columns: {} }).columns
    const as = Object.fromEntries(read.map((column) => [column.heading, column.as]))
    for (const name of [
      'firstName',
      'familyName',
      'gender',
      'email',
      'phone',
      'memberSince',
      'labels',
      'kind',
      'leftOn',
    ])
      expect(as[name]).toBe(name)
    expect(as).toMatchObject({ handicapSource: 'source', membershipNumber: 'membershipNumber', homeClub: 'homeClub' })
  })

  it('of the sample file is recognised, and the sample is imported without a question', async () => {
    const bytes = new Uint8Array(readFileSync('public/samples/members.csv'))
    const sample = got(await previewMembers({ ...w.actor }, { fileName: 'members.csv', bytes }))
    expect(sample.columns.filter((column) => column.as === 'out')).toEqual([])
    expect(sample).toMatchObject({ questions: [], faults: [] })
    expect(sample.rows.length + sample.look.length).toBe(3)
  })
})

describe('a whole name is split', () => {
  it.each([
    ['Coldbrook, Emrys', false, 'Emrys', 'Coldbrook'],
    ['Coldbrook, Mr Emrys', true, 'Emrys', 'Coldbrook'],
    ['Coldbrook Emrys', true, 'Emrys', 'Coldbrook'],
    ['Emrys John Coldbrook', false, 'Emrys John', 'Coldbrook'],
    ['Mrs Ada van der Quill', false, 'Ada', 'van der Quill'],
    ['van der Quill Ada', true, 'Ada', 'van der Quill'],
    ['Coldbrook', false, '', 'Coldbrook'],
  ] as const)('%j, surname first: %s', (written, first, firstName, familyName) => {
    expect(splitName(written, first)).toEqual({ firstName, familyName })
  })
})

it('finds headings that are not in the first row, and takes columns that are pointed at', async () => {
  const text = 'Old Mill\nList of 3 March\n\nSurname of player;Rufname;Wie gut\nPine;Ann;12,4\nAlder;Bob;+1,2\n'
  const guessed = await preview(text)
  expect(guessed.headingRow).toBe(4)
  expect(guessed.questions.map((one) => one.about)).toEqual(['names'])
  expect(guessed).toMatchObject({ ready: false, look: [], rows: [] })
  const pointed = await preview(text, {
    columns: { 0: 'familyName', 1: 'firstName', 2: 'index' },
    gender: 'men',
    mended: { 5: { gender: 'women' } },
  })
  expect(pointed.rows.map((row) => [row.row, row.firstName, row.familyName, row.gender, row.figure])).toEqual([
    [5, 'Ann', 'Pine', 'women', '12.4'],
    [6, 'Bob', 'Alder', 'men', '+1.2'],
  ])
  expect(pointed).toMatchObject({ ready: true, genderChosen: true })
})

it('asks once where men and women are not said, and says once that there is no handicap', async () => {
  const text = `Name\n${Array.from({ length: 54 }, (_, at) => `Ann Pine${String.fromCharCode(97 + (at % 26))}${at > 25 ? 'x' : ''}${at > 51 ? 'y' : ''}`).join('\n')}`
  const asked = await preview(text)
  expect(asked.look).toEqual([])
  expect(asked.faults).toEqual([])
  expect(asked.questions.map((one) => one.about)).toEqual(['gender'])
  expect(asked.questions[0]!.sentence).toContain('54 people')
  expect(asked.notes).toContain('No column has a handicap: new members come without one.')
  expect((await preview(text, { gender: 'each' })).look).toHaveLength(54)
  expect(await preview(text, { gender: 'women' })).toMatchObject({ ready: true, look: [] })
})

it('asks which kind of handicap a column headed “Handicap” has, and never guesses', async () => {
  const text = 'Name,Handicap,Sex (M/F)\nKit Larch,12.4,M\nSue Larch,,F\n'
  const asked = await preview(text)
  expect(asked.questions.map((one) => one.about)).toEqual(['handicap'])
  expect(asked.questions[0]!.sentence).toContain('is the handicap of one person')
  const refused = await importMembers(w.actor, { ...csv(text), digest: asked.digest })
  expect(refused).toMatchObject({ code: 'file-has-faults' })
  await imported(text, { handicap: 'home-club' })
  const kit = got(await memberList(w.actor)).find((one) => one.firstName === 'Kit')
  expect(kit).toMatchObject({ handicapSource: 'home-club', figure: '12.4' })
})

it('leaves totals, headings between the rows, guests and leavers out by itself; they can be brought back', async () => {
  const text = [
    'First name,Surname,M/F,Index,Kind,Left on',
    'LADIES,,,,,',
    'Ida,Rowan,F,20.1,member,',
    'First name,Surname,M/F,Index,Kind,Left on',
    'Ola,Rowan,F,20.2,guest,',
    'Una,Rowan,F,20.3,member,2025-01-01',
    ',,,,,',
    'Total members,,2,,,',
    '',
  ].join('\n')
  const seen = await preview(text)
  expect(seen.rows.map((row) => row.row)).toEqual([3])
  expect(seen.leftOut.map((one) => [one.row, one.why])).toEqual([
    [2, 'a heading, not a person'],
    [4, 'the headings again'],
    [5, 'a guest, not a member'],
    [6, 'somebody who has left'],
    [8, 'a total, not a person'],
  ])
  expect(seen.blank).toBe(1)
  expect(seen.ready).toBe(true)
  expect((await preview(text, { broughtBack: [5] })).rows.map((row) => row.row)).toEqual([3, 5])
})

it('brings the membership number and the home club, and keeps a father and his son apart', async () => {
  const father = {
    firstName: 'Tam',
    familyName: 'Elder',
    gender: 'men',
    kind: 'member',
    handicapSource: 'home-club',
  } as const
  got(await keepPerson(w.actor, { ...father, indexTenths: 121, email: 'tam@example.org' }))
  const text = [
    'First name,Surname,M/F,Index,E-mail,Mem no,Home club',
    'Tam,Elder,M,12.1,tam@example.org,7,Redgate',
    'Tam,Elder,M,24.0,young.tam@example.org,8,Redgate',
  ].join('\n')
  const seen = await preview(text)
  expect(seen.rows.map((row) => [row.row, row.sentence])).toEqual([[2, 'membership number 7; home club Redgate.']])
  expect(seen.look.map((row) => [row.row, row.who])).toEqual([[3, []]])
  const unnamed = await preview(text, { who: { 3: 'new' } })
  expect(unnamed.look.map((row) => row.cells)).toEqual([[{ cell: 'knownAs', written: '' }]])
  const two = { who: { 3: 'new' }, mended: { 3: { knownAs: 'junior' } } }
  expect(await imported(text, two)).toEqual({ added: 1, changed: 1, unchanged: 0, leftOut: 0 })
  const elders = await book.person.findMany({ where: { familyName: 'Elder' }, orderBy: { membershipNumber: 'asc' } })
  expect(elders.map((one) => [one.membershipNumber, one.homeClub])).toEqual([
    ['7', 'Redgate'],
    ['8', 'Redgate'],
  ])
  // From now on the number tells them apart; without it the list is asked, once a row.
  expect((await preview(text)).rows.map((row) => row.what)).toEqual(['unchanged', 'unchanged'])
  const bare = await preview('First name,Surname,Index\nTam,Elder,23.0\n')
  expect(bare.look[0]!.who).toHaveLength(2)
  const son = (await book.person.findFirstOrThrow({ where: { membershipNumber: '8' } })).id
  expect((await preview('First name,Surname,Index\nTam,Elder,23.0\n', { who: { 2: son } })).rows[0]).toMatchObject({
    what: 'changed',
    sentence: 'Handicap 24.0 becomes 23.0.',
  })
})

it('asks for the word that tells two newcomers of one name apart, whichever of their rows was answered first', async () => {
  const text = 'First name,Surname,M/F,Index\nLudo,Harrowfen,M,25.4\nLudo,Harrowfen,M,9.1\n'
  const two = await preview(text, { who: { 3: 'new' } })
  expect(two.look.map((row) => [row.row, row.cells])).toEqual([[3, [{ cell: 'knownAs', written: '' }]]])
  const both = await preview(text, { who: { 2: 'new', 3: 'new' } })
  expect(both.look.map((row) => [row.row, row.cells])).toEqual([[3, [{ cell: 'knownAs', written: '' }]]])
  const apart = { who: { 3: 'new' }, mended: { 3: { knownAs: 'junior' } } }
  expect((await preview(text, apart)).rows.map((row) => row.what)).toEqual(['new', 'new'])
})

it('asks before somebody who differs is taken for the person in the list', async () => {
  const text = 'First name,Surname,M/F,Index\nMagnus,Storrey,F,30.0\n'
  const seen = await preview(text)
  expect(seen.rows).toEqual([])
  expect(seen.look[0]!.who).toHaveLength(1)
  const other = { who: { 2: 'new' }, mended: { 2: { knownAs: 'of Rowan' } } }
  expect((await preview(text, other)).rows[0]).toMatchObject({ what: 'new' })
})

it('refuses choices that are no choices', async () => {
  expect(await previewMembers(w.actor, csv('Name\nA B\n', { columns: { 0: 'anything' } }))).toMatchObject({
    code: 'not-understood',
  })
})
