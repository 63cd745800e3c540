// Promise: papers have no column and no picture for yards that nobody gave, and the draw says who is left without a partner.

import { renderToStaticMarkup } from 'react-dom/server'
import { expect, it } from 'vitest'
import { FRESH } from '@/app/desk/_form/act-state'
import { figureOf } from '@/app/desk/[society]/days/[day]/draw/drawn-player'
import { Seat } from '@/app/desk/[society]/days/[day]/draw/seat'
import { SidesForm } from '@/app/desk/[society]/days/[day]/draw/sides-form'
import { type CardDay, CardInside } from '@/app/desk/[society]/days/[day]/print/_papers/card-paper'
import { StartPaper } from '@/app/desk/[society]/days/[day]/print/_papers/start-paper'
import { boardOf } from '@/lib/boards/board'
import { printedCards } from '@/lib/boards/printed-cards'
import { startSheetOf } from '@/lib/boards/start-sheet'
import type { DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { smallRecord } from '../boards/small-record'
import { asId } from '../setup/ids'

const bare = smallRecord({
  status: 'frozen',
  people: ['Ashgill', 'Verrow', 'Elverstone'],
  competitions: [{ format: 'stableford' }, { format: 'four-ball-stableford', sides: [['Ashgill', 'Verrow']] }],
})
const measured: DayRecord = {
  ...bare,
  tees: bare.tees.map((tee) => ({ ...tee, holes: tee.holes.map((hole) => ({ ...hole, yards: 371 })) })),
}
const day: CardDay = {
  societyName: 'Fernbrake',
  dayName: 'd',
  courseName: 'Aldermoss Park',
  date: '2031-06-14',
  shotgun: false,
  address: 'https://example.org',
  reading: 'points',
}

const card = (record: DayRecord) => renderToStaticMarkup(<CardInside card={printedCards(record).cards[0]!} day={day} />)
const paper = (record: DayRecord) =>
  renderToStaticMarkup(
    <StartPaper
      sheet={startSheetOf(record, { withCodes: false })}
      course={boardOf(record, new Date('2031-06-14T12:00:00Z')).course}
      address="https://example.org"
    />,
  )

it('prints yards where there are any, and nothing to length where there are none', () => {
  expect(card(measured)).toContain('yds')
  expect(card(measured)).toContain('371')
  expect(card(bare)).not.toContain('yds')
  expect(paper(measured)).toContain('The course, to length')
  expect(paper(bare)).not.toContain('to length')
})

it('says on the start sheet who has no partner, and in what', () => {
  const players = startSheetOf(bare, { withCodes: false }).groups.flatMap((group) => group.players)
  expect(players.map((player) => player.side)).toEqual(['with Verrow', 'with Ashgill', 'no partner in d-c1'])
})

const ids: EntryId[] = [asId('a'), asId('b'), asId('c')]
const sides = (saved: readonly (readonly EntryId[])[]) =>
  renderToStaticMarkup(
    <SidesForm
      action={async () => FRESH}
      competition={{ id: 'pairs', name: 'Quaich', size: 2 }}
      groups={[{ number: 1, entryIds: ids }]}
      sides={saved}
      names={{ a: 'Ash', b: 'Birch', c: 'Cedar' }}
      shut={false}
    >
      {null}
    </SidesForm>,
  )
const ticked = (markup: string) =>
  /<label[^>]*>(?:(?!<\/label>).)*checked(?:(?!<\/label>).)*<\/label>/s.exec(markup)?.[0]

it('offers the third of a three no partner, or to play alone, and ticks what is saved', () => {
  expect(ticked(sides([ids.slice(0, 2)]))).toContain('Ash &amp; Birch, Cedar has no partner')
  expect(ticked(sides([ids.slice(0, 2), ids.slice(2)]))).toContain('Ash &amp; Birch, Cedar plays alone')
})

it('says beside a name in the draw what the player or the side plays off, and nothing where there is no figure', () => {
  const seat = (own?: number, ofSide?: number) =>
    renderToStaticMarkup(
      <Seat
        player={{ entryId: asId('ada'), name: 'Ada Ashgill', figure: figureOf(own, ofSide), note: null }}
        was={null}
        group={0}
        seat={0}
        groups={1}
        shut={false}
        onKey={() => {}}
        onMove={() => {}}
      />,
    )
  expect(seat(12, 9)).toContain('aria-label="Ada Ashgill, playing handicap 12, group 1"')
  expect(seat(undefined, 9)).toContain('aria-label="Ada Ashgill, playing handicap of the side 9, group 1"')
  expect(seat()).toContain('aria-label="Ada Ashgill, group 1"')
  expect(seat()).not.toContain('–')
})
