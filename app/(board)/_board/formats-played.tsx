// The formats with their allowances: this season's open, all the others folded by family.

import type { Edition } from '@/lib/rules/editions/edition'
import { EDITIONS } from '@/lib/rules/editions/editions'
import { allowanceFor, FORMATS, inWords } from '@/lib/rules/formats/catalogue'

type Format = (typeof FORMATS)[number]

const FAMILIES: readonly { readonly name: string; readonly has: (format: Format) => boolean }[] = [
  { name: 'Singles', has: ({ family }) => family === 'singles' },
  { name: 'Scrambles', has: ({ id }) => id.startsWith('scramble') },
  { name: 'Foursomes, greensomes, Pinehurst', has: ({ ball }) => ball === 'one' },
  { name: 'Pairs, each with a ball', has: ({ family }) => family === 'pairs' },
  { name: 'Best so many of a team', has: ({ id }) => /^best-\d/.test(id) },
  { name: 'Team games', has: ({ family }) => family === 'teams' },
  { name: 'Matches', has: ({ family }) => family === 'matches' },
  { name: 'Games inside a group', has: () => true },
]

function byFamily(formats: readonly Format[]) {
  const sheets = FAMILIES.map(({ name }) => ({ name, formats: [] as Format[] }))
  for (const format of formats) sheets[FAMILIES.findIndex(({ has }) => has(format))]?.formats.push(format)
  return sheets.filter((sheet) => sheet.formats.length > 0)
}

function FormatTable({ name, formats, edition }: { name: string; formats: readonly Format[]; edition: Edition }) {
  return (
    <div className="scroll" tabIndex={0} role="region" aria-label={`Allowances: ${name}`}>
      <table className="count-table ruled">
        <caption className="unseen">
          {name}: allowances, {edition.title}
        </caption>
        <thead>
          <tr>
            <th scope="col">Format</th>
            <th scope="col" className="num">
              Allowance
            </th>
            <th scope="col">From</th>
            <th scope="col">How it is played</th>
          </tr>
        </thead>
        <tbody>
          {formats.map((format) => {
            const proposed = allowanceFor(format, 0, edition)
            return (
              <tr key={format.id}>
                <th scope="row">{format.name}</th>
                <td className="num fig nowrap">
                  {inWords(proposed.allowance).replace(' from the lowest handicap up', '')}
                </td>
                <td>{proposed.from === 'published' ? proposed.clause : `House choice: ${proposed.sentence}`}</td>
                <td>
                  {format.sentence} <span className="clause">{format.clause}</span>
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </div>
  )
}

/** `season` names the formats of the society's days this season, in any case of letters. */
export function FormatsPlayed({ season }: { season: readonly string[] }) {
  const [newest] = EDITIONS
  if (!newest) return null
  const named = new Set(season.map((name) => name.toLowerCase()))
  const ours = FORMATS.filter(({ name }) => named.has(name.toLowerCase()))
  const others = byFamily(FORMATS.filter((format) => !ours.includes(format)))
  return (
    <section aria-labelledby="formats-h">
      <h2 id="formats-h">The formats and their allowances</h2>
      <p className="second">
        Proposed when a day is called. An officer may set another figure; then the sheet says so, with the reason.
      </p>
      {ours.length > 0 && (
        <>
          <h3 className="families">Played this season</h3>
          <FormatTable name="played this season" formats={ours} edition={newest} />
          <h3 className="families">All the others</h3>
        </>
      )}
      {others.map(({ name, formats }) => (
        <details key={name} className="family" open={ours.length === 0 && name === 'Singles'}>
          <summary>
            <b>{name}</b> <span className="fig second">{formats.length}</span>
          </summary>
          <FormatTable name={name} formats={formats} edition={newest} />
        </details>
      ))}
      <p className="small second families">
        Fewer than {newest.smallField.under} players: {newest.smallField.allowance} % for individuals,{' '}
        {newest.smallField.clause}. Shares of a side’s one ball stand from the lowest handicap up.
      </p>
    </section>
  )
}
