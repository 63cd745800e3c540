import type { HoleLine } from '@/lib/rules/standings'
import { COLUMN_WORDS, grossFigure, inWords, sumsOf, valueFigure } from './card-sums'
import { Dots } from './dots'
import { Opens } from './opens'
import type { ReadCard } from './scorecard-down'

interface NineProps extends ReadCard {
  lines: readonly HoleLine[]
  word: 'Out' | 'In' | 'All'
  /** The whole card, when this nine closes it: a last column sums it. */
  whole?: readonly HoleLine[]
}

const shown = (sum: number | null) => (sum === null ? '–' : sum)

/** Nine holes side by side, with their sum. */
export function Nine({ lines, word, whole, unit, openHref, caption, withPar }: NineProps) {
  const sums = sumsOf(lines)
  const all = whole ? sumsOf(whole) : null
  return (
    <table className="mini">
      <caption className="unseen">
        {caption}, {word.toLowerCase()}
      </caption>
      <thead>
        <tr className="h">
          <th scope="row" className="lab">
            Hole
          </th>
          {lines.map((line) => (
            <th key={line.hole} scope="col" className="fig">
              {line.hole}
            </th>
          ))}
          <th scope="col" className="tot">
            {word}
          </th>
          {all ? (
            <th scope="col" className="tot">
              All
            </th>
          ) : null}
        </tr>
      </thead>
      <tbody>
        {withPar ? (
          <>
            <tr className="lo">
              <th scope="row">Par</th>
              {lines.map((line) => (
                <td key={line.hole} className="fig">
                  {line.par}
                </td>
              ))}
              <td className="tot fig">{sums.par}</td>
              {all ? <td className="tot fig">{all.par}</td> : null}
            </tr>
            <tr className="lo">
              <th scope="row">Index</th>
              {lines.map((line) => (
                <td key={line.hole} className="fig">
                  {line.strokeIndex}
                </td>
              ))}
              <td className="tot" />
              {all ? <td className="tot" /> : null}
            </tr>
          </>
        ) : null}
        <tr>
          <th scope="row">Strokes</th>
          {lines.map((line) => (
            <td key={line.hole}>
              <Dots strokes={line.strokes} />
            </td>
          ))}
          <td className="tot fig">{sums.strokes}</td>
          {all ? <td className="tot fig">{all.strokes}</td> : null}
        </tr>
        <tr className="g">
          <th scope="row">Gross</th>
          {lines.map((line) => (
            <td key={line.hole} className="fig">
              {line.gross === 'x' ? <abbr title="no score">–</abbr> : grossFigure(line.gross)}
            </td>
          ))}
          <td className="tot fig">{shown(sums.gross)}</td>
          {all ? <td className="tot fig">{shown(all.gross)}</td> : null}
        </tr>
        <tr>
          <th scope="row">{COLUMN_WORDS[unit]}</th>
          {lines.map((line) => (
            <td key={line.hole} className="fig v">
              {openHref && line.value !== null ? (
                <Opens
                  href={openHref(line.hole)}
                  label={`${inWords(line.value, unit)}, hole ${line.hole}: open the working`}
                >
                  {valueFigure(line.value, unit)}
                </Opens>
              ) : (
                valueFigure(line.value, unit)
              )}
            </td>
          ))}
          <td className="tot fig">{shown(sums.value)}</td>
          {all ? <td className="tot fig">{shown(all.value)}</td> : null}
        </tr>
      </tbody>
    </table>
  )
}
