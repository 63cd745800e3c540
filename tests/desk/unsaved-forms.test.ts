// Promise: every form of the desk takes part in the rule of unsaved work, because there is one form to take part with;
// what was moved in the draw is said in words; a refusal that names what comes first leads there.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { roomThatMends } from '@/app/desk/_form/rooms-that-mend'
import { newCompetition, withFormat } from '@/app/desk/[society]/_day-form/drafts'
import { movesBetween, movesInWords, placesOf } from '@/app/desk/[society]/days/[day]/draw/moves'
import type { EntryId } from '@/lib/facts/ids'
import { formatOf } from '@/lib/rules/formats/catalogue'
import { asId } from '../setup/ids'

const filesUnder = (folder: string, end: RegExp): readonly string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile() && end.test(one.name))
    .map((one) => join(one.parentPath, one.name))

/** Forms with nothing of the officer's in them that could be lost. */
const WITHOUT_WORK = new Map([
  ['app/desk/_frame/sign-out.tsx', 'one button that leaves the desk: the page asks before it'],
  ['app/desk/[society]/members/import/rows-to-look-at.tsx', 'corrects a row of a file that is not in the book yet'],
  ['app/desk/[society]/record/page.tsx', 'chooses what the record shows, and is kept in the address'],
])

/** What these remember beside a form is no field of it, or stands inside the form and goes back with it. */
const NOT_TYPED = new Map([
  ['app/desk/[society]/officers/duty-forms.tsx', 'remembers the one-time link, and whether a part is folded out'],
  ['app/desk/[society]/days/[day]/entries/guest-form.tsx', 'its fields remember themselves, inside the form'],
])

describe('the forms of the desk', () => {
  it('are made of the shared form, or watched like it', () => {
    const apart = filesUnder('app/desk', /\.tsx$/).filter((file) => {
      const source = readFileSync(file, 'utf8')
      return /<form\b/.test(source) && !/useUnsavedForm\(/.test(source) && !WITHOUT_WORK.has(file)
    })
    expect(apart).toEqual([])
  })

  it('go back as a whole where their fields live outside of them', () => {
    const apart = filesUnder('app/desk', /\.tsx$/).filter((file) => {
      const source = readFileSync(file, 'utf8')
      const holds = /use(State|Reducer|Import)\b/.test(source)
      return holds && /<ActForm\b|useImport\b/.test(source) && !/<StartsAgain\b/.test(source) && !NOT_TYPED.has(file)
    })
    expect(apart).toEqual([])
  })

  it('stand inside the layout that watches them', () => {
    expect(readFileSync('app/desk/layout.tsx', 'utf8')).toContain('<UnsavedWork>')
  })
})

describe('what was moved in the draw', () => {
  const group = (startTime: string, ...entryIds: string[]) => ({
    startTime,
    startHole: 1,
    entryIds: entryIds.map((one) => asId<EntryId>(one)),
  })
  const saved = placesOf([group('10:00', 'a', 'b'), group('10:11', 'c', 'd')], false)
  const names = [
    [asId<EntryId>('a'), 'Corin Haldane'],
    [asId<EntryId>('c'), 'Petra Ashgill'],
  ] as const

  it('is a name with both times', () => {
    const moves = movesBetween(saved, placesOf([group('10:00', 'c', 'b'), group('10:11', 'a', 'd')], false))
    expect(movesInWords(moves, names)).toBe(
      '2 moves: Corin Haldane 10.00 am to 10.11 am, Petra Ashgill 10.11 am to 10.00 am',
    )
  })

  it('says no group, and an order that changed', () => {
    const out = movesBetween(saved, placesOf([group('10:00', 'b'), group('10:11', 'c', 'd')], false))
    expect(movesInWords(out, names)).toBe('1 move: Corin Haldane 10.00 am to no group')
    const turned = movesBetween(saved, placesOf([group('10:00', 'b', 'a'), group('10:11', 'c', 'd')], false))
    expect(movesInWords(turned, names)).toBe('Another order inside a group')
  })
})

/** Refusals that are answered where they are given. */
const ANSWERED_IN_PLACE = new Set([
  'not-allowed',
  'signed-out',
  'nothing-held',
  'not-understood',
  'draw-not-as-shown',
  'last-secretary',
  // Opening the day again stands on the same page.
  'nothing-changed',
  // Said by a command on the server, where there are no rooms.
  'book-empty',
])

describe('a refusal that names what comes first', () => {
  it('leads to the room where that is done', () => {
    const without = filesUnder('lib/society', /\.ts$/).flatMap((file) =>
      [...readFileSync(file, 'utf8').matchAll(/refused\(\s*'([a-z-]+)',\s*(['"`])((?:(?!\2).)*)\2/g)].flatMap(
        ([, code = '', , sentence = '']) =>
          !/\bfirst\b/.test(sentence) || ANSWERED_IN_PLACE.has(code) || roomThatMends(code, '/desk/s/days/d')
            ? []
            : [`${file}: ${code}`],
      ),
    )
    expect(without).toEqual([])
  })

  it('has no link to the room one stands in', () => {
    expect(roomThatMends('not-frozen', '/desk/s/days/d/draw')?.href).toBe('/desk/s/days/d/handicaps')
    expect(roomThatMends('not-frozen', '/desk/s/days/d/handicaps')).toBeNull()
    expect(roomThatMends('no-course', '/desk/s/new-day')?.href).toBe('/desk/s/courses/new')
  })
})

describe('another format', () => {
  const begun = newCompetition('stableford', 30, '2024')

  it('proposes its own name, unless one was typed', () => {
    const medal = withFormat(begun, 'medal', 30, '2024')
    expect(medal.name).toBe(formatOf('medal')?.name)
    expect(withFormat({ ...medal, name: 'The Lantern', nameTyped: true }, 'par', 30, '2024').name).toBe('The Lantern')
  })

  it('leaves out divisions by handicap that were made for players alone, and says so', () => {
    const division = {
      key: 'd',
      id: 'd1',
      name: 'Division 1',
      handicapFrom: '',
      handicapTo: '15',
      gender: '',
      guests: '',
      group: '',
    }
    const withDivision = {
      ...begun,
      more: { ...begun.more, divisions: [division] },
      prizes: begun.prizes.map((prize) => ({ ...prize, division: 'd1' })),
    }
    const sides = withFormat(withDivision, 'four-ball-stableford', 30, '2024')
    expect(sides.more.divisions).toEqual([])
    expect(sides.prizes.map((prize) => prize.division)).toEqual([''])
    expect(sides.dropped).toContain('Division 1')
    const alone = withFormat(withDivision, 'medal', 30, '2024')
    expect(alone.more.divisions).toHaveLength(1)
    expect(alone.dropped).toBeNull()
  })
})
