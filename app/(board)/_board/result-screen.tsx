// The sheet with what belongs round it on a screen: which sheet this is, the older ones, printing.

import { ActLink } from '@/app/_parts/act'
import { Folio } from '@/app/_parts/folio'
import { Notice } from '@/app/_parts/notice'
import { dayInWords, timeInWords } from '@/lib/boards/dates-in-words'
import type { ResultSheet } from '@/lib/boards/views'
import type { PublishedSheet } from '@/lib/society/read-board'
import { boardAt, matchAt, resultAt, societyAt } from './addresses'
import { PrintButton } from './print-button'
import { ResultSheetPage } from './result-sheet'

export function ResultScreen({ published, zone }: { published: PublishedSheet; zone: string }) {
  const { sheet, sheets } = published
  const { societySlug, daySlug, societyName, dayNumber } = sheet.board
  const newest = sheets.at(-1)
  return (
    <div className="page result">
      <a className="skip" href="#main">
        To the page
      </a>
      <main id="main">
        {newest && newest.number > sheet.number && (
          <Notice kind="waits" word={`Sheet ${sheet.number} has been replaced`}>
            <p>
              <a href={resultAt(societySlug, daySlug)}>Sheet {newest.number}</a> counts
              {newest.reason ? `, because: ${newest.reason}` : '.'} This one stays as it was.
            </p>
          </Notice>
        )}
        <ResultSheetPage sheet={sheet} zone={zone} />
      </main>
      {sheets.length > 1 && (
        <nav className="sheet-list no-print" aria-label="Sheets of this day">
          <h2 className="sc">Sheets</h2>
          <ul className="plain-list">
            {sheets.map((one) => (
              <li key={one.number}>
                <a
                  href={resultAt(societySlug, daySlug, one.number)}
                  aria-current={one.number === sheet.number ? 'page' : undefined}
                >
                  Sheet {one.number}
                </a>
                , {dayInWords(one.publishedAt, zone)}, {timeInWords(one.publishedAt, zone)}
                {one.reason && `: ${one.reason}`}
              </li>
            ))}
          </ul>
        </nav>
      )}
      <nav className="acts no-print res-acts" aria-label="This sheet">
        <PrintButton>{`Print sheet ${sheet.number}`}</PrintButton>
        <ActLink href={boardAt(societySlug, daySlug)}>Every card</ActLink>
        {twoCards(sheet) && <ActLink href={matchAt(societySlug, daySlug)}>Two cards as a match</ActLink>}
        <ActLink kind="plain" href={societyAt(societySlug)}>
          Fixture card
        </ActLink>
      </nav>
      <div className="no-print">
        <Folio name={societyName} place={`Day ${dayNumber}`} />
      </div>
    </div>
  )
}

/** A match can be made of two cards somebody played: of a side on one ball its card. */
function twoCards({ board }: ResultSheet): boolean {
  return board.competitions.some(
    ({ rows, matches }) => matches.length > 0 || rows.filter((row) => row.holesPlayed > 0).length > 1,
  )
}
