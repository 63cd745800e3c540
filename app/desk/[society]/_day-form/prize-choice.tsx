'use client'

import { useState } from 'react'
import { SelectField } from '@/app/desk/_form/field'
import { type PrizeRule, prizeRuleInWords } from '@/lib/boards/prize-rule'
import { ONE_PRIZE, SIDES_PRIZES } from '@/lib/facts/terms'

/** Asked once for the whole day: how many prizes a player may take, and whether a side's prize is one of them. */
export function PrizeChoice({ initial }: { readonly initial: PrizeRule }) {
  const [rule, setRule] = useState(initial)
  return (
    <div className="fields of-the-day">
      <SelectField
        name="onePrize"
        label="Prizes a player may take"
        value={rule.onePrize}
        onChange={(chosen) => setRule({ ...rule, onePrize: ONE_PRIZE.find((one) => one === chosen) ?? 'by-order' })}
        hint={prizeRuleInWords(rule)}
        options={[
          { value: 'by-order', label: 'One, in the order of the lists' },
          { value: 'by-value', label: 'One, the most valuable first' },
          { value: 'as-many', label: 'As many as are won' },
        ]}
      />
      {rule.onePrize === 'as-many' ? null : (
        <SelectField
          name="sidesPrizes"
          label="Prizes of pairs and teams"
          value={rule.sides}
          onChange={(chosen) => setRule({ ...rule, sides: SIDES_PRIZES.find((one) => one === chosen) ?? 'apart' })}
          options={[
            { value: 'apart', label: 'Do not count: a player may have one besides' },
            { value: 'counted', label: 'Count as a prize of each of the players' },
          ]}
        />
      )}
    </div>
  )
}
