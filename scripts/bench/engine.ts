// The engine by itself: the whole board of a large day counted from its cards, every time from nothing.
import { parseDayFile, writeDayFile } from '../../lib/facts/day-file'
import { scoreDay } from '../../lib/rules/score-day'
import { benchDay } from '../bench-day'
import { type Figure, median, timed } from '../bench-figures'

const RUNS = 500

const milliseconds = (figure: number) => `${figure.toFixed(figure < 10 ? 3 : 1)} ms`

export async function measure(): Promise<readonly Figure[]> {
  const day = benchDay()
  const ties = scoreDay(day).flatMap((result) => result.standings.filter((one) => one.tieBroken)).length
  const runs = timed(() => scoreDay(day), RUNS)
  const middle = median(runs)
  const slowest = [...runs].sort((a, b) => a - b)[Math.ceil(RUNS * 0.99) - 1]!
  const text = JSON.stringify(writeDayFile(day))
  const reading = median(timed(() => parseDayFile(JSON.parse(text)), 50))
  return [
    {
      what: `144 cards, singles + pairs + ${ties} ties by countback, median of ${RUNS}`,
      measured: milliseconds(middle),
      target: 'under 2 ms',
      held: middle < 2,
    },
    { what: 'the same, slowest but one in a hundred', measured: milliseconds(slowest), target: '-', held: null },
    {
      what: `the day file read and checked (${Math.round(text.length / 1024)} kB)`,
      measured: milliseconds(reading),
      target: '-',
      held: null,
    },
  ]
}
