'use client'

import type { CardPack } from '@/lib/facts/card-pack'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { type CardNow, type HoleNow, isOwn, writtenBy } from '@/lib/outbox/card-now'
import type { Me } from '@/lib/outbox/holding'
import { Differs } from './differs'
import { Dots } from './dots'
import { figureOf, levelOn, OFFSETS, said, soFar, strokesIn, worth } from './reading'
import { placeInShort, whoInSquare, whoWrote } from './words'

interface Props {
  readonly pack: CardPack
  readonly card: CardNow
  readonly line: HoleNow
  readonly me: Me
  /** One line without figures: another row on this hole needs the room. */
  readonly folded: boolean
  /** The holder has answered the difference with the score that stands here already. */
  readonly waiting: boolean
  readonly onWrite: (score: Exclude<WrittenScore, null>, at: number) => void
  readonly onPad: () => void
}

export function ScoreRow(props: Props) {
  const { pack, card, line, me, onPad } = props
  const { reading } = pack
  const closed = card.closed || line.ruled || pack.status === 'closed'
  const mine = writtenBy(line, me)
  const shown = line.differs ? mine : line.score
  const waits = !closed && !line.differs && shown === null && !card.notNeeded.includes(line.hole)
  const id = `name-${card.card.cardId}`
  const folded = props.folded || closed

  return (
    <div
      className={`c-row${waits ? ' waits' : ''}${folded ? ' folded' : ''}`}
      role="radiogroup"
      aria-labelledby={id}
      aria-disabled={closed || undefined}
    >
      <button type="button" className="c-name" aria-haspopup="dialog" disabled={closed} onClick={onPad}>
        <span id={id}>
          <b>{card.card.firstName}</b> {card.card.familyName}
          {card.card.sharedWith ? (
            <span className="c-partners">with {card.card.sharedWith.map((one) => one.familyName).join(', ')}</span>
          ) : null}
        </span>
        <Dots strokes={strokesIn(reading, line)} />
        <span className="c-said">
          <RowSays {...props} shown={shown} closed={closed} folded={folded} />
          <span className="c-so-far">
            {[soFar(reading, card.holes), placeInShort(pack, card.card.entryId)].filter(Boolean).join(', ')}
          </span>
        </span>
      </button>
      {!folded && <Picks {...props} shown={shown} mine={mine} />}
      {line.differs && !folded && (
        <Differs pack={pack} card={card} line={line} me={me} waiting={props.waiting} onWrite={props.onWrite} />
      )}
    </div>
  )
}

function RowSays({
  pack,
  line,
  card,
  shown,
  closed,
  folded,
}: Props & { shown: WrittenScore; closed: boolean; folded: boolean }) {
  if (line.differs) return folded ? 'two different scores' : 'not agreed'
  if (shown === null && card.notNeeded.includes(line.hole)) return 'no score needed'
  if (shown === null) return closed ? 'no score' : 'to enter'
  const inRow = OFFSETS.some((offset) => levelOn(pack.reading, line) + offset === shown) || shown === 'x'
  const why = line.ruled ? ', ruled' : card.state === 'taken-in' ? ', accepted' : closed ? ', signed' : ''
  return folded || !inRow ? (
    <>
      <b className={shown === 'x' ? undefined : 'fig c-figure'}>{figureOf(shown)}</b> {worth(pack.reading, line, shown)}
      {why}
    </>
  ) : (
    said(pack.reading, line, shown)
  )
}

function Picks({ pack, card, line, me, shown, mine, onWrite }: Props & { shown: WrittenScore; mine: WrittenScore }) {
  const level = levelOn(pack.reading, line)
  const name = `hole-${line.hole}-${card.card.cardId}`
  const others = line.written.filter((each) => !isOwn(each, me))

  const pick = (score: Exclude<WrittenScore, null>, offset: number | null) => {
    const wrote = others.filter((each) => each.score === score)
    const theirs = wrote.map((each) => whoWrote(pack, each, me, line.written))
    // Whose figure it is matters only where two differ, or where somebody else wrote it.
    const who = line.differs ? (mine === score ? 'you' : theirs.join(', ')) : mine === null ? theirs.join(', ') : ''
    const marked = line.differs && theirs.length > 0 && mine !== score
    const classes = ['c-pick', offset === 0 && 'par', score === 'x' && 'none', marked && 'theirs', who && 'two']
    const words = `${figureOf(score)}, ${worth(pack.reading, line, score)}${who ? `, ${who}` : ''}`
    return (
      <label key={score} className={classes.filter(Boolean).join(' ')}>
        <input
          type="radio"
          name={name}
          value={score}
          aria-label={words}
          checked={shown === score}
          onChange={(event) => onWrite(score, event.timeStamp)}
        />
        {score === 'x' ? (
          <span>
            no <br />
            score
          </span>
        ) : (
          <span className="fig trim">{score}</span>
        )}
        {who && (
          <span className="who">
            {who === 'you' ? who : [...new Set(wrote.map((each) => whoInSquare(pack, each, me)))].join(', ')}
          </span>
        )}
      </label>
    )
  }

  return (
    <div className="c-six">
      {OFFSETS.map((offset) =>
        level + offset >= 1 ? pick(level + offset, offset) : <span key={offset} className="c-pick gap" />,
      )}
      {pick('x', null)}
    </div>
  )
}
