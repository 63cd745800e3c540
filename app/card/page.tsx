import type { Metadata } from 'next'
import { CardsHere } from './_phone/cards-here'
import { CodeForm } from './_phone/code-form'
import { openByCode } from './open-by-code'

export const metadata: Metadata = { title: 'Open the card' }

export default function CodePage() {
  return (
    <section className="c-sheet" aria-labelledby="code-title">
      <p className="sc second">The card</p>
      <h1 id="code-title">Open your group’s card</h1>
      <CardsHere />
      <h2 className="sc">Type the code</h2>
      <p>
        It stands beside your group on the start sheet: a word and six figures. The six figures are enough. Scanning the
        square there does the same.
      </p>
      <CodeForm open={openByCode} />
    </section>
  )
}
