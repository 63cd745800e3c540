// One player's card: strokes once, and every competition that reads them.

import { Dots } from '@/app/_parts/dots'
import { Opens } from '@/app/_parts/opens'
import { progressInWords } from '@/lib/boards/card-progress'
import type { PlayerCard } from '@/lib/boards/card-views'
import { clockInWords } from '@/lib/boards/dates-in-words'
import { listed, ordinal } from '@/lib/boards/in-words'
import type { HoleLine } from '@/lib/rules/standings'
import { boardAt, cardAt, matchAt } from './addresses'
import { ReadThisCardAs } from './read-card-as'
import { handicapFigure, NO_PLACE, scoreFigure, scoreWords, unitHeading } from './words'

type Reading = PlayerCard['readings'][number]

function value(line: HoleLine | undefined, unit: Reading['unit']): string | null {
  if (!line || line.value === null) return null
  return typeof line.value === 'number' ? scoreFigure(line.value, unit) : String(line.value)
}

function total(lines: readonly HoleLine[], of: 'gross' | 'value' | 'par' | 'strokes'): number | null {
  // Holes nobody has played yet add up to nothing, not to nought.
  if ((of === 'gross' || of === 'value') && lines.every((line) => line[of] === null)) return null
  let sum = 0
  for (const line of lines) {
    const figure = line[of]
    if (figure === 'x') return null
    sum += figure ?? 0
  }
  return sum
}

function Figures({ card, lines }: { card: PlayerCard; lines: readonly HoleLine[] }) {
  const { societySlug, daySlug, entryId } = card
  return lines.map((line) => (
    <tr key={line.hole}>
      <th scope="row" className="lead-col fig">
        {line.hole}
      </th>
      <td className="fig">{line.par}</td>
      <td className="fig second">{line.strokeIndex}</td>
      <td>
        <Dots strokes={line.strokes} />
      </td>
      <td className="fig gross">
        {line.gross === 'x' ? (
          <span className="small">no score</span>
        ) : (
          (line.gross ?? <span className="unseen">not played</span>)
        )}
      </td>
      {card.readings.map((reading, at) => {
        const own = reading.own.find(({ hole }) => hole === line.hole)
        const counts = reading.row.holes.find(({ hole }) => hole === line.hole)
        const figure = value(own, reading.unit)
        const side = reading.row.entryIds.length > 1
        const counted = side && counts?.by?.includes(entryId)
        return (
          <td key={reading.competitionId} className={side && !counted ? 'fig pt second' : 'fig pt'}>
            {figure === null ? (
              <span className="unseen">not played</span>
            ) : (
              <Opens
                href={cardAt(societySlug, daySlug, entryId, { c: at + 1, hole: line.hole })}
                label={`${figure}, hole ${line.hole}, ${reading.competition}${side ? (counted ? ', counts' : ', partner counts') : ''}: open the working`}
              >
                {figure}
              </Opens>
            )}
          </td>
        )
      })}
    </tr>
  ))
}

function Sum({
  card,
  lines,
  label,
  all,
}: {
  card: PlayerCard
  lines: readonly HoleLine[]
  label: string
  all?: boolean
}) {
  const holes = new Set(lines.map(({ hole }) => hole))
  return (
    <tr className={all ? 'all' : 'half'}>
      <th scope="row" className="lead-col">
        {label}
      </th>
      <td className="fig">{total(lines, 'par')}</td>
      <td />
      <td className="fig">{handicapFigure(total(lines, 'strokes'))}</td>
      <td className="fig gross">{total(lines, 'gross') ?? '–'}</td>
      {card.readings.map((reading) => (
        <td key={reading.competitionId} className="fig">
          {scoreFigure(
            total(
              reading.own.filter(({ hole }) => holes.has(hole)),
              'value',
            ),
            reading.unit,
          )}
        </td>
      ))}
    </tr>
  )
}

function place(reading: Reading): string {
  const { row } = reading
  if (row.noPlace) return NO_PLACE[row.noPlace]
  if (row.place === null) return 'no place'
  return row.tied ? `level ${ordinal(row.place)}` : ordinal(row.place)
}

function Heading({ reading }: { reading: Reading }) {
  const side = reading.row.entryIds.length > 1
  return (
    <>
      {reading.competition}
      <span className="small second block">
        {side ? `with ${reading.row.name}` : unitHeading({ unit: reading.unit, format: '' }).toLowerCase()}
      </span>
    </>
  )
}

export function WholeCard({ card }: { card: PlayerCard }) {
  const { societySlug, daySlug, entryId } = card
  const main = card.readings[0]
  const lines = main?.own ?? []
  const needs = card.readings.filter((reading) => reading.chance !== undefined)
  const sideNotes = card.readings.filter(({ row }) => row.entryIds.length > 1 && row.note)
  const front = lines.slice(0, 9)
  const back = lines.slice(9)
  const facts = [
    `${card.tee.name} tees`,
    card.groupNumber === null
      ? null
      : `group ${card.groupNumber}${card.startTime ? `, ${clockInWords(card.startTime)}` : ''}`,
    card.marker ? `marked by ${card.marker}` : null,
    card.progress ? progressInWords(card.progress) : null,
  ]
  return (
    <>
      <div className="wk-title">
        <div>
          <p className="sc second">{card.dayName} · the card</p>
          <h1>{card.name}</h1>
          <p className="lead">
            {card.note && `${card.note}; `}
            {facts.filter((fact) => fact !== null).join('; ')}.
          </p>
          {sideNotes.map(({ competition, row }) => (
            <p key={competition} className="second">
              {competition}, {row.name}: {row.note}.
            </p>
          ))}
        </div>
        {main && (
          <p className="wk-hero">
            <span className="fig trim">
              {main.row.holesPlayed === 0 ? '–' : scoreFigure(main.row.score, main.unit)}
            </span>
            <span>
              {unitHeading({ unit: main.unit, format: '' }).toLowerCase()}
              <span className="second block">{place(main)}</span>
            </span>
          </p>
        )}
      </div>
      {card.notAgreed.length > 0 && (
        <div className="notice differs">
          <p className="sc">Not agreed</p>
          <p>
            {card.notAgreed.length === 1 ? 'Hole' : 'Holes'} {listed(card.notAgreed.map(String))}: player and marker
            wrote different scores. The card is not handed in until they agree or the committee rules.
          </p>
        </div>
      )}
      {lines.length === 0 ? (
        <p className="empty">Nothing is written on this card yet.</p>
      ) : (
        <div className="scroll" tabIndex={0} role="region" aria-label={`Card of ${card.name}`}>
          <table className="whole ruled">
            <caption className="unseen">
              {card.name}, {card.courseName}
            </caption>
            <thead>
              <tr>
                <th scope="col" className="lead-col">
                  Hole
                </th>
                <th scope="col">Par</th>
                <th scope="col">
                  <abbr title="Stroke index">SI</abbr>
                </th>
                <th scope="col">Strokes</th>
                <th scope="col">Gross</th>
                {card.readings.map((reading) => (
                  <th scope="col" key={reading.competitionId}>
                    <Heading reading={reading} />
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              <Figures card={card} lines={front} />
              {back.length > 0 && <Sum card={card} lines={front} label="Out" />}
            </tbody>
            {back.length > 0 && (
              <tbody>
                <Figures card={card} lines={back} />
                <Sum card={card} lines={back} label="In" />
              </tbody>
            )}
            <tbody>
              <Sum card={card} lines={lines} label="All" all />
            </tbody>
          </table>
        </div>
      )}
      {needs.length > 0 && (
        <section className="readings" aria-labelledby="needs-h">
          <h2 id="needs-h">What it needs to win</h2>
          <dl className="needs-of-card">
            {needs.map(({ competitionId, competition, chance }) => (
              <div key={competitionId}>
                <dt>{competition}</dt>
                <dd>{chance}</dd>
              </div>
            ))}
          </dl>
          <p className="small second">
            What can still happen by the Rules, from a hole in one to no score, with the cards as they stand.
          </p>
        </section>
      )}
      <section className="readings" aria-labelledby="read-h">
        <h2 id="read-h">
          Read in {card.readings.length === 1 ? 'one competition' : `${card.readings.length} competitions`}
        </h2>
        <table className="ruled">
          <caption className="unseen">The card in each competition</caption>
          <tbody>
            {card.readings.map((reading, at) => (
              <tr key={reading.competitionId}>
                <td className="lead-col fig reading-score">
                  {reading.row.holesPlayed === 0 || reading.row.score === null ? (
                    '–'
                  ) : (
                    <Opens
                      href={cardAt(societySlug, daySlug, entryId, { c: at + 1, hole: 'all' })}
                      label={`${scoreWords(reading.row.score, reading.unit)}, ${reading.competition}: open the working`}
                    >
                      {scoreFigure(reading.row.score, reading.unit)}
                    </Opens>
                  )}
                </td>
                <th scope="row">
                  <a href={boardAt(societySlug, daySlug, { c: at + 1 })}>{reading.competition}</a>
                  <span className="small second block">
                    {reading.formatName}, allowance {reading.allowance}
                  </span>
                </th>
                <td>
                  playing handicap <span className="fig">{handicapFigure(reading.ownHandicap)}</span>
                </td>
                <td>{place(reading)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <ReadThisCardAs card={card} />
      {card.rulings.length > 0 && (
        <section className="readings" aria-labelledby="rul-h">
          <h2 id="rul-h">Rulings on this card</h2>
          <ol className="ledger rulings">
            {card.rulings.map((ruling) => (
              <li key={ruling.number}>
                <p className="in-margin fig">{ruling.number}</p>
                <p>{ruling.sentence}</p>
                <p className="clause">{ruling.clause}</p>
              </li>
            ))}
          </ol>
        </section>
      )}
      <p className="acts no-print">
        <a className="btn" href={matchAt(societySlug, daySlug, entryId)}>
          As a match against another card
        </a>
      </p>
    </>
  )
}
