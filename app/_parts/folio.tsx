import type { ReactNode } from 'react'
import { Lights } from './lights'

/** Foot of the page: whose it is, the light, and where it stands. */
export function Folio({ name, place, children }: { name: string; place?: string; children?: ReactNode }) {
  return (
    <footer className="folio">
      <span className="sc second">{name}</span>
      {children}
      <Lights />
      {place ? <span className="fig">{place}</span> : null}
    </footer>
  )
}
