'use client'

// The line above the tabs of a day: back to all golf days, to the one before and to the next.

import { createContext, type ReactNode, use } from 'react'
import Link from '@/app/_parts/link'
import { shortDateInWords } from '@/lib/boards/dates-in-words'

interface Day {
  readonly slug: string
  readonly number: number
  readonly name: string
  readonly date: string
}

interface Place extends Day {
  readonly of: number
  readonly before: Day | null
  readonly after: Day | null
}

const Here = createContext<{ readonly society: string; readonly place: Place } | null>(null)

interface Props {
  readonly society: string
  readonly place: Place | null
  readonly children: ReactNode
}

export function InDay({ society, place, children }: Props) {
  return <Here value={place && { society, place }}>{children}</Here>
}

/** Nothing outside a day. */
export function DayLine() {
  const here = use(Here)
  if (!here) return null
  const { society, place } = here
  const near = (day: Day | null, words: string) =>
    day ? (
      <Link href={`/desk/${society}/days/${day.slug}`} aria-label={`${words}: day ${day.number}, ${day.name}`}>
        Day {day.number}, {shortDateInWords(day.date)}
      </Link>
    ) : null
  return (
    <nav className="day-line" aria-label="Golf days">
      <Link href={`/desk/${society}`}>All golf days</Link>
      <span className="second">
        Day {place.number} of {place.of}, {place.name}, {shortDateInWords(place.date)}
      </span>
      <span className="day-line-near">
        {near(place.before, 'The day before')}
        {near(place.after, 'The next day')}
      </span>
    </nav>
  )
}
