// Promise: whatever is typed, pasted or imported, no name, title or reason in the book holds a sign that shows on no
// screen or turns the writing round; what people are really called passes as it is. (Which signs show nothing:
// Default_Ignorable_Code_Point and the bidirectional controls of the Unicode Standard, sections 23.2 and 23.3.)
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { callOffDay, enterGuest, giveDuty, keepCourse, keepPerson } from '@/lib/facts/commands'
import { parseDayFile } from '@/lib/facts/day-file'
import { callAgain } from '@/lib/facts/match-commands'
import { societySettings } from '@/lib/facts/society-settings'
import {
  CANNOT_BE_SHOWN,
  cleanLine,
  cleanLines,
  harmlessLine,
  harmlessLines,
  hasNoSign,
  typedLine,
} from '@/lib/facts/typed-text'
import { parseInput } from '@/lib/society/parse-input'
import { dayFile } from './day-file-example'

const TURNING = /[\u200E\u200F\u061C\u202A-\u202E\u2066-\u2069]/
const person = (over: object) => ({
  firstName: 'Una',
  familyName: 'Tarrablane',
  gender: 'women',
  kind: 'member',
  handicapSource: 'home-club',
  indexTenths: 247,
  ...over,
})

const NAMES = [
  'O’Dowd',
  "D'Arcy",
  'Smith-Wren',
  'Zoë',
  'Łukasz',
  'Þórdís',
  'Nguyễn Thị Ánh',
  'Αθηνά',
  'Борис',
  'محمد',
  'עדי',
  'राजेश',
  'க்ஷேமா',
  '王小明',
  'ひろし',
  '김민준',
  'ჯუმბერ',
  // A joiner inside a Persian name, and one after a Devanagari virama: both change what is seen.
  'علی\u200Cرضا',
  'क\u094D\u200Dष',
  // A Han variant, and a flag of tags, which a society may well put into the name of a match.
  '葛\u{E0100}城',
  'Wales \u{1F3F4}\u{E0067}\u{E0062}\u{E0077}\u{E006C}\u{E0073}\u{E007F} 2031',
]

describe('a name', () => {
  it.each(NAMES)('%s passes as it is', (name) => {
    expect(keepPerson.parse(person({ firstName: name })).firstName).toBe(name.normalize('NFC'))
  })

  it.each([
    ['one that poses as another', 'Pe\u200Bter', 'Peter'],
    ['a joiner between Latin letters', 'Pe\u200Cter', 'Peter'],
    ['a joiner at the end', 'علی\u200C', 'علی'],
    ['turned round', '\u202Eretep\u202C', 'retep'],
    ['a telephone number as a phone copies it', '\u202A01632 960123\u202C', '01632 960123'],
    ['isolated', '\u2066Peter\u2069', 'Peter'],
    ['a soft hyphen and a byte order mark', '\uFEFFTren\u00ADnor', 'Trennor'],
    ['a cell of two lines', 'Peter\r\nMarsh', 'Peter Marsh'],
    ['a tab and hard spaces', 'Peter\t\u00A0\u2003Marsh ', 'Peter Marsh'],
    ['letter and accent apart', 'Zoe\u0308', 'Zoë'],
  ])('is cleaned: %s', (_, typed, read) => {
    expect(keepPerson.parse(person({ firstName: typed })).firstName).toBe(read)
  })

  it.each([
    ['NUL', 'Pe\0ter'],
    ['escape', '\u001B[31mPeter'],
    ['delete', 'Peter\u007F'],
    ['a control of the second row', 'Pe\u0090ter'],
    ['half a sign', 'Peter\uD83C'],
    ['no character', 'Peter\uFFFF'],
  ])('is refused in one sentence: %s', (_, typed) => {
    const read = parseInput(keepPerson, person({ firstName: typed }))
    expect(read.ok || read.faults?.map((one) => [one.place, one.sentence])).toEqual([['firstName', CANNOT_BE_SHOWN]])
  })

  it.each(['\u200B', '\u202E \u2066', '\u3164', '\u00A0', '\u2060\uFEFF'])('%j alone is no name', (typed) => {
    const read = parseInput(keepPerson, person({ familyName: typed }))
    expect(read.ok || read.sentence).toBe('A name is needed.')
  })
})

// Every sign there is, with what does harm, and what belongs to it, far more often than by chance.
const sign = fc.oneof(
  fc.string({ unit: 'binary', minLength: 1, maxLength: 1 }),
  fc.integer({ min: 0, max: 0x2fff }).map((code) => String.fromCharCode(code)),
  fc.integer({ min: 0xd800, max: 0xffff }).map((code) => String.fromCharCode(code)),
  fc.constantFrom(
    ...'\0\t\n\r\u001B\u00AD\u034F\u061C\u180E\u200B\u200C\u200D\u200E\u202A\u202E\u2028\u2066\u2069\uFE0F\uFEFF',
  ),
  fc.constantFrom('\u{1F3F4}', '\u{E0067}', '\u{E007F}', '\u{E0100}', 'é', 'e\u0301', 'ع', 'क\u094D', '葛', '⛳', 'A'),
)
const text = fc.array(sign, { maxLength: 12 }).map((signs) => signs.join(''))
const numRuns = Number(process.env.TYPED_TEXTS ?? 1500)

describe('any text', () => {
  it('is refused, or has nothing in it that cannot be seen, and reads the same when it is saved again', () => {
    fc.assert(
      fc.property(text, (typed) => {
        const read = typedLine().safeParse(typed)
        if (!read.success) {
          expect(hasNoSign(typed)).toBe(true)
          expect(read.error.issues.map((one) => one.message)).toEqual([CANNOT_BE_SHOWN])
        } else {
          expect(read.data).not.toMatch(/\p{Cc}|\p{Cs}|\p{Zl}|\p{Zp}/u)
          expect(read.data).not.toMatch(TURNING)
          expect(read.data).not.toMatch(/[\u200B\u2060\uFEFF\u00AD\u3164]/)
          expect(typedLine().parse(read.data)).toBe(read.data)
          // The book is UTF-8: what it gives back is what was saved.
          expect(Buffer.from(read.data, 'utf8').toString('utf8')).toBe(read.data)
        }
      }),
      { numRuns },
    )
  })

  it('of older books is cleaned without a refusal, once and for all', () => {
    fc.assert(
      fc.property(text, (typed) => {
        for (const [clean, harmless] of [
          [cleanLine, harmlessLine],
          [cleanLines, harmlessLines],
        ] as const) {
          const read = harmless(typed)
          expect(hasNoSign(read)).toBe(false)
          expect(read).not.toMatch(TURNING)
          expect(harmless(read)).toBe(read)
          if (!hasNoSign(typed)) expect(read).toBe(clean(typed))
        }
      }),
      { numRuns },
    )
  })

  it('keeps its lines where it may have lines', () => {
    expect(societySettings.parse({ noticeMore: 'One.\r\nTwo\u202E.\n\nThree.' }).noticeMore).toBe(
      'One.\nTwo.\n\nThree.',
    )
    expect(societySettings.parse({ noticeMore: 'Ask\0 us.' }).noticeMore).toBe('Ask us.')
  })
})

describe('the same place', () => {
  it('cleans reasons, guests, courses, duties and teams', () => {
    const odd = '\u202EOld\u200B Oak'
    expect(callOffDay.shape.reason.parse(odd)).toBe('Old Oak')
    expect(enterGuest.shape.familyName.parse(odd)).toBe('Old Oak')
    expect(keepCourse.shape.name.parse(odd)).toBe('Old Oak')
    expect(callAgain.shape.name.parse(odd)).toBe('Old Oak')
    expect(giveDuty.shape.name.parse(odd)).toBe('Old Oak')
  })

  it('cleans the day file, so that two spellings of one id are one', () => {
    const file = dayFile() as { players: { id: string; name: string }[] }
    file.players[0]!.name = '\u202E\0Coldbrook\u200B, Emrys'
    file.players[0]!.id = `${file.players[0]!.id}\u200B`
    const day = parseDayFile(file)
    expect(day.ok && day.value.players[0]!.name).toBe('Coldbrook, Emrys')
    file.players[1]!.id = `${file.players[0]!.id}\u2066`
    expect(parseDayFile(file).ok).toBe(false)
  })

  it('is gone through by every schema of what is typed', () => {
    const elsewhere = new Set(['typed-text.ts', 'settings.ts', 'acts-asked.ts'])
    const around = [
      ...readdirSync('lib/facts').map((name) => join('lib/facts', name)),
      join('lib/store', 'passkeys.ts'),
    ].filter((file) => file.endsWith('.ts') && !elsewhere.has(file.split(/[\\/]/).at(-1)!))
    const found = around.filter((file) => /z\s*\.string\([^)]*\)\s*\.trim\(\)/.test(readFileSync(file, 'utf8')))
    expect(found, 'write typedLine() of lib/facts/typed-text.ts instead of z.string().trim()').toEqual([])
  })
})
