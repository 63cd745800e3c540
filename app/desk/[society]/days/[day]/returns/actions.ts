'use server'

import { refresh } from 'next/cache'
import { redirect } from 'next/navigation'
import { type ActState, doneState, refusedState } from '@/app/desk/_form/act-state'
import { answer, askedBy } from '@/app/desk/_form/answer'
import { idIn } from '@/app/desk/_form/form-ids'
import { count, list } from '@/app/desk/_frame/words'
import { readFigure } from '@/app/desk/[society]/_figures/read-figure'
import type { CardReturn } from '@/lib/boards/returns-view'
import type { Actor } from '@/lib/facts/actor'
import { keyCard, reopenCard, ruleByChoice, ruleOnCard, takeCardsIn } from '@/lib/facts/commands'
import type { PaperTotals } from '@/lib/facts/day-record'
import type { CardId, DayId } from '@/lib/facts/ids'
import { ok, type Result, refused } from '@/lib/result'
import { orNotSaved } from '@/lib/society/cannot-save'
import { keyCard as keyPaperCard } from '@/lib/society/enter-score'
import { parseInput } from '@/lib/society/parse-input'
import { reopenCard as openAgain } from '@/lib/society/reopen-card'
import { returnsAt } from '@/lib/society/returns'
import { ruleByChoice as byChoice } from '@/lib/society/rule-by-choice'
import { ruleOnCard as rule } from '@/lib/society/rule-on-card'
import { takeCardIn } from '@/lib/society/take-card-in'
import { takeCardsIn as takeAllIn } from '@/lib/society/take-cards-in'
import { readKeyed, readLine } from './keying'

interface Day {
  readonly society: string
  readonly day: string
}

const returnsOf = ({ society, day }: Day) => `/desk/${society}/days/${day}/returns`

/** Keys what is on the paper; accepting goes on to the next card, so that a pile is keyed without the mouse. */
export async function keepCard(where: Day, before: ActState, form: FormData): Promise<ActState> {
  const who = await askedBy(where.society)
  if (!who.ok) return refusedState(before, form, who)
  const found = await cardOf(who.value, where, idIn<CardId>(form, 'cardId'))
  if (!found.ok) return refusedState(before, form, found)
  const { dayId, card, cards } = found.value

  const scores = card.holes.map((hole) => readKeyed(String(form.get(`hole-${hole.hole}`) ?? '')))
  const odd = card.holes.filter((_hole, place) => scores[place] === 'unreadable')
  if (odd.length > 0) {
    const faults = odd.map(({ hole }) => ({
      place: `hole ${hole}`,
      sentence: `Hole ${hole}: enter 1 to 30 strokes, or X for no score.`,
    }))
    return refusedState(before, form, refused('not-understood', 'Some scores cannot be read.', faults))
  }
  const signed = { player: form.has('signed-player'), marker: form.has('signed-marker') }
  const was = readLine(String(form.get('base') ?? ''), card.holes.length) ?? undefined
  const asked = parseInput(keyCard, { dayId, cardId: card.cardId, scores, signed, was, paper: paperIn(form, card) })
  if (!asked.ok) return refusedState(before, form, asked)
  // What is signed on phones is only accepted; everything else is saved first, where it differs.
  if (card.state === 'out' || card.holes.some((hole, place) => hole.score !== scores[place])) {
    const kept = await orNotSaved(() => keyPaperCard(who.value, asked.value))
    if (!kept.ok) {
      if (kept.code === 'card-moved-on') refresh()
      return refusedState(before, form, kept)
    }
  }
  if (form.get('then') !== 'take-in') {
    refresh()
    return doneState(before, `Saved: the card of ${card.name}.`)
  }
  const taken = await orNotSaved(() => takeCardIn(who.value, { dayId, cardId: card.cardId, seen: asked.value.scores }))
  if (!taken.ok) {
    refresh()
    if (taken.code === 'card-moved-on') return refusedState(before, form, taken)
    return refusedState(before, form, taken, [], 'What you entered is saved; the card is not accepted yet.')
  }
  const next = nextToKey(cards, card.cardId)
  redirect(`${returnsOf(where)}?card=${next ?? card.cardId}&after=${card.cardId}`)
}

/** What the paper adds up to, as it stands in the boxes; as it was where a card has no boxes. */
function paperIn(form: FormData, { paper }: CardReturn) {
  const sum = (part: keyof PaperTotals) => {
    const text = form.get(`paper-${part}`)
    return text === null ? paper[part] : text === '' ? null : Number(text)
  }
  return { out: sum('out'), in: sum('in'), total: sum('total') }
}

/** Every card that is handed in with nothing open on it, as the list of cards showed them. */
export async function acceptHandedIn(where: Day, before: ActState, form: FormData): Promise<ActState> {
  return answer(
    before,
    form,
    where.society,
    async (actor) => {
      const cards = form.getAll('card').map((line) => {
        const [cardId = '', ...scores] = String(line).split(' ')
        return { cardId, seen: readLine(scores.join(' '), scores.length) ?? [] }
      })
      const asked = parseInput(takeCardsIn, { dayId: form.get('dayId'), cards })
      return asked.ok ? takeAllIn(actor, asked.value) : asked
    },
    ({ accepted, left }) =>
      `${count(accepted, 'card')} accepted.${left.length > 0 ? ` Not accepted, because it has changed: ${list(left)}.` : ''}`,
  )
}

/** Accepted or handed in by a slip: the card is entered again, and the hand is on it at once. */
export async function openCardAgain(where: Day, before: ActState, form: FormData): Promise<ActState> {
  const who = await askedBy(where.society)
  if (!who.ok) return refusedState(before, form, who)
  const found = await cardOf(who.value, where, idIn<CardId>(form, 'cardId'))
  if (!found.ok) return refusedState(before, form, found)
  const { dayId, card } = found.value
  const asked = parseInput(reopenCard, { dayId, cardId: card.cardId, reason: String(form.get('reason') ?? '') })
  if (!asked.ok) return refusedState(before, form, asked)
  const opened = await orNotSaved(() => openAgain(who.value, asked.value))
  if (!opened.ok) return refusedState(before, form, opened)
  redirect(`${returnsOf(where)}?card=${card.cardId}`)
}

/** A ruling with its reason; the form of a hole not agreed and the form of all rulings both end here. */
export async function giveRuling(where: Day, before: ActState, form: FormData): Promise<ActState> {
  const who = await askedBy(where.society)
  if (!who.ok) return refusedState(before, form, who)
  const found = await cardOf(who.value, where, idIn<CardId>(form, 'cardId'))
  if (!found.ok) return refusedState(before, form, found)
  const whole = (name: string) => wholeIn(form, name)
  const value = valueIn(form, form.get('kind') === 'handicap-index')
  if (!value.ok) return refusedState(before, form, value)
  const asked = parseInput(ruleOnCard, {
    dayId: found.value.dayId,
    cardId: found.value.card.cardId,
    kind: form.get('kind') ?? 'nothing chosen',
    hole: whole('hole'),
    value: value.value,
    clause: String(form.get('clause') ?? ''),
    reason: String(form.get('reason') ?? ''),
    replaces: whole('replaces'),
  })
  if (!asked.ok) return refusedState(before, form, asked)
  const ruled = await orNotSaved(() => rule(who.value, asked.value))
  if (!ruled.ok) return refusedState(before, form, ruled)
  // The ruling may have settled what brought this card up: the secretary stays with the card, not with the next one.
  redirect(`${returnsOf(where)}?card=${found.value.card.cardId}&ruled=${ruled.value.number}`)
}

/** A fault of the list with the answer chosen for it. */
export async function giveChosenRuling(where: Day, before: ActState, form: FormData): Promise<ActState> {
  const who = await askedBy(where.society)
  if (!who.ok) return refusedState(before, form, who)
  const found = await cardOf(who.value, where, idIn<CardId>(form, 'cardId'))
  if (!found.ok) return refusedState(before, form, found)
  const measure = form.get('measure')
  const value = valueIn(form, measure === 'index')
  if (!value.ok) return refusedState(before, form, value)
  const asked = parseInput(ruleByChoice, {
    dayId: found.value.dayId,
    cardId: found.value.card.cardId,
    fault: String(form.get('fault') ?? ''),
    choice: String(form.get('choice') ?? ''),
    hole: wholeIn(form, 'hole'),
    value: value.value,
    ...(measure === null ? {} : { measure }),
    writer: form.get('writer'),
    reason: String(form.get('reason') ?? ''),
  })
  if (!asked.ok) return refusedState(before, form, asked)
  const ruled = await orNotSaved(() => byChoice(who.value, asked.value))
  if (!ruled.ok) return refusedState(before, form, ruled)
  redirect(`${returnsOf(where)}?card=${found.value.card.cardId}&ruled=${ruled.value.number}`)
}

/** A handicap index is written as everywhere, 12.6 or +2.1; whatever else is ruled is a whole number. */
function valueIn(form: FormData, isIndex: boolean): Result<number | null> {
  return isIndex ? readFigure(String(form.get('value') ?? ''), 'value') : ok(wholeIn(form, 'value'))
}

/** Nothing for an empty field and for no score; a minus may be a dash. */
function wholeIn(form: FormData, name: string): number | null {
  const text = String(form.get(name) ?? '')
    .trim()
    .replace('−', '-')
  return text === '' || text === 'x' ? null : Number(text)
}

async function cardOf(
  actor: Actor,
  where: Day,
  cardId: CardId,
): Promise<Result<{ dayId: DayId; card: CardReturn; cards: readonly CardReturn[] }>> {
  const view = await returnsAt(actor, where.day)
  if (!view.ok) return view
  const cards = view.value.groups.flatMap((group) => group.cards)
  const card = cards.find((one) => one.cardId === cardId)
  if (!card) return refused('no-such-card', 'That card is not on this day. Choose it from the list again.')
  return ok({ dayId: view.value.dayId, card, cards })
}

/** The next card of the list that is not accepted, from this one on and round again. */
function nextToKey(cards: readonly CardReturn[], from: string): string | null {
  const place = cards.findIndex((card) => card.cardId === from)
  const order = [...cards.slice(place + 1), ...cards.slice(0, place)]
  return order.find((card) => card.state !== 'taken-in' && card.outcome === null)?.cardId ?? null
}
