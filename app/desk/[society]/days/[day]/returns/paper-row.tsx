'use client'

import type { KeyboardEvent, RefObject } from 'react'
import { againstPaper, differs, openInWords, type Paper, paperTotal, type Run } from './keying'

export interface PaperRowProps {
  readonly part: keyof Paper
  readonly run: Run
  readonly text: string
  readonly onText: (part: keyof Paper, text: string) => void
  readonly onFocus?: () => void
  /** Every hole has been passed once: what is missing is named. */
  readonly namesOpen?: boolean
  readonly field?: RefObject<HTMLInputElement | null>
  readonly readOnly: boolean
}

const NAMES: Record<keyof Paper, string> = { out: 'Out', in: 'In', total: 'Total' }

/** A total written on the paper, in a box of its own, with what it says about the holes. It finds slips, and is kept with the card. */
export function PaperRow({
  part,
  run,
  text,
  onText,
  onFocus,
  namesOpen,
  field,
  readOnly,
  span,
}: PaperRowProps & { readonly span: number }) {
  const name = NAMES[part]
  const isOff = differs(run, text)
  const said = againstPaper(run, paperTotal(text), name) ?? (namesOpen ? openInWords(run) : null)
  return (
    <tr className={isOff ? 'paper off' : 'paper'}>
      <th scope="row" className="lead-col">
        {part === 'total' ? 'Paper total' : 'On paper'}
      </th>
      <td colSpan={span}>
        <span className="paper-says" role="status">
          {said ?? (part === 'total' ? 'The total written on the card, if there is one.' : '')}
        </span>
      </td>
      <td className="tot">
        <input
          ref={field}
          type="text"
          className="paper-in fig"
          inputMode="numeric"
          maxLength={3}
          name={`paper-${part}`}
          readOnly={readOnly}
          autoComplete="off"
          data-paper={part}
          value={text}
          onChange={(event) => onText(part, event.target.value)}
          onFocus={onFocus}
          aria-label={`${name} on the paper`}
          aria-invalid={isOff || undefined}
        />
      </td>
    </tr>
  )
}

/** A key with a modifier, or pressed elsewhere than in a box of the card, is not the card's. */
export function boxOf(event: KeyboardEvent): HTMLInputElement | null {
  const { target } = event
  if (!(target instanceof HTMLInputElement) || event.ctrlKey || event.metaKey || event.altKey) return null
  return target.dataset.place === undefined && target.dataset.paper === undefined ? null : target
}
