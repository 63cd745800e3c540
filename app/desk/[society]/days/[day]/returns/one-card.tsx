import Link from '@/app/_parts/link'
import { Notice } from '@/app/_parts/notice'
import { timeOf } from '@/app/desk/_frame/moments'
import { handicap } from '@/app/desk/_frame/words'
import { listed } from '@/lib/boards/in-words'
import type { CardReturn, ReturnsView } from '@/lib/boards/returns-view'
import { giveChosenRuling, giveRuling, keepCard, openCardAgain } from './actions'
import { KeyCard } from './key-card'
import { NotAgreed } from './not-agreed'
import { OpenAgain } from './open-again'
import type { Reading } from './reading'
import { RuleForm } from './rule-form'
import type { Access } from './use-keying'

interface Props {
  readonly card: CardReturn
  readonly view: ReturnsView
  readonly where: { readonly society: string; readonly day: string }
  readonly rule: string | undefined
  readonly begin: boolean
}

const READINGS: Record<ReturnsView['unit'], Reading> = { points: 'points', strokes: 'net', holes: 'par', skins: 'net' }

function accessTo(card: CardReturn, view: ReturnsView): Access {
  if (card.state === 'taken-in' || view.status === 'closed') return 'closed'
  return card.state === 'handed-in' ? 'signed' : 'entered'
}

/** The card that was chosen, with everything the desk may do to it. */
export function OneCard({ card, view, where, rule, begin }: Props) {
  const access = accessTo(card, view)
  const isClosed = view.status === 'closed'
  const ruling = giveRuling.bind(null, where)
  const open = card.holes.filter((hole) => hole.notAgreed)
  const facts = [
    card.playingHandicap === null ? null : `Playing handicap ${handicap(card.playingHandicap)}`,
    `${card.tee.name.toLowerCase()} tees`,
    card.note,
    card.marker ? `marker ${card.marker.name}` : null,
  ].filter((one): one is string => one !== null)
  return (
    <>
      <div className="ret-head">
        <div>
          <h1>{card.name}</h1>
          <p className="second">
            {facts.join(', ')}. {card.line.charAt(0).toUpperCase() + card.line.slice(1)}
            {card.takenInAt ? `, ${timeOf(card.takenInAt)}` : ''}.
          </p>
        </div>
        {isClosed || card.outcome ? null : (
          <div className="acts">
            <Link className="btn" href={`?card=${card.cardId}&rule=no-return`} scroll={false}>
              No return
            </Link>
          </div>
        )}
      </div>
      {card.state !== 'out' && !isClosed ? (
        <div className="read-only">
          <p className="small">
            {card.state === 'taken-in' ? 'Accepted' : 'Signed and handed in'}: the scores can only be read. A slip in
            entering them is put right by opening the card again; that is noted in the record and needs no decision of
            the committee.
          </p>
          <OpenAgain
            card={card}
            action={openCardAgain.bind(null, where)}
            reason={view.isPublished ? 'needed' : 'optional'}
          />
        </div>
      ) : null}
      <KeyCard
        key={card.cardId}
        card={card}
        reading={READINGS[view.unit]}
        keep={keepCard.bind(null, where)}
        access={access}
        begin={begin}
      />
      <Signatures card={card} />
      {access === 'closed' ? null : <InTheWay card={card} />}
      {isClosed ? null : <TooFewDrives card={card} at={`/desk/${where.society}/days/${where.day}/matches`} />}
      {open.length > 0 && !isClosed ? (
        <section aria-labelledby="not-agreed-h">
          <h2 id="not-agreed-h">Not agreed</h2>
          {open.map((hole, place) => (
            <NotAgreed
              key={hole.hole}
              card={card}
              hole={hole}
              times={Object.fromEntries(hole.written.map((one) => [one.writer, timeOf(one.writtenAt)]))}
              action={ruling}
              first={place === 0}
            />
          ))}
        </section>
      ) : null}
      {isClosed ? null : (
        <RuleForm
          key={`rule ${card.cardId}`}
          card={card}
          action={ruling}
          kind={rule}
          byChoice={giveChosenRuling.bind(null, where)}
          hasMatches={view.hasMatches}
          reading={READINGS[view.unit]}
        />
      )}
    </>
  )
}

function Signatures({ card }: { readonly card: CardReturn }) {
  const onPaper = card.signatures.filter((one) => one.onPaper && one.covers)
  const rest = card.signatures.filter((one) => !one.onPaper)
  if (onPaper.length + rest.length === 0) return null
  const entered = onPaper.at(-1)
  return (
    <ul className="signatures small">
      {entered ? (
        <li>
          Signed on paper by{' '}
          {listed(ROLES.filter((role) => onPaper.some((one) => one.role === role)).map((role) => signer(card, role)))},
          entered at {timeOf(entered.signedAt)}.
        </li>
      ) : null}
      {rest.map((one) => (
        <li key={`${one.role} ${one.signedAt}`}>
          Signed on the phone by {one.name}, {one.role}, at {timeOf(one.signedAt)}
          {one.covers ? '' : '; a score changed after that, so it no longer covers the card'}.
        </li>
      ))}
    </ul>
  )
}

const ROLES = ['player', 'marker'] as const

const signer = (card: CardReturn, role: 'player' | 'marker') =>
  role === 'player' ? `the player, ${card.player}` : card.marker ? `the marker, ${card.marker.name}` : 'the marker'

/** Nothing forbids accepting it: what follows is for the committee to say. */
function TooFewDrives({ card, at }: { readonly card: CardReturn; readonly at: string }) {
  if (card.drivesShort.length === 0) return null
  return (
    <Notice
      kind="waits"
      word="Too few drives"
      acts={
        <Link className="btn" href={at}>
          Enter the drives
        </Link>
      }
    >
      {card.drivesShort.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p>
        Drives from a paper card are entered under Sides and matches. Accepted as it is, the side keeps its place until
        the committee rules.
      </p>
    </Notice>
  )
}

/** What stands in the way besides the open holes, which the card itself shows. */
function InTheWay({ card }: { readonly card: CardReturn }) {
  const begun = card.missing.length < card.holes.length
  const others = card.faults.filter((fault) => !card.missing.some((hole) => fault.place === `hole ${hole}`))
  if (!begun || others.length === 0) return null
  return (
    <Notice kind="waits" word="Before it can be accepted">
      <ul>
        {others.map((fault) => (
          <li key={`${fault.place} ${fault.sentence}`}>{fault.sentence}</li>
        ))}
      </ul>
    </Notice>
  )
}
