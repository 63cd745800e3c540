// The same card under another format: what it would have been worth. A plain form, so that the address can be sent on.

import { Act } from '@/app/_parts/act'
import { Select } from '@/app/_parts/field'
import { Scorecard } from '@/app/_parts/scorecard'
import { WorkingSteps } from '@/app/_parts/working-steps'
import type { CardRead } from '@/lib/boards/card-read-as'
import type { PlayerCard } from '@/lib/boards/card-views'
import { ordinal } from '@/lib/boards/in-words'
import type { EntryId } from '@/lib/facts/ids'
import { cardAt, readAsAt } from './addresses'
import { handicapFigure, NO_PLACE, scoreFigure, unitHeading } from './words'

const FAMILIES = { singles: 'By oneself', pairs: 'With the partner', teams: 'With the team' } as const

function familyName(family: string): string {
  return FAMILIES[family as keyof typeof FAMILIES] ?? 'Others'
}

interface ChoiceProps {
  readonly societySlug: string
  readonly daySlug: string
  readonly entryId: EntryId
  readonly choices: PlayerCard['readableAs']
  readonly format?: string
}

function ChooseFormat({ societySlug, daySlug, entryId, choices, format }: ChoiceProps) {
  const families = [...new Set(choices.map(({ family }) => familyName(family)))]
  return (
    <form className="read-as" action={cardAt(societySlug, daySlug, entryId)}>
      <Select label="Read this card as" name="as" defaultValue={format ?? ''} required>
        <option value="">Choose a format</option>
        {families.map((name) => (
          <optgroup key={name} label={name}>
            {choices
              .filter(({ family }) => familyName(family) === name)
              .map((one) => (
                <option key={one.format} value={one.format}>
                  {one.name}
                </option>
              ))}
          </optgroup>
        ))}
      </Select>
      <Act>Read it</Act>
    </form>
  )
}

export function ReadThisCardAs({ card }: { card: PlayerCard }) {
  if (card.readableAs.length === 0) return null
  return (
    <section className="readings no-print" aria-labelledby="as-h">
      <h2 id="as-h">Under another format</h2>
      <ChooseFormat {...card} choices={card.readableAs} />
    </section>
  )
}

function whereItCame(read: CardRead): string {
  if (read.noPlace !== null) return NO_PLACE[read.noPlace as keyof typeof NO_PLACE]
  if (read.place === null) return 'a reading of its own'
  return `${read.level ? 'level ' : ''}${ordinal(read.place)} of ${read.of}`
}

export function CardReadAs({ read }: { read: CardRead }) {
  const { societySlug, daySlug, entryId, format, hole } = read
  const handicap = read.playingHandicap === null ? '' : `; playing handicap ${handicapFigure(read.playingHandicap)}`
  return (
    <>
      <div className="wk-title">
        <div>
          <p className="sc second">{read.dayName} · the card under another format</p>
          <h1>
            {read.name}, <span className="slant">read as</span> {read.formatName}
          </h1>
          <p className="lead">
            {read.formatSentence} Allowance {read.allowance}, {read.allowanceFrom}
            {handicap}.
          </p>
        </div>
        <p className="wk-hero">
          <span className="fig trim">{scoreFigure(read.score, read.unit)}</span>
          <span>
            {unitHeading({ unit: read.unit, format }).toLowerCase()}
            <span className="second block">{whereItCame(read)}</span>
          </span>
        </p>
      </div>
      <Scorecard
        lines={read.holes}
        way="across"
        unit={read.unit}
        caption={`${read.name}, ${read.formatName}`}
        openHref={(one) => readAsAt(societySlug, daySlug, entryId, format, one)}
      />
      <section className="readings working" id="working" aria-labelledby="working-h">
        <h2 id="working-h">{hole === null ? 'How it comes about' : `Hole ${hole}`}</h2>
        {read.sentence && <p className="lead">{read.sentence}</p>}
        <WorkingSteps steps={read.steps} heading="h3" />
      </section>
      <section className="readings no-print" aria-labelledby="as-h">
        <h2 id="as-h">Under another format</h2>
        <ChooseFormat {...read} />
      </section>
      <p className="acts no-print">
        <a className="btn" href={cardAt(societySlug, daySlug, entryId)}>
          The card as it was played
        </a>
      </p>
    </>
  )
}
