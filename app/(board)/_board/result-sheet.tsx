// The frozen sheet as it hangs on the wall: the first three large, every card in two columns, ties in words, prizes.

import { Device } from '@/app/_parts/device'
import { HoleBars } from '@/app/_parts/hole-bars'
import { Fold } from '@/app/_parts/ledger'
import { dateInWords, dayInWords, timeInWords } from '@/lib/boards/dates-in-words'
import { type GameOfGroup, gamesOf } from '@/lib/boards/games-of-groups'
import type { BoardRow, CompetitionBoard, DayBoard, ResultSheet } from '@/lib/boards/views'
import { editionOf } from '@/lib/rules/editions/editions'
import { BoardExtras } from './board-extras'
import { ResultColumn } from './result-column'
import { ResultDivisions } from './result-divisions'
import { ResultMatches } from './result-matches'
import { ResultPrizes } from './result-prizes'
import { coursePlayed, halves, howItCame, playedAs, termsOf, tiesTold, withoutPlace } from './result-words'
import { scoreFigure } from './words'

function FirstThree({ competition, rows }: { competition: CompetitionBoard; rows: readonly BoardRow[] }) {
  return (
    <ol className="first-three">
      {rows.map((row) => (
        <li key={row.entrant}>
          <p className="fig trim f-pts">
            {scoreFigure(row.score, competition.unit)}
            <span className="unseen"> {competition.unit}</span>
          </p>
          <div>
            <p className="f-name">{row.name}</p>
            <p className="f-how">
              <span className="second">
                {howItCame(row, competition)} {row.note && `${row.note}. `}
              </span>
              {row.tieSentence && <em>{row.tieSentence}</em>}
            </p>
          </div>
        </li>
      ))}
    </ol>
  )
}

/** Games inside groups: nobody plays against the other groups, so each has its own list. */
function Games({ competition, games }: { competition: CompetitionBoard; games: readonly GameOfGroup<BoardRow>[] }) {
  return (
    <div className="res-all">
      <div className="two-up res-games">
        {games.map(({ groupNumber, rows }) => (
          <div key={groupNumber}>
            <h3>Group {groupNumber}</h3>
            <ResultColumn competition={competition} rows={rows.filter((row) => row.place !== null)} />
          </div>
        ))}
      </div>
    </div>
  )
}

/** A column of gross in which somebody has none. */
const hasDashInGross = ({ competitions }: DayBoard) =>
  competitions.some(
    ({ format, rows }) =>
      format !== 'gross' &&
      rows.some((row) => row.gross !== null) &&
      rows.some((row) => row.place !== null && row.gross === null),
  )

/** `c` is its place on the day, from 1. */
function Competition({ competition, c, board }: { competition: CompetitionBoard; c: number; board: DayBoard }) {
  const first = c === 1
  const games = competition.placesInGroups ? gamesOf(competition, competition.rows) : null
  const placed = games ? [] : competition.rows.filter((row) => row.place !== null)
  const top = placed.slice(0, 3)
  const [left, right] = halves(placed.slice(3))
  const outside = withoutPlace(competition.rows)
  const id = `comp-${competition.id}`
  return (
    <section className={first ? 'oxford' : 'res-next'} aria-labelledby={id}>
      <h2 id={id} className={first && board.competitions.length < 2 ? 'unseen' : undefined}>
        {competition.name}
      </h2>
      {competition.matches.length > 0 && <ResultMatches head={board} competition={competition} c={c} />}
      {games ? <Games competition={competition} games={games} /> : null}
      {competition.matches.length > 0 || games ? null : top.length === 0 ? (
        <p className="second">Nobody has a result in this competition.</p>
      ) : (
        <FirstThree competition={competition} rows={top} />
      )}
      {left.length > 0 && (
        <div className="res-all">
          <h3>All the cards</h3>
          <div className="two-up">
            <ResultColumn competition={competition} rows={left} />
            {right.length > 0 && <ResultColumn competition={competition} rows={right} />}
          </div>
        </div>
      )}
      <ResultDivisions head={board} competition={competition} c={c} />
      <BoardExtras
        head={board}
        c={c}
        competition={competition}
        rows={competition.rows}
        teams={first ? board.teams : undefined}
      />
      {outside.length > 0 && <p className="small res-outside">{outside.join(' ')}</p>}
      {!first && (
        <p className="small second">
          {competition.formatName}. {termsOf(competition)}
        </p>
      )}
    </section>
  )
}

function Played({ sheet }: { sheet: ResultSheet }) {
  const played = coursePlayed(sheet)
  const main = sheet.board.competitions[0]
  if (!played || !main) return null
  const points = main.unit === 'points'
  const level = points ? 2 : sheet.board.course.reduce((sum, { par }) => sum + par, 0) / sheet.board.course.length
  return (
    <section aria-labelledby="played-h">
      <h2 id="played-h">How the course played</h2>
      <figure className="avg ruled">
        <HoleBars
          values={sheet.course.map(({ hole, average }) => ({ hole, value: average }))}
          level={level}
          write={(value) => value.toFixed(2)}
          label={`Average ${points ? 'points' : 'score'} on each hole: easiest hole ${played.easiest.hole}, ${played.easiest.average.toFixed(2)}; hardest hole ${played.hardest.hole}, ${played.hardest.average.toFixed(2)}`}
        />
        <figcaption className="small">
          Average {points ? 'points' : 'score'} a hole{points ? '; the dotted line is two' : ''}. {played.sentence}
        </figcaption>
      </figure>
    </section>
  )
}

export function ResultSheetPage({ sheet, zone }: { sheet: ResultSheet; zone: string }) {
  const { board } = sheet
  const main = board.competitions[0]
  const { told, others } = tiesTold(sheet.ties)
  return (
    <>
      <header className="res-head">
        <Device />
        <div>
          <p className="sc">{board.societyName}</p>
          <h1>{board.dayName}</h1>
          <p className="lead">
            {board.courseName}, {dateInWords(board.date)}. {playedAs(sheet)}
          </p>
        </div>
        <p className="sheet-no">
          <span className="sc">Sheet</span> <span className="fig trim">{sheet.number}</span>
        </p>
      </header>
      {sheet.number > 1 && sheet.reason && (
        <p className="aside res-reason">
          Sheet {sheet.number}, because: {sheet.reason}
        </p>
      )}
      {board.teams && board.teams.length > 1 && (
        <p className="lead res-teams">{board.teams.map(({ name, points }) => `${name} ${points}`).join(', ')}</p>
      )}
      {sheet.without && <p className="aside res-reason">{sheet.without}</p>}
      {board.competitions.map((competition, at) => (
        <Competition key={competition.id} competition={competition} c={at + 1} board={board} />
      ))}
      {sheet.ties.length > 0 && (
        <section className="ties" aria-labelledby="ties-h">
          <h2 id="ties-h" className="sc">
            {board.competitions.some(({ rows }) => rows.some((row) => row.tieSentence)) ? 'Ties, by countback' : 'Ties'}
          </h2>
          <ul className="tie-list">
            {told.map((tie) => (
              <li key={tie}>{tie}</li>
            ))}
          </ul>
        </section>
      )}
      <p className="small second res-dash">
        {others > 0 &&
          (told.length > 0
            ? 'Other level scores were parted on the last nine. '
            : 'Level scores were parted on the last nine. ')}
        {hasDashInGross(board) && 'A dash in gross is a card with a hole not finished.'}
      </p>
      <Fold />
      <div className="res-foot">
        {sheet.prizes.length > 0 && <ResultPrizes sheet={sheet} />}
        <Played sheet={sheet} />
      </div>
      {sheet.rulings.length > 0 && (
        <section className="res-rulings" aria-labelledby="rul-h">
          <h2 id="rul-h">Rulings of the committee</h2>
          <ol className="ruling-list">
            {sheet.rulings.map((ruling) => (
              <li key={`${ruling.name} ${ruling.number}`}>
                <b>{ruling.name}</b>: {ruling.sentence} <span className="clause">{ruling.clause}</span>{' '}
                <span className="small second">
                  {ruling.by}, {timeInWords(ruling.at, zone)}
                </span>
              </li>
            ))}
          </ol>
        </section>
      )}
      <p className="res-terms small">
        {main && termsOf(main)}
        {sheet.frozenAt && `Handicaps frozen ${dayInWords(sheet.frozenAt, zone)}. `}
        {`${editionOf(sheet.edition).title}. `}
        Published {dayInWords(sheet.publishedAt, zone)}, {timeInWords(sheet.publishedAt, zone)}, by {sheet.by}. A
        correction would be sheet {sheet.number + 1}, with its reason.
      </p>
    </>
  )
}
