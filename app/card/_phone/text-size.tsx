'use client'

import { useEffect, useRef } from 'react'

/**
 * Asks the browser to look at the width of the card again when the size of the text has changed. Some do not do so by
 * themselves for widths told in letters, and the card would hang over the edge until the phone is turned.
 */
export function TextSize() {
  const probe = useRef<HTMLSpanElement>(null)
  useEffect(() => {
    const letter = probe.current
    const hand = letter?.closest<HTMLElement>('.hand')
    if (!letter || !hand || typeof ResizeObserver === 'undefined') return
    const watch = new ResizeObserver(() => {
      hand.style.containerType = 'normal'
      void hand.offsetWidth
      hand.style.containerType = ''
    })
    watch.observe(letter)
    return () => watch.disconnect()
  }, [])
  return <span className="c-letter" ref={probe} aria-hidden="true" />
}
