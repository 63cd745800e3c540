'use client'

import { useEffect, useState } from 'react'
import { isPromised } from '@/lib/outbox/on-this-phone'
import { HomeScreenAdvice } from './home-screen'

/** What the browser has promised about the card, in words: it is asked when the holder is chosen. */
export function HowKept() {
  const [promised, setPromised] = useState<boolean | null>(null)
  useEffect(() => {
    void isPromised().then(setPromised)
  }, [])
  return (
    <>
      {promised === null ? null : (
        <p className="small">
          {promised
            ? 'This browser has promised to keep the card until you remove it.'
            : 'This browser keeps the card, but may clear it when the phone runs out of room, and a private window forgets it when it is closed. Keep a paper card as well.'}
        </p>
      )}
      <HomeScreenAdvice />
      <p className="small">
        <a href="/card#code">Open the card of another group</a>
      </p>
    </>
  )
}
