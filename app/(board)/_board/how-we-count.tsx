// The register of rules as a page: what is counted, by which clause, under which edition, and where we depart.

import { dateInWords } from '@/lib/boards/dates-in-words'
import { capital } from '@/lib/boards/in-words'
import { EDITIONS } from '@/lib/rules/editions/editions'
import { REGISTER, type RegisteredRule } from '@/lib/rules/register'
import { FormatsPlayed } from './formats-played'

const KNOWN = { read: 'read', 'read-in-a-copy': 'read in a copy', 'from-memory': 'from memory' } as const

function Rule({ rule }: { rule: RegisteredRule }) {
  return (
    <tr>
      <th scope="row">{rule.name}</th>
      <td>
        <span className="clause">{rule.clause}</span>
        <span className="small second block">{rule.edition}</span>
      </td>
      <td>{rule.status === 'done' ? 'done' : <b>not done</b>}</td>
      <td>
        {rule.departures.length === 0 ? (
          <span className="second">none</span>
        ) : (
          rule.departures.map((departure) => <p key={departure}>{departure}</p>)
        )}
      </td>
    </tr>
  )
}

function Rules() {
  const done = REGISTER.filter(({ status }) => status === 'done').length
  return (
    <section aria-labelledby="rules-h">
      <h2 id="rules-h">The rules, one by one</h2>
      <p className="second">
        {done} of {REGISTER.length} done. Every one of them is checked by cases, published ones where there are any.
      </p>
      <div className="scroll" tabIndex={0} role="region" aria-label="The register">
        <table className="count-table ruled">
          <caption className="unseen">Register of rules</caption>
          <thead>
            <tr>
              <th scope="col">Rule</th>
              <th scope="col">Clause and edition</th>
              <th scope="col">State</th>
              <th scope="col">Departures and choices</th>
            </tr>
          </thead>
          <tbody>
            {REGISTER.map((rule) => (
              <Rule key={rule.id} rule={rule} />
            ))}
          </tbody>
        </table>
      </div>
    </section>
  )
}

function Editions() {
  return (
    <section aria-labelledby="editions-h">
      <h2 id="editions-h">The editions</h2>
      <p className="second">A day is counted under the edition in force on its date, and stays under it for ever.</p>
      <ol className="ledger editions">
        {EDITIONS.map((edition) => (
          <li key={edition.id}>
            <p className="in-margin fig">{(edition.from.gbi ?? edition.from.world ?? '').slice(0, 4)}</p>
            <h3>{edition.title}</h3>
            <p>
              {edition.from.gbi && `In force in Great Britain and Ireland from ${dateInWords(edition.from.gbi)}`}
              {edition.from.gbi && edition.from.world && '; '}
              {edition.from.world &&
                `${edition.from.gbi ? 'elsewhere' : 'In force'} from ${dateInWords(edition.from.world)}`}
              . Course handicap {edition.ratingMinusPar ? 'with' : 'without'} course rating less par
              {edition.beforeAllowance === 'kept'
                ? ', kept in full until the allowance is applied.'
                : ', rounded before the allowance.'}
            </p>
            <ul className="sources small second">
              {edition.sources.map((source) => (
                <li key={`${source.title} ${source.section}`}>
                  {source.title}, {source.section}. {source.publisher}. {capital(KNOWN[source.known])}.
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ol>
    </section>
  )
}

export function HowWeCount({ season }: { season: readonly string[] }) {
  return (
    <div className="count">
      <div className="title">
        <h1>How we count</h1>
        <p className="lead">
          Only gross strokes are ever written down. Everything else on a board is worked out from them by the rules on
          this page, and every figure opens into its working.
        </p>
      </div>
      <div className="notice">
        <p className="sc">Whose handicap it is</p>
        <div>
          <p>
            A handicap index belongs to the national associations and the clubs that act for them. Nothing here is an
            official handicap, and no score kept here changes one. A figure a society keeps for itself is a society
            handicap. Where this page and your association differ, your association is right.
          </p>
        </div>
      </div>
      <FormatsPlayed season={season} />
      <Rules />
      <Editions />
    </div>
  )
}
