import { contrast, INKS, type Ink, PAIRS } from './inks'

const SWATCHES: readonly { ink: Ink; words: Ink; use: string }[] = [
  { ink: 'paper', words: 'ink', use: 'the ground' },
  { ink: 'leaf', words: 'ink', use: 'fields, dialogs' },
  { ink: 'wash', words: 'ink', use: 'level par, the row under the pointer' },
  { ink: 'ink', words: 'paper', use: 'words and figures; the chosen figure on the card' },
  { ink: 'ink-2', words: 'paper', use: 'what may be skipped' },
  { ink: 'heather', words: 'on-heather', use: 'you can act here; current' },
  { ink: 'gorse', words: 'on-gorse', use: 'waits, or has just changed' },
  { ink: 'rowan', words: 'on-rowan', use: 'differs, refused, cannot be undone' },
]

/** The two accents have one meaning each, and every pair that meets is measured. */
export function Colour() {
  return (
    <section className="oxford">
      <h2>Colour</h2>
      <p className="lead">
        Heather acts, gorse waits. Rowan is for what is refused, and never for how good a score was.
      </p>
      <ul className="swatches">
        {SWATCHES.map(({ ink, words, use }) => (
          <li key={ink}>
            <span className="chip" style={{ background: `var(--${ink})`, color: `var(--${words})` }}>
              {ink}
            </span>
            <span className="small second">{use}</span>
          </li>
        ))}
      </ul>
      <div className="scroll" role="region" aria-label="Contrast of the pairs in use" tabIndex={0}>
        <table className="ruled pairs">
          <caption className="unseen">Contrast of every pair in use, in both lights</caption>
          <thead>
            <tr>
              <th scope="col">Pair</th>
              <th scope="col">For</th>
              <th scope="col" className="num">
                Light
              </th>
              <th scope="col" className="num">
                Dark
              </th>
            </tr>
          </thead>
          <tbody>
            {PAIRS.map(({ on: [front, back], use }) => (
              <tr key={`${front} ${back}`}>
                <th scope="row">
                  {front} on {back}
                </th>
                <td>{use}</td>
                <td className="num fig">{contrast(INKS.light[front], INKS.light[back]).toFixed(1)}</td>
                <td className="num fig">{contrast(INKS.dark[front], INKS.dark[back]).toFixed(1)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  )
}
