import type { Metadata } from 'next'
import { Empty } from '@/app/_parts/empty'
import Link from '@/app/_parts/link'
import { Notice } from '@/app/_parts/notice'
import { count, list } from '@/app/desk/_frame/words'
import { type PrintedCard, printedCards } from '@/lib/boards/printed-cards'
import { type CardDay, CardInside, CardOutside } from '../_papers/card-paper'
import { dayForPrint, type PrintParams } from '../_papers/day-for-print'
import { PaperFrame } from '../_papers/paper-frame'
import '@/app/styles/paper-card.css'

export const metadata: Metadata = { title: 'Score cards for the printer' }

const fours = <T,>(all: readonly T[]) =>
  Array.from({ length: Math.ceil(all.length / 4) }, (_, at) => all.slice(at * 4, at * 4 + 4))

/** Back to back with the inside: the second column comes first, since the sheet is turned over its short edge. */
const turned = (four: readonly PrintedCard[]) => [
  { place: 'upper left', card: four[1] },
  { place: 'upper right', card: four[0] },
  { place: 'lower left', card: four[3] },
  { place: 'lower right', card: four[2] },
]

function Sheets({ cards, day, bothSides }: { cards: readonly PrintedCard[]; day: CardDay; bothSides: boolean }) {
  return fours(cards).flatMap((four) => [
    <section key={`${four[0]?.entryId} in`} className="four" aria-label={`Cards, ${four.length} on a sheet`}>
      {four.map((card) => (
        <CardInside key={card.entryId} card={card} day={day} />
      ))}
    </section>,
    ...(bothSides
      ? [
          <section key={`${four[0]?.entryId} out`} className="four" aria-label="The other side of the sheet">
            {turned(four).map(({ place, card }) =>
              card ? <CardOutside key={card.entryId} card={card} day={day} /> : <div key={place} className="a6" />,
            )}
          </section>,
        ]
      : []),
  ])
}

export default async function CardsPage({ params, searchParams }: PrintParams) {
  const { record, at, address } = await dayForPrint(params, 'cards')
  const asked = await searchParams
  const onA4 = asked.on === 'a4'
  const bothSides = asked.sides === '2'
  const { cards, reading, competition, without, noPart } = printedCards(record)
  const day: CardDay = {
    societyName: record.society.name,
    dayName: record.name,
    courseName: record.round.courseName,
    date: record.date,
    shotgun: record.round.startKind === 'shotgun',
    address,
    reading,
  }
  const other = (change: { on?: string; sides?: string }) => {
    const query = new URLSearchParams({
      ...(onA4 ? { on: 'a4' } : {}),
      ...(bothSides ? { sides: '2' } : {}),
      ...change,
    })
    return `${at}/cards?${query}`
  }

  const beside = (
    <>
      <p>
        {onA4 ? 'Four on each A4 sheet, to be cut in four.' : 'A6 paper, one card a page.'}{' '}
        <Link href={other({ on: onA4 ? 'a6' : 'a4' })}>
          {onA4 ? 'On A6 paper instead' : 'Four on A4 paper instead'}
        </Link>
        . {bothSides ? 'Both sides: print them turned over the short edge. ' : 'One side. '}
        <Link href={other({ sides: bothSides ? '1' : '2' })}>
          {bothSides ? 'The inside only' : 'With a cover on the other side'}
        </Link>
        . The dots are the strokes of {competition}.
      </p>
      {without.length > 0 ? (
        <Notice kind="waits" word="No card">
          <p>
            {list(without)} {without.length === 1 ? 'has' : 'have'} no figure yet, so no strokes can be printed.
          </p>
        </Notice>
      ) : null}
      {noPart.length > 0 ? (
        <Notice kind="waits" word="No card">
          <p>
            {list(noPart)} {noPart.length === 1 ? 'has' : 'have'} no partner or opponent, and so no part in the day.
          </p>
        </Notice>
      ) : null}
      {record.frozenAt ? null : (
        <Notice kind="waits" word="Not frozen">
          <p>The handicaps are not frozen: what is printed now may be wrong on the day.</p>
        </Notice>
      )}
    </>
  )

  return (
    <PaperFrame
      back={at}
      paper={onA4 ? 'a4-across' : 'a6'}
      print={`Print ${count(cards.length, 'card')}`}
      beside={beside}
    >
      <h1 className="unseen">Score cards</h1>
      {cards.length === 0 ? (
        <Empty first="No cards to print.">Make the draw first: each card carries its group’s code.</Empty>
      ) : onA4 ? (
        <Sheets cards={cards} day={day} bothSides={bothSides} />
      ) : (
        cards.flatMap((card) => [
          <CardInside key={card.entryId} card={card} day={day} />,
          ...(bothSides ? [<CardOutside key={`${card.entryId} out`} card={card} day={day} />] : []),
        ])
      )}
    </PaperFrame>
  )
}
