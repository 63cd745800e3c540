'use client'

import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { StartsAgain } from '@/app/desk/_form/unsaved'
import type { CardReturn } from '@/lib/boards/returns-view'
import { AcceptedMeanwhile, ChangedMeanwhile } from './changed-meanwhile'
import { KeepButtons } from './keep-buttons'
import { keepDraft } from './kept-draft'
import { HEADS, KeyedNine, worth } from './keyed-nine'
import { lineOf, type Paper } from './keying'
import type { PaperRowProps } from './paper-row'
import { PaperSigned } from './paper-signed'
import type { Reading } from './reading'
import { type Access, useKeying } from './use-keying'

interface Props {
  readonly card: CardReturn
  readonly reading: Reading
  readonly keep: FormAction
  readonly access: Access
  /** Comes up to be entered: the first open hole is under the hand at once. */
  readonly begin: boolean
}

/** The paper card under the hand. Everything works from the number row; nothing needs the mouse. */
export const KeyCard = (props: Props) => (
  <StartsAgain>
    <KeyedCard {...props} />
  </StartsAgain>
)

function KeyedCard({ card, reading, keep, access, begin }: Props) {
  const keying = useKeying(card, access, begin)
  const { now, runs, off, half, table, takeIn } = keying
  const isEntered = access === 'entered'
  const hasHalves = half < card.holes.length
  const value = card.holes.reduce((sum, hole, place) => sum + (worth(hole, now.scores[place] ?? null, reading) ?? 0), 0)
  const counts = reading === 'points' ? `${value} points` : `${runs.total.gross} strokes`

  const paper = (part: keyof Paper): PaperRowProps => ({
    part,
    run: runs[part],
    text: now.paper[part],
    onText: keying.onPaper,
    readOnly: !isEntered,
    ...(part === 'total'
      ? { namesOpen: keying.passed, field: keying.totalBox, onFocus: () => keying.onHand(now.scores.length) }
      : {}),
  })
  const papers = (...parts: (keyof Paper)[]) => parts.filter((part) => isEntered || now.paper[part] !== '').map(paper)
  const nine = { card, reading, now, onTyped: keying.onTyped, onHand: keying.onHand, shut: !isEntered }

  return (
    <ActForm
      action={keep}
      className="keep-card"
      label={`Card of ${card.name}`}
      onAnswer={keying.onAnswer}
      saves
      keeps
      found={keying.foundDraft && keying.isNew}
      moot={access === 'closed'}
      readOnly={!isEntered}
      meanwhile="It stays in this window until it is saved."
      onUndo={() => keepDraft(card.cardId, null)}
    >
      <input type="hidden" name="cardId" value={card.cardId} />
      <input type="hidden" name="base" value={lineOf(now.base)} />
      {keying.foundDraft ? (
        <p className="said" role="status">
          What was entered here before and not saved is still in the fields.
        </p>
      ) : null}
      <AcceptedMeanwhile replaced={keying.replaced} />
      <ChangedMeanwhile card={card} now={now} places={keying.clashing} onSettle={keying.settle} />
      <div className="keying" ref={table} onKeyDown={isEntered ? keying.onKeyDown : undefined}>
        {hasHalves ? (
          <>
            <KeyedNine {...nine} from={0} to={half} label="Out" papers={papers('out')} />
            <hr className="fold" />
            <KeyedNine {...nine} from={half} to={card.holes.length} label="In" papers={papers('in', 'total')} />
          </>
        ) : (
          <KeyedNine {...nine} from={0} to={half} label="All" papers={papers('total')} />
        )}
      </div>
      <div className="check">
        <dl className="check-run">
          <div>
            <dt>score</dt>
            <dd className="fig trim">{runs.total.gross}</dd>
          </div>
          {HEADS[reading] ? (
            <div>
              <dt>{HEADS[reading].toLowerCase()}</dt>
              <dd className="fig trim">{value}</dd>
            </div>
          ) : null}
          <div>
            <dt>of {card.holes.length} holes</dt>
            <dd className="fig trim">{runs.total.keyed}</dd>
          </div>
        </dl>
        <div className="check-acts">
          {isEntered ? <PaperSigned card={card} /> : null}
          <p className="wants" role="alert">
            {keying.wants}
            {keying.notWritten === ''
              ? null
              : ` Pressed for the next card and not written anywhere: ${keying.notWritten}.`}
          </p>
          {access === 'closed' ? null : (
            <KeepButtons
              open={runs.total.open.length}
              although={off.length > 0 ? counts : null}
              takeIn={takeIn}
              card={card}
              acceptOnly={!isEntered}
            />
          )}
          {off.length > 0 ? (
            <p className="small">
              The holes count, not the total: adding up is the committee’s task. Rules of Golf 3.3b(4)
            </p>
          ) : null}
        </div>
        {isEntered ? (
          <p className="keys small">
            <kbd>1</kbd>–<kbd>9</kbd> enters and moves on · <kbd>T</kbd> is 10, <kbd>+</kbd> one more · <kbd>0</kbd> or{' '}
            <kbd>X</kbd> no score · <kbd>Tab</kbd> passes over a hole · <kbd>←</kbd> back · <kbd>S</kbd> both signed ·{' '}
            <kbd>Enter</kbd> accepts, then the next card. <b>After the last hole you are in the box for the total:</b>{' '}
            no figure typed there goes into a hole.
          </p>
        ) : null}
      </div>
    </ActForm>
  )
}
