import { Fragment, type ReactNode } from 'react'
import type { HoleLine } from '@/lib/rules/standings'
import { type CardUnit, COLUMN_WORDS, grossFigure, inWords, sumsOf, valueFigure } from './card-sums'
import { Dots } from './dots'
import { Opens } from './opens'

export interface ReadCard {
  /** Whose card, in which reading: "Jago Trevennor, singles Stableford". */
  caption: string
  unit: CardUnit
  openHref?: (hole: number) => string
  withPar?: boolean
}

function Sums({ word, lines, className }: { word: string; lines: readonly HoleLine[]; className: string }) {
  const sums = sumsOf(lines)
  const cell = (value: ReactNode) => <td className="fig">{value ?? '–'}</td>
  return (
    <tr className={className}>
      <th scope="row" className="lead-col">
        {word}
      </th>
      {cell(sums.par)}
      <td />
      {cell(sums.strokes)}
      {cell(sums.gross)}
      {cell(sums.value)}
    </tr>
  )
}

/** The whole card, hole under hole. */
export function DownTheCard({ lines, unit, openHref, caption }: ReadCard & { lines: readonly HoleLine[] }) {
  const nines = [lines.slice(0, 9), lines.slice(9)].filter((nine) => nine.length > 0)
  return (
    <table className="wc">
      <caption className="unseen">{caption}</caption>
      <thead>
        <tr>
          <th scope="col" className="lead-col">
            Hole
          </th>
          <th scope="col">Par</th>
          <th scope="col">Index</th>
          <th scope="col">Strokes</th>
          <th scope="col">Gross</th>
          <th scope="col">{COLUMN_WORDS[unit]}</th>
        </tr>
      </thead>
      <tbody>
        {nines.map((nine, n) => (
          <Fragment key={nine[0]?.hole}>
            {n > 0 ? (
              <tr className="foldrow" aria-hidden="true">
                <td colSpan={6}>
                  <div className="fold" />
                </td>
              </tr>
            ) : null}
            {nine.map((line) => (
              <tr key={line.hole}>
                <th scope="row" className="lead-col fig">
                  {line.hole}
                </th>
                <td className="fig">{line.par}</td>
                <td className="fig">{line.strokeIndex}</td>
                <td>
                  <Dots strokes={line.strokes} />
                </td>
                <td className="fig gross">
                  {line.gross === 'x' ? <abbr title="no score">–</abbr> : grossFigure(line.gross)}
                </td>
                <td className="fig pt">
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
              </tr>
            ))}
            {nines.length > 1 ? <Sums word={n === 0 ? 'Out' : 'In'} lines={nine} className="half" /> : null}
          </Fragment>
        ))}
        <Sums word="All" lines={lines} className="all" />
      </tbody>
    </table>
  )
}
