import type { Metadata } from 'next'
import { Ledger, LedgerRow } from '@/app/_parts/ledger'
import Link from '@/app/_parts/link'
import { Notice } from '@/app/_parts/notice'
import { DeskFrame, dayTabs } from '@/app/desk/_frame/desk-frame'
import { momentOf } from '@/app/desk/_frame/moments'
import { count } from '@/app/desk/_frame/words'
import { dateInWords } from '@/lib/boards/dates-in-words'
import { printedCards } from '@/lib/boards/printed-cards'
import { isThisMachine } from '@/lib/society/own-address'
import { dayForPrint, type PrintParams } from './_papers/day-for-print'
import './print.css'

export const metadata: Metadata = { title: 'Papers' }

/** "4 cards, one a side", "27 cards, one a player" */
function cardsAsPrinted(record: Parameters<typeof printedCards>[0]): string {
  const { cards } = printedCards(record)
  return `${count(cards.length, 'card')}, one a ${cards.some((card) => card.side) ? 'side' : 'player'}`
}

/** The papers of a day: what each is for, how many sheets, and what is still open before it is worth printing. */
export default async function Papers({ params }: PrintParams) {
  const { record, at, society, day, desk, address } = await dayForPrint(params)
  const groups = record.groups.filter((group) => group.entryIds.length > 0)
  const players = groups.reduce((all, group) => all + group.entryIds.length, 0)
  const published = record.publications.at(-1)
  const open = [
    groups.length === 0 ? 'The draw is not made, so there is nobody to print yet.' : null,
    desk.counts.ungrouped > 0 && groups.length > 0 ? `${count(desk.counts.ungrouped, 'player')} in no group.` : null,
    record.frozenAt ? null : 'The handicaps are not frozen: figures and dots may still change.',
    record.startPublishedAt ? null : 'The start sheet is not published: the links on it open when it is.',
    isThisMachine(address)
      ? `The squares lead to ${address}, which only this machine can open. Open the desk by the address that phones use, or have DAYBOOK_ORIGIN set, before you print.`
      : null,
  ].filter((sentence) => sentence !== null)

  return (
    <DeskFrame
      societySlug={society}
      societyName={record.society.name}
      tabs={dayTabs(society, day)}
      current="print"
      folio={`Day ${record.number}`}
    >
      <div className="title">
        <p className="sc second">
          Day {record.number} · {record.name}
        </p>
        <h1>Papers</h1>
        <p className="lead">For {dateInWords(record.date)}: one ink, right on a grey printer.</p>
      </div>
      {open.length > 0 ? (
        <Notice kind="waits" word="Before you print">
          <ul>
            {open.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Notice>
      ) : null}
      <Ledger className="papers">
        <LedgerRow margin="A4">
          <h2>
            <Link href={`${at}/start`}>Start sheet</Link>
          </h2>
          <p>
            {count(groups.length, 'group')}, {count(players, 'player')}: times, tees, playing handicaps, and each
            group’s square and code. It carries the codes, so hang it at the first tee and nowhere on the web.
          </p>
        </LedgerRow>
        <LedgerRow margin="A6">
          <h2>
            <Link href={`${at}/cards`}>Score cards</Link>
          </h2>
          <p>
            {cardsAsPrinted(record)}, folding once between the nines, with the dots where the strokes fall. On A6, or{' '}
            <Link href={`${at}/cards?on=a4`}>four on A4 to be cut</Link>.
          </p>
        </LedgerRow>
        <LedgerRow margin="A4">
          <h2>{published ? <Link href={`/${society}/days/${day}/result`}>Result sheet</Link> : 'Result sheet'}</h2>
          <p>
            {published
              ? `Sheet ${published.number}, published ${momentOf(published.publishedAt)}. Print it from its own page.`
              : 'Comes when the result is published.'}
          </p>
        </LedgerRow>
      </Ledger>
    </DeskFrame>
  )
}
