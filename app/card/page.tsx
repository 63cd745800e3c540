import type { Metadata } from 'next'
import { CardsHere } from './_phone/cards-here'
import { CodeForm } from './_phone/code-form'
import { openByCode } from './open-by-code'

export const metadata: Metadata = { title: 'Open the card' }

export default function CodePage() {
  return (
    <section className="c-sheet" aria-labelledby="code-title">
      <p className="sc second">The card</p>
      <h1 id="code-title">Type your group’s code</h1>
      <p>
        It stands beside your group on the start sheet: a word and six figures. Scanning the square there does the same.
      </p>
      <CodeForm open={openByCode} />
      <CardsHere />
    </section>
  )
}
