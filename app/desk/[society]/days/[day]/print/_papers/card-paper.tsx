import { Device } from '@/app/_parts/device'
import { Dots } from '@/app/_parts/dots'
import { Qr } from '@/app/_parts/qr'
import { clockInWords, dateInWords, shortDateInWords } from '@/lib/boards/dates-in-words'
import { strokesFigure } from '@/lib/boards/figure'
import type { PrintedCard, PrintedCards } from '@/lib/boards/printed-cards'

export interface CardDay {
  societyName: string
  dayName: string
  courseName: string
  date: string
  shotgun: boolean
  address: string
  reading: PrintedCards['reading']
}

const LAST_COLUMN = { points: 'pts', net: 'net', gross: 'total', par: '+ 0 −' } as const
const TOTAL = { points: 'points', net: 'net', gross: 'gross', par: 'up or down' } as const

const HOLE_OUT = 'Hole out on every hole, unless the terms of the day set a maximum.'
const OUT_OF_THE_HOLE = {
  points: 'No more points to be had: pick up, write a dash, and play on.',
  par: 'The hole is lost: pick up, write a dash, and play on.',
  net: HOLE_OUT,
  gross: HOLE_OUT,
} as const

interface NineProps {
  holes: PrintedCard['holes']
  word: string
  last: string
  /** A column for whose drive was taken. */
  drives: boolean
  /** Who carries the named ball on these holes. */
  carriers?: readonly string[] | undefined
  /** How many scores of the team count on these holes. */
  counts?: readonly number[] | undefined
}

function Nine({ holes, word, last, drives, carriers, counts }: NineProps) {
  const sum = (of: (hole: PrintedCard['holes'][number]) => number) => holes.reduce((all, hole) => all + of(hole), 0)
  const measured = holes.every((hole) => hole.yards !== null)
  // A card without yards has no column for them.
  const some = holes.some((hole) => hole.yards !== null)
  return (
    <table>
      <caption className="unseen">Holes {word}</caption>
      <thead>
        <tr>
          <th scope="col" className="c-hole">
            <span className="unseen">hole</span>
          </th>
          {some ? (
            <th scope="col" className="c-yards">
              yds
            </th>
          ) : null}
          <th scope="col" className="c-par">
            par
          </th>
          <th scope="col" className="c-index">
            s.i.
          </th>
          <th scope="col" className="c-dots">
            <span className="unseen">strokes</span>
          </th>
          <th scope="col">gross</th>
          {drives ? <th scope="col">drive</th> : null}
          {carriers ? <th scope="col">ball</th> : null}
          {counts ? <th scope="col">count</th> : null}
          <th scope="col" className="c-last">
            {last}
          </th>
        </tr>
      </thead>
      <tbody>
        {holes.map((hole, at) => (
          <tr key={hole.hole}>
            <th scope="row" className="fig">
              {hole.hole}
            </th>
            {some ? <td className="fig">{hole.yards}</td> : null}
            <td className="fig">{hole.par}</td>
            <td className="fig">{hole.strokeIndex}</td>
            <td className="c-dots">
              <Dots strokes={hole.strokes} />
            </td>
            <td className="box" />
            {drives ? <td className="box" /> : null}
            {carriers ? <td className="c-carrier">{carriers[at]}</td> : null}
            {counts ? <td className="fig">{counts[at]}</td> : null}
            <td className="box" />
          </tr>
        ))}
        <tr className="sum">
          <th scope="row">{word}</th>
          {some ? <td className="fig">{measured ? sum((hole) => hole.yards ?? 0) : null}</td> : null}
          <td className="fig">{sum((hole) => hole.par)}</td>
          <td />
          <td />
          <td className="box" />
          {drives ? <td /> : null}
          {carriers ? <td /> : null}
          {counts ? <td /> : null}
          <td className="box" />
        </tr>
      </tbody>
    </table>
  )
}

/** Inside of the card: the two nines, folding once between them. */
export function CardInside({ card, day }: { card: PrintedCard; day: CardDay }) {
  const front = card.holes.slice(0, 9)
  const back = card.holes.slice(9)
  const last = LAST_COLUMN[day.reading]
  const drives = card.drivesNeeded !== undefined
  const start = day.shotgun ? `from hole ${card.startsAt}` : clockInWords(card.startTime)
  return (
    <article className={card.matchStrokes ? 'a6 with-matches' : 'a6'} aria-label={`Card of ${card.name}`}>
      <header>
        <div>
          <p className="sc">
            {day.societyName} · {day.dayName}
          </p>
          <h2>{card.name}</h2>
        </div>
        <p className="off">
          <span>plays off</span> <span className="fig">{strokesFigure(card.playingHandicap)}</span>
        </p>
        {card.link ? <Qr text={`${day.address}${card.link}`} label={`The card of group ${card.group}`} /> : null}
      </header>
      <div className="nines">
        <Nine
          holes={front}
          word={back.length > 0 ? 'out' : 'all'}
          last={last}
          drives={drives}
          carriers={card.carriers?.slice(0, 9)}
          counts={card.counts?.slice(0, 9)}
        />
        <div className="card-fold" aria-hidden="true" />
        {back.length > 0 ? (
          <Nine
            holes={back}
            word="in"
            last={last}
            drives={drives}
            carriers={card.carriers?.slice(9)}
            counts={card.counts?.slice(9)}
          />
        ) : (
          <div />
        )}
      </div>
      <footer>
        <p className="line">Player</p>
        <p className="line">
          Marker<span className="second">{card.marker ? ` ${card.marker}` : ''}</span>
        </p>
        <p className="tot">gross</p>
        {day.reading === 'gross' ? null : <p className="tot">{TOTAL[day.reading]}</p>}
        <p className="tiny">
          {ofSide(card)}
          {card.countRule ? `${card.countRule} ` : ''}
          {card.matchStrokes ? `${card.matchStrokes.join(' ')} ` : ''}
          {[card.note, `${day.courseName}, ${card.tee} tees`, shortDateInWords(day.date), start]
            .filter(Boolean)
            .join(', ')}
          .{card.code ? ` Code ${card.code}.` : ''} Dots are strokes.
        </p>
      </footer>
    </article>
  )
}

/** The players of a side, what they write beside the strokes, and who tees off. */
function ofSide({ side, drivesNeeded, teesOff }: PrintedCard): string {
  if (!side) return ''
  const drives = drivesNeeded === undefined ? '' : ` Drives: initials of whose was taken, ${drivesNeeded} of each.`
  const tees = teesOff === undefined ? '' : ' Tees off at odd holes: ____________'
  return `${side.join(', ')}.${drives}${tees} `
}

/** Outside of the card, for printing on both sides: the cover right, what to know left. */
export function CardOutside({ card, day }: { card: PrintedCard; day: CardDay }) {
  return (
    <article className="a6 outside" aria-label={`Outside of the card of ${card.name}`}>
      <div className="back">
        <p className="sc">On the way round</p>
        <p>
          {card.marker ?? (card.side ? 'Another player of the side' : 'Somebody of your group')} marks this card. Write
          the gross figure of each hole.
        </p>
        <p>A filled dot is a stroke you receive, an open one a stroke you give back.</p>
        <p>{OUT_OF_THE_HOLE[day.reading]}</p>
        <p>Player and marker sign, and the card goes to the table at once.</p>
        {card.link && card.code ? (
          <div className="way-in">
            <Qr text={`${day.address}${card.link}`} label={`The card of group ${card.group}`} />
            <span>
              or on your own phone:
              <em>{card.code}</em>
            </span>
          </div>
        ) : null}
      </div>
      <div className="card-fold" aria-hidden="true" />
      <div className="front">
        <Device />
        <p className="sc">{day.societyName}</p>
        <h2>{day.dayName}</h2>
        <p>
          {day.courseName}
          <br />
          {dateInWords(day.date)}
        </p>
        <p className="whose">{card.name}</p>
        <p className="fig">{day.shotgun ? `hole ${card.startsAt}` : clockInWords(card.startTime)}</p>
      </div>
    </article>
  )
}
