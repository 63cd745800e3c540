'use client'

import { useCallback, useSyncExternalStore } from 'react'
import type { EntryId } from '@/lib/facts/ids'

/** Where on the card the holder is. It lives in the address, so that Back and a reload keep it. */
export type Place =
  | { readonly at: 'start' }
  | { readonly at: 'hole'; readonly hole: number }
  | { readonly at: 'cards' }
  | { readonly at: 'card'; readonly entryId: EntryId }
  | { readonly at: 'phone' }

const read = () => window.location.hash
const onServer = () => ''
function subscribe(run: () => void) {
  window.addEventListener('hashchange', run)
  return () => window.removeEventListener('hashchange', run)
}

export function placeOf(hash: string): Place {
  const hole = /^#hole-(\d{1,2})$/.exec(hash)
  if (hole) return { at: 'hole', hole: Number(hole[1]) }
  const card = /^#card-(.+)$/.exec(hash)
  if (card?.[1]) return { at: 'card', entryId: decodeURIComponent(card[1]) as EntryId }
  return hash === '#cards' ? { at: 'cards' } : hash === '#phone' ? { at: 'phone' } : { at: 'start' }
}

export function hashOf(place: Place): string {
  if (place.at === 'hole') return `#hole-${place.hole}`
  if (place.at === 'card') return `#card-${encodeURIComponent(place.entryId)}`
  return place.at === 'start' ? '#' : `#${place.at}`
}

export function usePlace(): [Place, (place: Place) => void] {
  const hash = useSyncExternalStore(subscribe, read, onServer)
  const go = useCallback((place: Place) => {
    // From hole to hole the address is replaced: Back leads out of the holes, not through eighteen of them.
    const between = placeOf(read()).at === 'hole' && place.at === 'hole'
    if (between) window.location.replace(hashOf(place))
    else window.location.hash = hashOf(place)
    window.scrollTo(0, 0)
  }, [])
  return [placeOf(hash), go]
}
