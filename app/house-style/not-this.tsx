const PAIRS = [
  ['Boxes and shadows to hold things', 'a hairline, a margin, white space'],
  ['A colour or a shape for how good a score was', 'the figure, and its working if asked'],
  ['Pictures on buttons', 'words that say what will happen'],
  ['Gorse as the only sign', 'a gorse mark and a sentence'],
  ['“Error”, “Success”', 'what happened, what is kept, what to do'],
  ['“Please confirm”', 'what will happen, to how many, and whether it can be taken back'],
  ['Arrows for up, down and level', '“level”, “up from 4th”, the countback sentence'],
  ['Swipes and long presses on the card', 'a press, on something at least 58 by 52'],
  ['Motion to please', 'a change settles in 180 ms, or simply stands there'],
  ['Grey for what matters', 'ink; the second voice only for what may be skipped'],
] as const

export function NotThis() {
  return (
    <section className="oxford">
      <h2>Not this, but that</h2>
      <table className="ruled">
        <caption className="unseen">What to avoid, and what to set instead</caption>
        <thead>
          <tr>
            <th scope="col">Not this</th>
            <th scope="col">But that</th>
          </tr>
        </thead>
        <tbody>
          {PAIRS.map(([not, but]) => (
            <tr key={not}>
              <td>{not}</td>
              <th scope="row">{but}</th>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
