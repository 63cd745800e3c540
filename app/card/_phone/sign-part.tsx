'use client'

import type { CardPack, PackBall } from '@/lib/facts/card-pack'
import type { EntryId } from '@/lib/facts/ids'
import { type CardNow, marksItself, type SignatureNow } from '@/lib/outbox/card-now'
import { mayNotSign, type SigningRefusal } from '@/lib/outbox/signing'
import { drivesLacking } from './side-ball'
import { signaturesOffInWords } from './signature-off'
import { hashOf } from './use-place'
import { clock, fullName, playersIn, shortName } from './words'

type Role = SignatureNow['role']

/** Who may still sign in a role: of a side any player; whoever signed as the one does not sign as the other. */
function signers(pack: CardPack, card: CardNow, role: Role) {
  const may = role === 'player' ? card.players : card.markers
  const signed = card.signatures.find((each) => each.role !== role)?.entryId
  return playersIn(pack).filter((each) => may.includes(each.entryId) && each.entryId !== signed)
}

export interface ToSign {
  readonly role: Role
  readonly entryId: EntryId
  readonly words: string
}

/** Who may sign now, whoever has the phone in the hand first; empty while something stands in the way. */
export function toSign(pack: CardPack, card: CardNow, inHand: string): readonly ToSign[] {
  if (card.closed || stopsSigning(card)) return []
  const own = card.players.length > 1 ? 'our' : 'my'
  const roles: readonly Role[] = marksItself(card) && card.signatures.length === 0 ? ['player'] : ['marker', 'player']
  return roles
    .filter((role) => !card.signatures.some((each) => each.role === role))
    .flatMap((role) =>
      signers(pack, card, role).map(({ entryId }) => ({
        role,
        entryId,
        words: `I am ${shortName(pack, entryId)}: sign ${role === 'player' ? `${own} card` : 'as marker'}`,
      })),
    )
    .sort((a, b) => Number(b.entryId === inHand) - Number(a.entryId === inHand))
}

/** Who signs after somebody has: the other role, by another person. */
export function signsNext(pack: CardPack, card: CardNow, who: ToSign): Pick<ToSign, 'role' | 'entryId'> | null {
  const role = who.role === 'player' ? 'marker' : 'player'
  if (card.signatures.some((each) => each.role === role)) return null
  const next = signers(pack, card, role).find((each) => each.entryId !== who.entryId)
  return next ? { role, entryId: next.entryId } : null
}

const STOPS: ReadonlySet<SigningRefusal> = new Set(['not-agreed', 'holes-missing', 'day-closed'])
const STOPS_WORD: Partial<Record<SigningRefusal, string>> = { 'not-agreed': 'Not agreed', 'day-closed': 'Too late' }

/** What must be put right before anybody signs, or that nobody does any more. */
function stopsSigning(card: CardNow) {
  const stops = mayNotSign(card, 'player', card.card.entryId)
  return stops && STOPS.has(stops.code) ? stops : null
}

/** Above the holes: what keeps the card from being signed, or that a signature came off. */
export function BeforeSigning({
  pack,
  card,
  balls,
}: {
  readonly pack: CardPack
  readonly card: CardNow
  readonly balls: readonly PackBall[]
}) {
  const stops = card.closed ? null : stopsSigning(card)
  const firstHole = card.notAgreed[0] ?? card.missing[0]
  return (
    <>
      {!stops &&
        balls.map((ball) => {
          const lacking = ball.cardId === card.card.cardId ? drivesLacking(ball) : null
          return lacking ? (
            <div key={ball.sideId} className="notice waits c-notice" role="status">
              <p>{lacking} Whose drive it was is written on the page of each hole.</p>
            </div>
          ) : null
        })}
      {signaturesOffInWords(pack, card).map((sentence) => (
        <div key={sentence} className="notice waits c-notice" role="status">
          <p>{sentence}</p>
        </div>
      ))}
      {stops && (
        <div className={`notice ${stops.code === 'not-agreed' ? 'differs' : 'waits'} c-notice`}>
          <p className="sc">{STOPS_WORD[stops.code] ?? 'Not finished'}</p>
          <p>{stops.sentence}</p>
          {card.onlyFor && card.missing.every((hole) => card.onlyFor?.holes.includes(hole)) && (
            <p>The match is over; {card.onlyFor.competition} needs the other holes.</p>
          )}
          {firstHole !== undefined && !card.isOver && (
            <p className="acts">
              <a className="btn" href={hashOf({ at: 'hole', hole: firstHole })}>
                Go to hole {firstHole}
              </a>
            </p>
          )}
        </div>
      )}
    </>
  )
}

interface Props {
  readonly pack: CardPack
  readonly card: CardNow
  /** Those who may sign besides the one whose button stands in the foot. */
  readonly others: readonly ToSign[]
  readonly onSign: (who: ToSign) => void
}

export function SignPart({ pack, card, others, onSign }: Props) {
  return (
    <section className="c-sign" aria-label="Signatures">
      <SignatureLine pack={pack} card={card} role="marker" />
      <SignatureLine pack={pack} card={card} role="player" />
      {!card.closed && !stopsSigning(card) && (
        <>
          <p className="small">
            Read the gross scores out to each other. Signing says that the gross score on each hole is right. After both
            have signed only the committee can change it. <span className="second">Rules of Golf 3.3b</span>
          </p>
          {marksItself(card) && (
            <p className="small">
              No other side is in this group: one of you signs as the player and another as the marker.
            </p>
          )}
          {others.map((who) => (
            <button key={`${who.role} ${who.entryId}`} type="button" className="btn wide" onClick={() => onSign(who)}>
              {who.words}
            </button>
          ))}
        </>
      )}
    </section>
  )
}

function SignatureLine({ pack, card, role }: { pack: CardPack; card: CardNow; role: Role }) {
  const signature = card.signatures.find((each) => each.role === role)
  const expected = signers(pack, card, role)
  const signer = signature && playersIn(pack).find((each) => each.entryId === signature.entryId)
  const word = role === 'player' ? 'Player' : 'Marker'
  const toSign = expected.length === 1 && expected[0] ? `${shortName(pack, expected[0].entryId)}, to sign` : 'to sign'
  return (
    <div className="c-sign-line">
      <p className={signature ? 'hand-written' : 'hand-written to-come'}>
        {signature ? signer ? fullName(signer) : 'On paper' : <span className="unseen">not signed yet</span>}
      </p>
      <p className="small">
        <span>{word}</span>
        <span>
          {signature ? `signed ${clock(signature.signedAt)}${signature.received ? '' : ', on this phone'}` : toSign}
        </span>
      </p>
    </div>
  )
}
