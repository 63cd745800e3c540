'use client'

import type { CardPack } from '@/lib/facts/card-pack'
import type { CardNow, SignatureNow } from '@/lib/outbox/card-now'
import type { GroupBook, GroupSnapshot } from '@/lib/outbox/group-book'
import { isMarker, mayNotSign } from '@/lib/outbox/signing'
import { hashOf } from './use-place'
import { clock, fullName, shortName } from './words'

interface Props {
  readonly pack: CardPack
  readonly now: GroupSnapshot
  readonly book: GroupBook
  readonly card: CardNow
  readonly holder: string
  readonly refuse: (sentence: string | null) => void
}

type Role = SignatureNow['role']

/** Who may sign in a role: the player; the named marker, or anybody else of the group where none is named. */
function signers(pack: CardPack, card: CardNow, role: Role) {
  return pack.cards.filter((each) =>
    role === 'player' ? each.entryId === card.card.entryId : isMarker(card, each.entryId),
  )
}

export function SignPart({ pack, now, book, card, holder, refuse }: Props) {
  const firstHole = card.notAgreed[0] ?? card.missing[0]
  const stops = mayNotSign(card, 'player', card.card.entryId)
  const blocked = stops && (stops.code === 'not-agreed' || stops.code === 'holes-missing') ? stops : null
  return (
    <section className="c-sign" aria-label="Signatures">
      <SignedState card={card} received={now.waitingSignatures === 0} />
      {blocked && !card.closed && (
        <div className={`notice ${blocked.code === 'not-agreed' ? 'differs' : 'waits'}`}>
          <p className="sc">{blocked.code === 'not-agreed' ? 'Not agreed' : 'Not complete'}</p>
          <p>{blocked.sentence}</p>
          {firstHole !== undefined && (
            <p className="acts">
              <a className="btn" href={hashOf({ at: 'hole', hole: firstHole })}>
                Go to hole {firstHole}
              </a>
            </p>
          )}
        </div>
      )}
      <SignatureLine pack={pack} card={card} role="marker" />
      <SignatureLine pack={pack} card={card} role="player" />
      {!card.closed && !blocked && (
        <>
          <p className="small">
            Signing says that the gross score on each hole is right. After both have signed only the committee can
            change it. <span className="second">Rules of Golf 3.3b</span>
          </p>
          {(['marker', 'player'] as const)
            .filter((role) => !card.signatures.some((each) => each.role === role))
            .flatMap((role) => signers(pack, card, role).map((signer) => ({ role, signer })))
            .sort((a, b) => Number(b.signer.entryId === holder) - Number(a.signer.entryId === holder))
            .map(({ role, signer }, index) => (
              <button
                key={`${role} ${signer.entryId}`}
                type="button"
                className={index === 0 ? 'btn first wide' : 'btn wide'}
                onClick={async () => {
                  const done = await book.sign(card.card.cardId, role, signer.entryId)
                  refuse(done.ok ? null : done.sentence)
                }}
              >
                {role === 'player'
                  ? `I am ${signer.firstName}: sign my card`
                  : `I am ${signer.firstName}: sign as marker`}
              </button>
            ))}
          <a className="btn" href="#cards">
            A score is wrong
          </a>
        </>
      )}
      {card.closed && (
        <a className="btn first wide" href={`/${pack.societySlug}/days/${pack.daySlug}`}>
          See the board
        </a>
      )}
    </section>
  )
}

function SignedState({ card, received }: { card: CardNow; received: boolean }) {
  const { firstName, state } = { firstName: card.card.firstName, state: card.state }
  if (state === 'taken-in') return <p role="status">Taken in at the desk. Only the committee can change it now.</p>
  if (state === 'handed-in')
    return <p role="status">Handed in: the desk has it. Keep the paper card until the sheet is published.</p>
  if (card.closed)
    return (
      <p role="status">
        Signed by both. {received ? 'The desk has it.' : 'It is handed in when this phone has a signal.'}
      </p>
    )
  if (card.missing.length === 0 && card.notAgreed.length === 0)
    return (
      <p>Every hole has one score. Read the gross scores out to each other before {firstName} and the marker sign.</p>
    )
  return null
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
