import Link from 'next/link'
import { Notice } from '@/app/_parts/notice'
import { DeskFrame, DeskRefusal, dayTabs } from '@/app/desk/_frame/desk-frame'
import { LiveRefresh } from '@/app/desk/_frame/live-refresh'
import { timeOf } from '@/app/desk/_frame/moments'
import { officerOr } from '@/app/desk/_frame/officer'
import { handicap } from '@/app/desk/_frame/words'
import { formatIn } from '@/lib/boards/format-of-competition'
import type { CardReturn, ReturnsView } from '@/lib/boards/returns-view'
import { deskDay } from '@/lib/society/desk-day'
import { returns } from '@/lib/society/returns'
import { giveChosenRuling, giveRuling, keepCard } from './actions'
import { KeyCard } from './key-card'
import { NotAgreed } from './not-agreed'
import type { Reading } from './reading'
import { ReturnsList } from './returns-list'
import { RuleForm } from './rule-form'
import { Rulings } from './rulings'

interface Props {
  readonly params: Promise<{ society: string; day: string }>
  readonly searchParams: Promise<{ card?: string; rule?: string; after?: string; ruled?: string }>
}

const READINGS: Record<ReturnsView['unit'], Reading> = { points: 'points', strokes: 'net', holes: 'par' }

export default async function Returns({ params, searchParams }: Props) {
  const { society, day } = await params
  const asked = await searchParams
  const here = `/desk/${society}/days/${day}/returns`
  const actor = await officerOr(society, here)
  const found = await deskDay(actor, day)
  if (!found.ok) return <DeskRefusal answer={found} back={`/desk/${society}`} />
  const answer = await returns(actor, found.value.record.id)
  if (!answer.ok) return <DeskRefusal answer={answer} back={`/desk/${society}/days/${day}`} />
  const view = answer.value
  const cards = view.groups.flatMap((group) => group.cards)
  const card = cards.find((one) => one.cardId === asked.card) ?? firstToKey(cards)
  const ruled = view.rulings.find((one) => String(one.number) === asked.ruled)
  const before = cards.find((one) => one.cardId === asked.after && one.state === 'taken-in')

  return (
    <DeskFrame
      societySlug={society}
      societyName={view.societyName}
      tabs={dayTabs(society, day)}
      current="returns"
      folio={`Day ${view.dayNumber}`}
      mainClass="returns"
    >
      <LiveRefresh society={society} day={day} />
      {cards.length === 0 ? (
        <div className="returns-main">
          <h1>Returns</h1>
          <p className="lead">There are no cards yet. They are made when the start sheet is published.</p>
          <p className="acts">
            <Link className="btn" href={`/desk/${society}/days/${day}/draw`}>
              To the draw
            </Link>
          </p>
        </div>
      ) : (
        <>
          <ReturnsList view={view} current={card?.cardId} here={here} />
          <div className="returns-main">
            {before ? (
              <p className="said" role="status">
                {before.name}’s card is taken in{before.gross === null ? '' : `, ${before.gross} strokes`}.
              </p>
            ) : null}
            {ruled ? (
              <p className="said" role="status">
                Ruling {ruled.number} is in the list below, with {ruled.by}’s name and the time.
              </p>
            ) : null}
            {card ? (
              <OneCard
                card={card}
                view={view}
                where={{ society, day }}
                rule={asked.rule}
                begin={asked.card !== undefined && asked.rule === undefined && asked.ruled === undefined}
                hasMatches={found.value.record.competitions.some((one) => formatIn(one)?.isMatch ?? false)}
              />
            ) : (
              <>
                <h1>Returns</h1>
                <p className="lead">All {view.cards} cards are in.</p>
                <p className="acts">
                  <Link className="btn first" href={`/desk/${society}/days/${day}/result`}>
                    Close the day
                  </Link>
                </p>
              </>
            )}
            <Rulings view={view} />
          </div>
        </>
      )}
    </DeskFrame>
  )
}

const firstToKey = (cards: readonly CardReturn[]) =>
  cards.find((card) => card.notAgreed.length > 0 && card.state !== 'taken-in') ??
  cards.find((card) => card.state === 'handed-in') ??
  cards.find((card) => card.state === 'out' && card.outcome === null)

interface CardProps {
  readonly card: CardReturn
  readonly view: ReturnsView
  readonly where: { readonly society: string; readonly day: string }
  readonly rule: string | undefined
  readonly begin: boolean
  readonly hasMatches: boolean
}

function OneCard({ card, view, where, rule, begin, hasMatches }: CardProps) {
  const shut = card.state === 'taken-in' || view.status === 'closed'
  const ruling = giveRuling.bind(null, where)
  const open = card.holes.filter((hole) => hole.notAgreed)
  const facts = [
    card.playingHandicap === null ? null : `Off ${handicap(card.playingHandicap)}`,
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
        {view.status === 'closed' || card.outcome ? null : (
          <div className="acts">
            <Link className="btn" href={`?card=${card.cardId}&rule=no-return`} scroll={false}>
              No return
            </Link>
          </div>
        )}
      </div>
      <KeyCard
        key={card.cardId}
        card={card}
        reading={READINGS[view.unit]}
        keep={keepCard.bind(null, where)}
        shut={shut}
        begin={begin}
      />
      <Signatures card={card} />
      {shut ? null : <InTheWay card={card} />}
      {open.length > 0 && view.status !== 'closed' ? (
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
      {view.status === 'closed' ? null : (
        <RuleForm
          key={`rule ${card.cardId}`}
          card={card}
          action={ruling}
          kind={rule}
          byChoice={giveChosenRuling.bind(null, where)}
          hasMatches={hasMatches}
        />
      )}
    </>
  )
}

function Signatures({ card }: { readonly card: CardReturn }) {
  if (card.signatures.length === 0) return null
  return (
    <ul className="signatures small">
      {card.signatures.map((one) => (
        <li key={`${one.role} ${one.signedAt}`}>
          Signed by {one.name}, {one.role}, at {timeOf(one.signedAt)}
          {one.covers ? '' : '; a score changed after that, so it no longer covers the card'}.
        </li>
      ))}
    </ul>
  )
}

/** What stands in the way besides the open holes, which the card itself shows. */
function InTheWay({ card }: { readonly card: CardReturn }) {
  const begun = card.missing.length < card.holes.length
  const others = card.faults.filter((fault) => !card.missing.some((hole) => fault.place === `hole ${hole}`))
  if (!begun || others.length === 0) return null
  return (
    <Notice kind="waits" word="Before it can be taken in">
      <ul>
        {others.map((fault) => (
          <li key={`${fault.place} ${fault.sentence}`}>{fault.sentence}</li>
        ))}
      </ul>
    </Notice>
  )
}
