import type { Metadata } from 'next'
import { Device } from '@/app/_parts/device'
import { Folio } from '@/app/_parts/folio'
import { RunningHead } from '@/app/_parts/running-head'
import { Colour } from './colour'
import './house-style.css'
import { NotThis } from './not-this'
import { PartsShown } from './parts-shown'
import { Pictures } from './pictures'
import { Rows } from './rows'
import { fixtures } from './specimen'
import { TypeShown } from './type-shown'

export const metadata: Metadata = { title: 'House style' }

function FixtureCard() {
  return (
    <figure className="fixture-card" aria-label="The fixture card: nine days of a season, folded once">
      <div className="cover">
        <Device />
        <p>
          Fernbrake
          <br />
          Golf Society
        </p>
        <p className="fig">2026</p>
      </div>
      <div className="vfold" />
      <ol className="ledger">
        {fixtures.map(([date, course, what]) => (
          <li key={date}>
            <span className="in-margin fig">{date}</span>
            {course}
            <em>{what}</em>
          </li>
        ))}
      </ol>
    </figure>
  )
}

export default function HouseStyle() {
  return (
    <div className="page house">
      <RunningHead society="Fernbrake Golf Society" href="/" place="House style" />
      <main id="main">
        <div className="house-top">
          <div className="title">
            <p className="sc second">For those who draw and build it</p>
            <h1>Set like a fixture card</h1>
            <p className="lead">
              A society prints one small card a year and nobody needs it explained. Every screen here is set the same
              way: ink on paper, what orders the page in the margin, figures first, and each figure ready to show how it
              came about.
            </p>
          </div>
          <FixtureCard />
        </div>
        <Colour />
        <TypeShown />
        <Pictures />
        <section className="oxford">
          <h2>Parts, in both lights</h2>
          <div className="both">
            <div data-theme="light" className="in-light">
              <PartsShown light="light" />
            </div>
            <div data-theme="dark" className="in-light">
              <PartsShown light="dark" />
            </div>
          </div>
        </section>
        <Rows />
        <NotThis />
      </main>
      <Folio name="Fernbrake Golf Society" place="House style" />
    </div>
  )
}
