'use client'

import { SelectField } from '@/app/desk/_form/field'
import { whyNotYet } from '@/lib/facts/formats-offered'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import type { Format } from '@/lib/rules/formats/format'
import { OWN_FORMAT } from './own-format'

interface Shelf {
  readonly label: string
  readonly formats: readonly Format[]
}

const OFFERED = FORMATS.filter((one) => whyNotYet(one) === null)
const isBestOf = (one: Format) => one.id.startsWith('best-') && one.family === 'teams'

const shelf = (label: string, holds: (one: Format) => boolean): Shelf => ({ label, formats: OFFERED.filter(holds) })

/** By family, and the long families by what a secretary looks for. */
export const SHELVES: readonly Shelf[] = [
  shelf('Singles', (one) => one.family === 'singles'),
  shelf('Pairs, an own ball each', (one) => one.family === 'pairs' && one.ball === 'own'),
  shelf('Pairs, one ball', (one) => one.family === 'pairs' && one.ball === 'one'),
  shelf('Teams', (one) => one.family === 'teams' && !isBestOf(one)),
  shelf('Teams of three, best scores', (one) => isBestOf(one) && one.sideSize === 3),
  shelf('Teams of four, best scores', (one) => isBestOf(one) && one.sideSize === 4),
  shelf('Teams of five, best scores', (one) => isBestOf(one) && one.sideSize === 5),
  shelf('Teams of six, best scores', (one) => isBestOf(one) && one.sideSize === 6),
  shelf('Matches', (one) => one.family === 'matches'),
  shelf('Games inside the group', (one) => one.family === 'group games'),
]

interface Props {
  readonly name: string
  readonly value: string
  readonly onChange: (id: string) => void
}

export function FormatSelect({ name, value, onChange }: Props) {
  return (
    <SelectField
      // An own format is sent by the name it is given below.
      name={value === OWN_FORMAT ? `${name}Choice` : name}
      label="Format"
      value={value}
      onChange={onChange}
      options={[]}
      groups={[
        ...SHELVES.map(({ label, formats }) => ({
          label,
          options: formats.map((one) => ({ value: one.id, label: one.name })),
        })),
        { label: 'The society’s own', options: [{ value: OWN_FORMAT, label: 'A format of your own' }] },
      ]}
    />
  )
}
