// What it needs to win, for a large field in the middle of its round: counted in the same burst as the board.
import type { Day } from '../../lib/rules/day'
import { chancesOf } from '../../lib/rules/insight/chances'
import { benchDay } from '../bench-day'
import { type Figure, median, timed } from '../bench-figures'

const RUNS = 30
const TARGET = 50

/** Everybody somewhere on the course: a third in, the others anywhere from the first to the last hole. */
function midRound(format: string): Day {
  const day = benchDay()
  return {
    ...day,
    closed: false,
    cards: day.cards.map((card, at) => {
      const played = at % 3 === 0 ? 18 : (at * 7) % 18
      return { ...card, scores: card.scores.map((score, hole) => (hole < played ? score : null)) }
    }),
    competitions: [{ id: 'c', format }],
  }
}

export async function measure(): Promise<readonly Figure[]> {
  return ['stableford', 'medal', 'four-ball-stableford'].map((format) => {
    const day = midRound(format)
    const middle = median(timed(() => chancesOf(day, 'c'), RUNS))
    return {
      what: `what it needs to win, 144 cards in mid-round, ${format}, median of ${RUNS}`,
      measured: `${middle.toFixed(1)} ms`,
      target: `under ${TARGET} ms`,
      held: middle < TARGET,
    }
  })
}
