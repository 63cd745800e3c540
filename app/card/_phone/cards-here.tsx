'use client'

import { useEffect, useState } from 'react'
import { dateInWords } from '@/lib/boards/dates-in-words'
import { type CardHere, cardsOnThisPhone } from '@/lib/outbox/on-this-phone'
import { useKeptPage } from './use-kept-page'

/** Cards this phone holds, for whoever opens the card from the home screen, with a signal or without. */
export function CardsHere() {
  const [cards, setCards] = useState<readonly CardHere[]>([])
  useKeptPage()
  useEffect(() => {
    void cardsOnThisPhone().then(setCards)
  }, [])
  if (cards.length === 0) return null
  return (
    <>
      <h2 className="sc">On this phone</h2>
      <ul className="c-who">
        {cards.map((card) => (
          <li key={card.link}>
            <a className="btn" href={`/card/${encodeURIComponent(card.link)}`}>
              {card.dayName}, group {card.group}
              <span className="small">
                {dateInWords(card.date)}
                {card.waiting > 0 && ` · ${card.waiting} not yet received`}
              </span>
            </a>
          </li>
        ))}
      </ul>
    </>
  )
}
