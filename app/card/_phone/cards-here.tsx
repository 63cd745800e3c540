'use client'

import { useEffect, useState } from 'react'
import { dateInWords } from '@/lib/boards/dates-in-words'
import { dateOnPhone, onlyCurrent } from '@/lib/outbox/current-card'
import { type CardHere, cardsOnThisPhone } from '@/lib/outbox/on-this-phone'
import { useKeptPage } from './use-kept-page'

const addressOf = (card: CardHere) => `/card/${encodeURIComponent(card.link)}`
const counted = (count: number, what: string) => (count > 0 ? [`${count} ${what}${count === 1 ? '' : 's'}`] : [])

function notSent({ waitingScores, waitingSignatures }: CardHere): string | null {
  const parts = [...counted(waitingScores, 'score'), ...counted(waitingSignatures, 'signature')]
  return parts.length > 0 ? `${parts.join(' and ')} not yet sent` : null
}

/** Whoever comes for the code form says so in the address, and stays here. */
const wantsTheForm = () => window.location.hash === '#code'

/**
 * Cards this phone holds, for whoever opens the card from the home screen, with a signal or without. Where only one can
 * be meant, it is opened.
 */
export function CardsHere() {
  const [cards, setCards] = useState<readonly CardHere[]>([])
  useKeptPage()
  useEffect(() => {
    let gone = false
    void cardsOnThisPhone().then((found) => {
      if (gone) return
      const only = wantsTheForm() ? null : onlyCurrent(found, dateOnPhone(new Date()))
      if (only) window.location.replace(addressOf(only))
      else setCards(found)
    })
    return () => {
      gone = true
    }
  }, [])
  if (cards.length === 0) return null
  return (
    <>
      <h2 className="sc">On this phone</h2>
      <ul className="c-who">
        {cards.map((card) => {
          const unsent = notSent(card)
          return (
            <li key={card.link}>
              <a className="btn" href={addressOf(card)}>
                {card.dayName}, group {card.group}
                <span className="small">
                  {dateInWords(card.date)}
                  {unsent && ` · ${unsent}`}
                </span>
              </a>
            </li>
          )
        })}
      </ul>
    </>
  )
}
