import { CourseBars, isMeasured } from '@/app/_parts/course-bars'
import { Device } from '@/app/_parts/device'
import { Qr } from '@/app/_parts/qr'
import { momentOf } from '@/app/desk/_frame/moments'
import { calledOffSentence } from '@/lib/boards/called-off'
import { clockInWords, dateInWords } from '@/lib/boards/dates-in-words'
import { strokesFigure } from '@/lib/boards/figure'
import type { DayBoard, StartSheet } from '@/lib/boards/views'

type Group = StartSheet['groups'][number]

interface StartPaperProps {
  sheet: StartSheet
  course: DayBoard['course']
  address: string
  /** Sides play one ball: a side has one card. */
  isOneBall?: boolean
}

interface Column {
  /** Places of the competitions in the list of the day. */
  readonly of: readonly number[]
  readonly heading: string
}

/** One column for all competitions in which everybody has the same figure, so that names keep their room. */
function columnsOf({ competitions, groups }: StartSheet): readonly Column[] {
  const players = groups.flatMap((group) => group.players)
  const figures = (at: number) => players.map((one) => one.playing[at]?.playingHandicap ?? null).join(' ')
  const by = new Map<string, number[]>()
  for (const at of competitions.keys()) by.set(figures(at), [...(by.get(figures(at)) ?? []), at])
  const columns = [...by.values()]
  return columns.map((of) => ({
    of,
    heading: columns.length === 1 ? 'Playing' : of.map((at) => competitions[at]?.name).join(', '),
  }))
}

interface RowsProps {
  readonly sheet: StartSheet
  readonly group: Group
  readonly address: string
  readonly columns: readonly Column[]
}

function GroupRows({ sheet, group, address, columns }: RowsProps) {
  const shotgun = sheet.startKind === 'shotgun'
  const several = columns.length > 1
  return (
    <tbody>
      {group.players.map((player, at) => (
        <tr key={player.entryId}>
          {at === 0 ? (
            <th scope="rowgroup" rowSpan={group.players.length} className="lead-col fig">
              {shotgun ? group.startsAt : clockInWords(group.startTime)}
              {!shotgun && group.startHole > 1 ? <span className="small second">hole {group.startHole}</span> : null}
            </th>
          ) : null}
          <th scope="row" className="who">
            {player.name}{' '}
            {player.note || player.side ? (
              <span className="second">{[player.note, player.side].filter(Boolean).join(', ')}</span>
            ) : null}
          </th>
          <td>{player.tee}</td>
          <td className="fig num figure">{player.figure}</td>
          {columns.map(({ of, heading }, turn) => {
            const figure = player.playing[of[0] ?? 0]?.playingHandicap ?? null
            return (
              <td key={heading} className={turn === 0 || !several ? 'fig num ph' : 'fig num figure'}>
                {figure === null ? '–' : strokesFigure(figure)}
              </td>
            )
          })}
          {at === 0 ? (
            <td rowSpan={group.players.length} className="way-in">
              {group.link && group.code ? (
                <div>
                  <Qr text={`${address}${group.link}`} label={`The card of group ${group.number}`} />
                  <span>
                    <span className="small second">group {group.number}</span>
                    <em>{group.code}</em>
                  </span>
                </div>
              ) : null}
            </td>
          ) : null}
        </tr>
      ))}
    </tbody>
  )
}

/** "Waltz: house choice. Teams of four …": each competition by its name where there are several. */
function termsOf({ name, allowanceFrom, moreTerms }: StartSheet['competitions'][number], isNamed: boolean): string {
  return `${isNamed ? `${name}: ` : ''}${allowanceFrom}. ${moreTerms?.join(' ') ?? ''}`.trim()
}

/** More players than this stand closer, so that the sheet stays on one page. */
const ROOMY = 12
/** More than these have one line each, and a long name is cut there: the partner stands in the same group in full. */
const A_LINE_EACH = 28

/** The start sheet for the first tee: A4, one grey ink, each group's own way to its card. */
export function StartPaper({ sheet, course, address, isOneBall = false }: StartPaperProps) {
  const columns = columnsOf(sheet)
  const players = sheet.groups.reduce((sum, group) => sum + group.players.length, 0)
  return (
    <article className={`a4${players > ROOMY ? ' close' : ''}${players > A_LINE_EACH ? ' a-line-each' : ''}`}>
      <header className="paper-head">
        <Device />
        <div>
          <p className="sc">{sheet.societyName}</p>
          <h1>Start sheet</h1>
          <p className="lead">
            {sheet.dayName}. {sheet.courseName}, {dateInWords(sheet.date)}.
          </p>
          {sheet.calledOff === undefined ? null : <p className="lead">{calledOffSentence(sheet.calledOff)}</p>}
        </div>
      </header>
      <dl className="paper-facts oxford">
        <div>
          <dt className="sc">{sheet.startKind === 'shotgun' ? 'All start at' : 'First tee'}</dt>
          <dd className="fig">{clockInWords(sheet.firstTee)}</dd>
        </div>
        {sheet.startKind === 'tee-times' ? (
          <div>
            <dt className="sc">Every</dt>
            <dd>
              <span className="fig">{sheet.intervalMinutes}</span> minutes
            </dd>
          </div>
        ) : null}
        {sheet.competitions.map((competition) => (
          <div key={competition.name}>
            <dt className="sc">{competition.name}</dt>
            <dd>
              {competition.formatName}, {competition.allowance}
            </dd>
          </div>
        ))}
      </dl>
      <table className="paper-starts">
        <caption className="unseen">Groups in starting order</caption>
        <thead>
          <tr>
            <th scope="col" className="lead-col">
              {sheet.startKind === 'shotgun' ? 'Hole' : 'Time'}
            </th>
            <th scope="col">Player</th>
            <th scope="col">Tees</th>
            <th scope="col" className="num">
              Figure
            </th>
            {columns.map(({ heading }) => (
              <th key={heading} scope="col" className="num">
                {heading}
              </th>
            ))}
            <th scope="col" className="way-in">
              The card
            </th>
          </tr>
        </thead>
        {sheet.groups.map((group) => (
          <GroupRows key={group.number} sheet={sheet} group={group} address={address} columns={columns} />
        ))}
      </table>
      <footer className="paper-foot">
        <div>
          <p className="sc">Nobody marks their own card</p>
          <p>
            {isOneBall
              ? 'A side has one card for its ball. Somebody of another side in the group marks it; a side alone in its group has one player sign as the player and another as the marker.'
              : 'The next name in your group marks yours, and the first marks the last one’s.'}{' '}
            Gross figures, hole by hole. Player and marker both sign.
          </p>
        </div>
        <div>
          <p className="sc">On your own phone</p>
          <p>
            Scan your group’s square, or type its code at {address.replace(/^https?:\/\//, '')}/card. No account, and no
            signal needed on the way round.
          </p>
        </div>
        {isMeasured(course) ? (
          <div>
            <p className="sc">The course, to length</p>
            <CourseBars course={course} label="The course, hole by hole, drawn to length" />
          </div>
        ) : null}
      </footer>
      <p className="paper-terms">
        {sheet.frozenAt
          ? `Handicaps frozen ${momentOf(sheet.frozenAt)}. `
          : 'Handicaps are not frozen yet: these figures may still change. '}
        Playing handicap: figure × slope ÷ 113 + rating − par, × the allowance, rounded once.{' '}
        {sheet.competitions.map((one) => termsOf(one, sheet.competitions.length > 1)).join(' ')}
      </p>
    </article>
  )
}
