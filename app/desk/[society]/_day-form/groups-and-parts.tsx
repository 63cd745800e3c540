'use client'

import { use } from 'react'
import { SelectField } from '@/app/desk/_form/field'
import { capital } from '@/lib/boards/in-words'
import { teeTermInWords } from '@/lib/boards/side-tee'
import { termFits } from '@/lib/facts/terms-that-fit'
import type { Format } from '@/lib/rules/formats/format'
import type { MoreDraft, MoreField } from './more-draft'
import { TeesOfDay } from './tees-of-day'

interface Props {
  readonly more: MoreDraft
  readonly format: Format
  readonly own: (name: MoreField) => { name: string; value: string; onChange: (value: string) => void }
}

/** Terms of which a house rule says the usual: the card of a side on different tees, places over groups, points for parts. */
export function GroupsAndParts({ more, format, own }: Props) {
  const known = use(TeesOfDay)
  const tees = [...new Set([...(known ?? []), ...(more.sideTee === '' ? [] : [more.sideTee])])]
  // With one set of tees there is nothing to ask.
  const asksTee = termFits('sideTee', format) && (known === null || known.length > 1 || more.sideTee !== '')
  return (
    <>
      {asksTee ? (
        <SelectField
          {...own('sideTee')}
          label="Which tees is the side’s card from?"
          hint="Counts where the players of a side stand on different tees: its par and stroke indexes."
          options={[
            { value: '', label: 'The lowest par of its players’ tees (house rule)' },
            ...tees.map((tee) => ({
              value: tee,
              label: `${capital(teeTermInWords(tee))}${known === null || known.includes(tee) ? '' : ', not on this course'}`,
            })),
          ]}
        />
      ) : null}
      {termFits('ranking', format) ? (
        <SelectField
          {...own('ranking')}
          label="Places"
          hint="Holes are always shared inside a group."
          options={[
            { value: '', label: 'Inside each group (house rule)' },
            { value: 'in-group', label: 'Inside each group, said on the sheet' },
            { value: 'everybody', label: 'Over everybody' },
          ]}
        />
      ) : null}
      {termFits('partPoints', format) ? (
        <SelectField
          {...own('partPoints')}
          label="Points between teams"
          hint="Counts where the day has teams."
          options={[
            { value: '', label: 'A point for each part (house rule)' },
            { value: 'each-part', label: 'A point for each part, said on the sheet' },
            { value: 'whole', label: 'One point for the whole match' },
          ]}
        />
      ) : null}
    </>
  )
}
