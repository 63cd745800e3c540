'use client'

import type { CardPack } from '@/lib/facts/card-pack'
import type { EntryId } from '@/lib/facts/ids'
import type { CardNow, SignatureNow } from '@/lib/outbox/card-now'
import { isMarker, mayNotSign } from '@/lib/outbox/signing'
import { signaturesOffInWords } from './signature-off'
import { hashOf } from './use-place'
import { clock, fullName, shortName } from './words'

type Role = SignatureNow['role']

/** Who may sign in a role: the player; the named marker, or anybody else of the group where none is named. */
function signers(pack: CardPack, card: CardNow, role: Role) {
  return pack.cards.filter((each) =>
    role === 'player' ? each.entryId === card.card.entryId : isMarker(card, each.entryId),
  )
}

export interface ToSign {
  readonly role: Role
  readonly entryId: EntryId
  readonly words: string
}

/** Who may sign now, whoever has the phone in the hand first; empty while something stands in the way. */
export function toSign(pack: CardPack, card: CardNow, inHand: string): readonly ToSign[] {
  if (card.closed || stopsSigning(card)) return []
  return (['marker', 'player'] as const)
    .filter((role) => !card.signatures.some((each) => each.role === role))
    .flatMap((role) =>
      signers(pack, card, role).map(({ entryId, firstName }) => ({
        role,
        entryId,
        words: role === 'player' ? `I am ${firstName}: sign my card` : `I am ${firstName}: sign as marker`,
      })),
    )
    .sort((a, b) => Number(b.entryId === inHand) - Number(a.entryId === inHand))
}

/** What must be put right before anybody signs. */
function stopsSigning(card: CardNow) {
  const stops = mayNotSign(card, 'player', card.card.entryId)
  return stops && (stops.code === 'not-agreed' || stops.code === 'holes-missing') ? stops : null
}

/** Above the holes: what keeps the card from being signed, or that a signature came off. */
export function BeforeSigning({ pack, card }: { readonly pack: CardPack; readonly card: CardNow }) {
  const stops = card.closed ? null : stopsSigning(card)
  const firstHole = card.notAgreed[0] ?? card.missing[0]
  return (
    <>
      {signaturesOffInWords(pack, card).map((sentence) => (
        <div key={sentence} className="notice waits c-notice" role="status">
          <p>{sentence}</p>
        </div>
      ))}
      {stops && (
        <div className={`notice ${stops.code === 'not-agreed' ? 'differs' : 'waits'} c-notice`}>
          <p className="sc">{stops.code === 'not-agreed' ? 'Not agreed' : 'Not finished'}</p>
          <p>{stops.sentence}</p>
          {firstHole !== undefined && (
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
  const signer = signature && pack.cards.find((each) => each.entryId === signature.entryId)
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
