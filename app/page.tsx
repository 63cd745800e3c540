import { redirect } from 'next/navigation'
import { connection } from 'next/server'
import Link from '@/app/_parts/link'
import { societyList } from '@/lib/society/found-society'
import { Device } from './_parts/device'
import { Empty } from './_parts/empty'
import { Folio } from './_parts/folio'
import { Ledger, LedgerRow } from './_parts/ledger'

/** Straight to the only society there is; otherwise the ways in. */
export default async function Front() {
  // The list is read when somebody asks, never when the house is built.
  await connection()
  const societies = await societyList()
  const [only] = societies
  if (only && societies.length === 1) redirect(`/${only.slug}`)

  return (
    <div className="page front">
      <a className="skip" href="#main">
        To the page
      </a>
      <main id="main">
        <div className="title">
          <Device />
          <h1>Daybook</h1>
          <p className="lead">The book in which a golf society keeps its days: the draw, the cards, the results.</p>
        </div>
        {societies.length === 0 ? (
          <Empty first="No society keeps its days here yet.">
            The first start of an installation founds one and prints the officer’s way in.
          </Empty>
        ) : (
          <section className="oxford" aria-labelledby="societies-h">
            <h2 id="societies-h">Whose days?</h2>
            <ul className="societies">
              {societies.map((society) => (
                <li key={society.slug}>
                  <Link href={`/${society.slug}`}>{society.name}</Link>
                  {society.isDemo ? <span className="second small">invented, to try things out</span> : null}
                </li>
              ))}
            </ul>
          </section>
        )}
        <section className="oxford" aria-labelledby="ways-h">
          <h2 id="ways-h">The ways in</h2>
          <Ledger className="ways">
            <LedgerRow margin="board">
              <p>
                <b>To look:</b> the board, the start sheet and the results of a day are open to everybody who has the
                society’s address.
              </p>
            </LedgerRow>
            <LedgerRow margin="card">
              <p>
                <b>To score:</b> <Link href="/card">type your group’s code</Link> from the start sheet. No account, and
                no signal needed on the way round.
              </p>
            </LedgerRow>
            <LedgerRow margin="desk">
              <p>
                <b>To run the day:</b> officers <Link href="/desk">sign in to the desk</Link>.
              </p>
            </LedgerRow>
          </Ledger>
        </section>
      </main>
      <Folio name="Daybook" place="The ways in" />
    </div>
  )
}
