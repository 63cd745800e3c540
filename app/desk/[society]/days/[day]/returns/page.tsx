import { redirect } from 'next/navigation'
import Link from '@/app/_parts/link'
import { DayAhead } from '@/app/desk/_frame/day-ahead'
import { DeskFrame, DeskRefusal, dayTabs } from '@/app/desk/_frame/desk-frame'
import { LiveRefresh } from '@/app/desk/_frame/live-refresh'
import { timeOf } from '@/app/desk/_frame/moments'
import { officerOr } from '@/app/desk/_frame/officer'
import { scoreLong } from '@/lib/boards/in-words'
import type { CardReturn, ReturnsView } from '@/lib/boards/returns-view'
import { deskDay } from '@/lib/society/desk-day'
import { returnsAt } from '@/lib/society/returns'
import { openCardAgain } from './actions'
import { OneCard } from './one-card'
import { OpenAgain } from './open-again'
import { ReturnsList } from './returns-list'
import { Rulings } from './rulings'

interface Props {
  readonly params: Promise<{ society: string; day: string }>
  readonly searchParams: Promise<{ card?: string; rule?: string; after?: string; ruled?: string }>
}

export default async function Returns({ params, searchParams }: Props) {
  const { society, day } = await params
  const asked = await searchParams
  const here = `/desk/${society}/days/${day}/returns`
  const actor = await officerOr(society, here)
  const answer = await returnsAt(actor, day)
  if (!answer.ok) return <DeskRefusal answer={answer} back={`/desk/${society}`} />
  const view = answer.value
  const cards = view.groups.flatMap((group) => group.cards)
  const first = firstToKey(cards)
  // The card stands in the address, so that an answer about it is read on it and not on the next one.
  if (Object.keys(asked).length === 0 && first && isBlank(first)) redirect(`${here}?card=${first.cardId}`)
  const card = cards.find((one) => one.cardId === asked.card) ?? first
  const ruled = view.rulings.find((one) => String(one.number) === asked.ruled)
  // Where nothing is accepted yet the day may lie ahead: nothing can be entered before that is said.
  const desk = view.takenIn === 0 && view.status !== 'closed' ? await deskDay(actor, day) : null
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
          <ReturnsList view={view} current={card?.cardId} here={here} where={{ society, day }} />
          <div className="returns-main">
            {desk?.ok ? <DayAhead desk={desk.value} where={{ society, day }} /> : null}
            {before ? <Accepted card={before} view={view} where={{ society, day }} here={here} /> : null}
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
                begin={
                  asked.rule === undefined && asked.ruled === undefined && (asked.card !== undefined || isBlank(card))
                }
              />
            ) : (
              <>
                <h1>Returns</h1>
                <p className="lead">
                  All {view.cards} cards are in{view.status === 'closed' ? ', and the day is closed' : ''}.
                </p>
                <p className="acts">
                  <Link
                    className={view.status === 'closed' ? 'btn' : 'btn first'}
                    href={`/desk/${society}/days/${day}/result`}
                  >
                    {view.status === 'closed' ? 'See the result' : 'Close the day'}
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

/** Nothing is written on it yet: it waits for its paper. */
const isBlank = (card: CardReturn) =>
  card.state === 'out' && card.outcome === null && card.missing.length === card.holes.length

/** A card to enter before one to sort out or to accept: whoever opens the page by its plain address has paper in hand. */
const firstToKey = (cards: readonly CardReturn[]) =>
  cards.find(isBlank) ??
  cards.find((card) => card.notAgreed.length > 0 && card.state !== 'taken-in') ??
  cards.find((card) => card.state === 'handed-in') ??
  cards.find((card) => card.state === 'out' && card.outcome === null)

interface AcceptedProps {
  readonly card: CardReturn
  readonly view: ReturnsView
  readonly where: { readonly society: string; readonly day: string }
  readonly here: string
}

/** The last card accepted stays in sight: a slip is seen in the moment after. */
function Accepted({ card, view, where, here }: AcceptedProps) {
  const score = card.score === null ? null : scoreLong(card.score, view.unit, true)
  return (
    <div className="accepted">
      <p role="status">
        <b>
          Accepted: {card.name}
          {score === null ? '' : `, ${score}`}.
        </b>{' '}
        {card.takenInAt ? <span className="second">{timeOf(card.takenInAt)}.</span> : null}
      </p>
      {view.isPublished || view.status === 'closed' ? (
        <Link href={`${here}?card=${card.cardId}`}>Look at this card again</Link>
      ) : (
        <OpenAgain card={card} action={openCardAgain.bind(null, where)} reason="none" />
      )}
    </div>
  )
}
