import { BoardHead, BoardLine, BoardOpened, BoardSentence } from '@/app/_parts/board-row'
import { HandicapSteps } from '@/app/_parts/handicap-steps'
import { Fold } from '@/app/_parts/ledger'
import { MatchStrip } from '@/app/_parts/match-strip'
import { Opens } from '@/app/_parts/opens'
import { Scorecard } from '@/app/_parts/scorecard'
import { StrokeBand, WorkingSteps } from '@/app/_parts/working-steps'
import { card, handicaps, match, working } from './specimen'

function Points({ children, of }: { children: string; of: string }) {
  return (
    <Opens href="#card" label={`${children} points, ${of}: open the card`}>
      {children}
    </Opens>
  )
}

const eighteenth = (gross: number, points: number) => (
  <>
    18th: <span className="fig">{gross}</span> for <span className="fig">{points}</span>
  </>
)

const caption = 'Jago Trevennor, singles Stableford'
const openHref = () => '#working'

/** What the large pages are made of: rows, cards, workings. */
export function Rows() {
  return (
    <>
      <section className="oxford">
        <h2>Rows of a board</h2>
        <p className="lead">
          Place in the margin, the figure beside it, then the name. What has just changed has a gorse bar and says so.
        </p>
        <table className="board ruled">
          <caption className="unseen">Four rows of a board</caption>
          <BoardHead unit="Points" />
          <tbody>
            <BoardLine
              place={1}
              tied={false}
              joined
              name="Jago Trevennor"
              score={<Points of="Jago Trevennor">38</Points>}
              playingHandicap={19}
              holesPlayed={18}
              last={eighteenth(6, 2)}
            />
            <BoardOpened>
              <Scorecard lines={card} unit="points" way="across" caption={caption} openHref={openHref} />
            </BoardOpened>
            <BoardLine
              place={2}
              tied={false}
              changed
              joined
              name="Freya Holmgarth"
              note="was level 2nd"
              score={<Points of="Freya Holmgarth">38</Points>}
              playingHandicap={19}
              holesPlayed={18}
              last={eighteenth(5, 3)}
            />
            <BoardSentence>Trevennor above Holmgarth, both 38: last nine 18 each, last six 11 to 10.</BoardSentence>
            <BoardLine
              place={3}
              tied
              name="Fintan Rushgate"
              note="guest of Storrey"
              score={<Points of="Fintan Rushgate">34</Points>}
              playingHandicap={14}
              holesPlayed={16}
              last={eighteenth(7, 1)}
            />
            <BoardLine
              place={null}
              tied={false}
              name="Wilf Thackerstone"
              note="no return"
              score="–"
              playingHandicap={16}
              holesPlayed={11}
            />
          </tbody>
        </table>
      </section>
      <section className="oxford card-and-working">
        <div id="card">
          <h2>The card, down</h2>
          <Scorecard lines={card} unit="points" way="down" caption={`${caption}, down`} openHref={openHref} />
        </div>
        <div id="working">
          <h2>A working</h2>
          <WorkingSteps steps={working} heading="h3" under={{ 3: <StrokeBand lines={card} here={11} /> }} />
        </div>
      </section>
      <section className="oxford">
        <h2>A handicap over three seasons</h2>
        <HandicapSteps
          points={handicaps}
          until="2026-05-14"
          limit={{ tenths: 234, words: 'never above 23.4' }}
          label="Society handicap from 21.4 in March 2024 to 18.7 in April 2026"
        />
      </section>
      <section className="oxford">
        <h2>A match between two cards</h2>
        <MatchStrip a="Jago Trevennor" b="Freya Holmgarth" holes={match} result="Trevennor won 3&1" />
      </section>
      <Fold />
    </>
  )
}
