// The history of a figure as the picture takes it: oldest first, a word only on the changes worth one.

import type { HandicapPoint } from '@/app/_parts/handicap-steps'
import { dateInWords } from '@/lib/boards/dates-in-words'
import type { MemberPage } from '@/lib/boards/views'

export const SOURCE_WORDS: Record<MemberPage['source'], string> = {
  'home-club': 'handicap index from the home club',
  society: 'society handicap',
  claimed: 'figure as claimed',
}

/** A step of half a stroke or more is worth a word on the picture. */
const WORTH_A_WORD = 5
const LONGEST_NOTE = 30

export interface Picture {
  readonly points: readonly HandicapPoint[]
  readonly until: string
  readonly label: string
}

/** "1st with 38, Aldermoss Park" keeps its first clause. */
function note(reason: string): string {
  const [first = ''] = reason.split(/[,:;.]/)
  const words = first.trim()
  return words.length <= LONGEST_NOTE ? words : `${words.slice(0, LONGEST_NOTE - 1).replace(/\s+\S*$/, '')}…`
}

/** Null with fewer than two records: a picture of one point says nothing the figure does not. */
export function pictureOf(page: Pick<MemberPage, 'records' | 'cards'>): Picture | null {
  const records = [...page.records].reverse()
  const [first] = records
  const last = records.at(-1)
  if (!first || !last || records.length < 2) return null
  const until = [last.from, ...page.cards.map((card) => card.date)].sort().at(-1) ?? last.from
  const points = records.map((record, at) => {
    const before = records[at - 1]
    const step = before ? Math.abs(record.indexTenths - before.indexTenths) : 0
    return {
      from: record.from,
      tenths: record.indexTenths,
      ...(step >= WORTH_A_WORD ? { note: note(record.reason) } : {}),
    }
  })
  const label =
    `From ${first.figure} on ${dateInWords(first.from)} to ${last.figure} on ` +
    `${dateInWords(last.from)}, ${records.length} entries; the reasons are in the table below`
  return { points, until, label }
}
