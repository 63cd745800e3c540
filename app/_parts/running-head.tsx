import Link from '@/app/_parts/link'
import { Device } from './device'

interface RunningHeadProps {
  society: string
  href: string
  /** Where in the season the page stands: "Day 2". */
  place: string
  /** The rest of it, left out on a phone: " of 9 · 2026". */
  more?: string
  drawing?: string
}

/** Society left, place in the season right. Its first link skips to `#main`. */
export function RunningHead({ society, href, place, more, drawing }: RunningHeadProps) {
  return (
    <header className="running">
      <a className="skip" href="#main">
        To the page
      </a>
      <Link className="mark" href={href}>
        <Device drawing={drawing} />
        <span className="sc">{society}</span>
      </Link>
      <span className="sc second folio-no">
        {place}
        {more ? <span className="more">{more}</span> : null}
      </span>
    </header>
  )
}
