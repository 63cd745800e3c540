import type { Metadata } from 'next'
import { cache } from 'react'
import { Device } from '@/app/_parts/device'
import { Folio } from '@/app/_parts/folio'
import { fixtures } from '@/lib/society/read-board'
import { countAt, societyAt } from '../_board/addresses'
import { type Asked, found, one } from '../_board/answer'
import { FixtureDays, nextDay, nextSentence } from '../_board/fixture-days'
import { NothingHere } from '../_board/nothing-here'
import '../_styles/fixtures.css'

interface Props {
  params: Promise<{ society: string }>
  searchParams: Asked
}

const read = cache(fixtures)

export async function generateMetadata({ params, searchParams }: Props): Promise<Metadata> {
  const { society } = await params
  const card = await read(society, one((await searchParams).season))
  if (!card.ok) return { title: 'Fixture card' }
  const { societyName, seasonName } = card.value
  return {
    title: seasonName ? `Fixture card ${seasonName} · ${societyName}` : societyName,
    description: `The days of ${societyName}: dates, courses, formats and results.`,
  }
}

export default async function FixturePage({ params, searchParams }: Props) {
  const { society } = await params
  const { value: card, refusal } = found(await read(society, one((await searchParams).season)))
  if (refusal) return <NothingHere society={society} refusal={refusal} />
  const next = nextDay(card)
  return (
    <div className="page">
      <a className="skip" href="#main">
        To the page
      </a>
      <main id="main" className="fixtures">
        <div className="fx-sheet">
          <div className="fx-cover">
            <Device />
            <h1>{card.societyName}</h1>
            {card.seasonName && <p className="fig fx-season">{card.seasonName}</p>}
            <p className="lead">{nextSentence(card, next)}</p>
            {card.foundedYear && <p className="sc second">Founded {card.foundedYear}</p>}
            {card.isDemo && (
              <p className="small second">An invented society, to show the book at work. Nobody here is real.</p>
            )}
          </div>
          <hr className="fx-fold" aria-hidden="true" />
          <section className="fx-days" aria-labelledby="days-h">
            <h2 id="days-h" className="unseen">
              The days
            </h2>
            <FixtureDays card={card} next={next?.daySlug ?? null} />
          </section>
        </div>
      </main>
      <nav className="day-links no-print" aria-label="The society">
        {card.seasons.map(({ name, days }) => (
          <a key={name} href={societyAt(card.societySlug, name)}>
            Season {name}, {days} {days === 1 ? 'day' : 'days'}
          </a>
        ))}
        <a href={countAt(card.societySlug)}>How we count</a>
        <a href={`/${card.societySlug}/privacy`}>Privacy</a>
      </nav>
      <Folio name={card.societyName} place={`${card.days.length} ${card.days.length === 1 ? 'day' : 'days'}`} />
    </div>
  )
}
