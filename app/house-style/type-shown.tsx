const SIZES = [
  { px: 96, token: '--t-6', words: '11', use: 'the opened number', kind: 'fig' },
  { px: 64, token: '--t-5', words: '38', use: 'a number that is the page', kind: 'fig' },
  { px: 46, token: '--t-4', words: 'The Spring Cup', use: 'page title; points on the board', kind: 'serif' },
  { px: 34, token: '--t-3', words: 'Freeze handicaps', use: 'the duty that is due', kind: 'serif' },
  { px: 26, token: '--t-2', words: 'What is due', use: 'section head', kind: 'serif' },
  {
    px: 21,
    token: '--t-1',
    words: 'Trevennor above Holmgarth, both 38',
    use: 'the lead, the sheet’s own voice',
    kind: 'slant',
  },
  { px: 18, token: '--t-0', words: 'Ask Jago. The card can’t be signed until you agree.', use: 'text', kind: 'text' },
  {
    px: 16,
    token: '--t-small',
    words: '2 vegetarian, 1 coeliac',
    use: 'notes, dense tables of the desk',
    kind: 'text',
  },
  { px: 15, token: '--t-label', words: 'Playing handicap', use: 'small capitals', kind: 'sc' },
] as const

const FACES = { fig: 'fig', serif: 'face-serif', slant: 'slant', text: undefined, sc: 'sc' } as const

/** Two faces: one for figures and headings, one made to be read at arm's length in the sun. */
export function TypeShown() {
  return (
    <section className="oxford">
      <h2>Type</h2>
      <div className="faces">
        <p>
          <span className="face-serif">Newsreader</span>
          headings, figures, small capitals, and the italic in which the sheet speaks
        </p>
        <p>
          <span className="face-text">Atkinson Hyperlegible Next</span>
          names, words, buttons and sentences
        </p>
        <p>
          <span className="face-serif">Łódź, Żółć, Čapek</span>
          the extended Latin of both arrives only when a name needs it
        </p>
      </div>
      <ol className="sizes">
        {SIZES.map((size) => (
          <li key={size.token}>
            <span className="fig second">{size.px}</span>
            <span className={FACES[size.kind]} style={{ fontSize: `var(${size.token})` }}>
              {size.words}
            </span>
            <span className="small second">{size.use}</span>
          </li>
        ))}
      </ol>
    </section>
  )
}
