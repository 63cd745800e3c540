'use server'

import type { ActState } from '@/app/desk/_form/act-state'
import { answerForDay, type DayAddress, dayOfForm } from '@/app/desk/_form/answer-for-day'
import { ruleOnDay as schema } from '@/lib/facts/commands'
import { parseInput } from '@/lib/society/parse-input'
import { ruleOnDay } from '@/lib/society/rule-on-day'

const numberIn = (form: FormData, name: string) => {
  const text = String(form.get(name) ?? '').trim()
  return text === '' ? null : Number(text)
}

function rule(where: DayAddress, before: ActState, form: FormData, ruling: unknown, said: string): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const asked = parseInput(schema, { ...dayOfForm(form), ruling, reason: form.get('reason') })
      return asked.ok ? ruleOnDay(actor, asked.value) : asked
    },
    () => said,
  )
}

/** Whoever has a number was in it, in the order of the numbers; two with the same number are refused as one. */
export async function enterPlayOff(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  const places = [...form.keys()].flatMap((name) => {
    const place = name.startsWith('place ') ? numberIn(form, name) : null
    return place === null ? [] : [{ id: name.slice('place '.length), place }]
  })
  const twice = places.some((one) => places.some((other) => other !== one && other.place === one.place))
  const order = places.sort((a, b) => a.place - b.place).map(({ id }) => id)
  const ruling = {
    kind: 'play-off',
    competitionId: form.get('competitionId'),
    // The use case refuses a player named twice; two on one place are told the same way.
    order: twice ? [...order, ...order] : order,
  }
  return rule(where, before, form, ruling, 'The play-off is entered; the board is counted again.')
}

export async function ruleAbandoned(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  const ruling = { kind: 'abandoned', afterHole: numberIn(form, 'afterHole'), counts: form.get('counts') }
  return rule(where, before, form, ruling, 'The round is ruled abandoned; the board is counted again.')
}

export async function takeDayRulingBack(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  const ruling = { kind: 'taken-back', replaces: numberIn(form, 'replaces') }
  return rule(where, before, form, ruling, 'The ruling is taken back. It stays in the list.')
}
