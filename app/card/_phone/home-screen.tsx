'use client'

import { useEffect, useState } from 'react'

interface OnIphone extends Navigator {
  readonly standalone?: boolean
}

const isOnHomeScreen = () =>
  window.matchMedia('(display-mode: standalone)').matches || (navigator as OnIphone).standalone === true

/**
 * A page on the home screen of an iPhone has a storage of its own: what was written before stays in the browser, and the
 * home screen begins with nothing. So it is said while nothing is written yet.
 */
export function HomeScreenAdvice() {
  const [here, setHere] = useState(false)
  useEffect(() => setHere(!isOnHomeScreen()), [])
  if (!here) return null
  return (
    <p className="small">
      If you want the card on your home screen, add it before the first score, and open it there once while there is a
      signal. On an iPhone, scores typed in this window do not show in the card on the home screen.
    </p>
  )
}
