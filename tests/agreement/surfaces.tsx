// One day of the book as each place shows it, brought down to what they have in common: who, which place, what score, who
// won. The published sheet, the table at the desk, the phones, a member's own page, a player's card, the fixture card and
// the score command on the exported day file are each held against the board.

import { renderToStaticMarkup } from 'react-dom/server'
import { ResultSheetPage } from '@/app/(board)/_board/result-sheet'
import { placeFigure, scoreFigure } from '@/app/(board)/_board/words'
import { totalOf } from '@/app/card/_phone/reading'
import { sidesSoFar } from '@/app/card/_phone/sides-so-far'
import { BoardTable } from '@/app/desk/[society]/days/[day]/result/board-table'
import { winnerOf } from '@/lib/boards/fixture-card'
import { formatIn } from '@/lib/boards/format-of-competition'
import { scoreShort } from '@/lib/boards/in-words'
import { cardsOnBoard, matchesOnBoard } from '@/lib/boards/member-page'
import { playerCardOf } from '@/lib/boards/player-card'
import { firstInGroups } from '@/lib/boards/shared-games'
import type { BoardRow, CompetitionBoard, DayBoard, MemberPage, ResultSheet } from '@/lib/boards/views'
import type { CardPack } from '@/lib/facts/card-pack'
import type { DayRecord } from '@/lib/facts/day-record'
import { cardsNow, scoresIn } from '@/lib/outbox/card-now'
import { matchNow } from '@/lib/rules/matches/match-now'
import { gameNow } from '@/lib/rules/score/game-now'
import type { CompetitionResult, MatchResult } from '@/lib/rules/standings'

/** Each difference in a line; none when everything says the same. */
export type Differences = readonly string[]

const same = (what: string, board: unknown, other: unknown): Differences => {
  const [one, two] = [JSON.stringify(board), JSON.stringify(other)]
  return one === two ? [] : [`${what}: ${one} on the board, here ${two}`]
}

const eachOf = (board: Pick<DayBoard, 'competitions'>, of: (one: CompetitionBoard, at: number) => Differences) =>
  board.competitions.flatMap((one, at) => of(one, at).map((said) => `${one.format}, ${said}`))

const ended = ({ id, a, b, winner, finished, holes, parts }: MatchResult) => [
  [id, a, b, winner, finished, holes],
  parts?.map((part) => [part.name, part.winner, part.finished]) ?? [],
]

/** What the score command prints for the exported file. */
export function inFile(board: DayBoard, results: readonly CompetitionResult[]): Differences {
  return eachOf(board, (one, at) => {
    const result = results[at]
    const ofRow = (row: BoardRow | CompetitionResult['standings'][number]) =>
      [row.entrant, row.place, row.tied, row.score, row.holesPlayed, row.playingHandicap, row.noPlace ?? null] as const
    return [
      ...same('competition in the file', one.id, result?.competition),
      ...same('rows of the file', one.rows.map(ofRow), result?.standings.map(ofRow)),
      ...same('matches of the file', one.matches.map(ended), (result?.matches ?? []).map(ended)),
      ...same('teams of the file', one.teams ?? [], (result?.teams?.length ?? 0) > 1 ? result?.teams : []),
    ]
  })
}

const text = (markup: string) =>
  markup
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&amp;', '&')
    .replaceAll('&#x27;', '’')
    .replace(/\s+/g, ' ')
    .trim()

const parts = (markup: string, tag: string) =>
  [...markup.matchAll(new RegExp(`<${tag}[ >].*?</${tag}>`, 'gs'))].map(([one]) => one)

/** The list under the heading of the competition. */
function sectionOf(page: string, id: string): string {
  const from = page.indexOf(`id="comp-${id}"`)
  return from < 0 ? '' : page.slice(from, page.indexOf('</section>', from))
}

/** The sheet as everybody reads it. */
export function onSheet(board: DayBoard, sheet: ResultSheet): Differences {
  const page = renderToStaticMarkup(<ResultSheetPage sheet={sheet} zone="Europe/London" />)
  return [
    ...same('sheet', board.competitions, sheet.board.competitions),
    ...eachOf(board, (one) => {
      const section = sectionOf(page, one.id)
      const rows = parts(section, 'tr').map(text)
      const top = parts(section, 'li').map(text)
      const placed = one.matches.length > 0 ? [] : one.rows.filter((row) => row.place !== null)
      const shown = (row: BoardRow) => {
        const figure = scoreFigure(row.score, one.unit)
        return (
          rows.some((line) => line.startsWith(`${placeFigure(row)} ${figure} ${row.name}`)) ||
          top.some((line) => line.startsWith(`${figure} ${one.unit} ${row.name}`))
        )
      }
      return [
        ...placed
          .filter((row) => !shown(row))
          .map((row) => `${placeFigure(row)} ${row.name} ${row.score}: not so on the sheet`),
        ...one.matches.flatMap((match, at) => {
          const line = rows.find((each) =>
            each.startsWith(`${at + 1} ${one.names[match.a]} against ${one.names[match.b]}`),
          )
          const wins = match.winner !== null && match.finished
          const said = !line || (wins && !line.includes(`${one.names[match.winner!]}`, line.indexOf('against')))
          return said ? [`match ${at + 1}: not so on the sheet: ${line}`] : []
        }),
      ]
    }),
    ...prizes(board, sheet),
    ...fixture(board, sheet),
  ]
}

/** The first prize of a competition goes to the first place, unless its own words say why not. */
function prizes(board: DayBoard, sheet: ResultSheet): Differences {
  return sheet.prizes.flatMap(({ competition, entrant, winner, because, name }) => {
    if (winner === '–' || because !== null || name !== 'First') return []
    const rows = board.competitions.find((one) => one.name === competition)!.rows.filter((row) => row.place === 1)
    const right =
      entrant === null ? rows.every((row) => winner.includes(row.name)) : rows.some((row) => row.entrant === entrant)
    return right ? [] : [`${competition}, first prize: ${winner}, on the board ${rows.map((row) => row.name)}`]
  })
}

/** The fixture card names as winner nobody who is not first, and nobody with another's score. */
function fixture(board: DayBoard, sheet: ResultSheet): Differences {
  const winner = winnerOf(sheet)
  const main = board.competitions[0]
  const first = main?.rows.filter((row) => row.place === 1) ?? []
  const games = main ? firstInGroups(main) : []
  const wanted = new Set(
    (games.length > 1 ? games.flatMap(({ best }) => best[0]!) : first.slice(0, 1)).map((row) => row.score),
  )
  const said = new Set([...(winner?.score.matchAll(/\d+/g) ?? [])].map(([figure]) => Number(figure)))
  const isSo =
    first.every((row) => winner?.name.includes(row.name)) &&
    [...wanted].every((score) => said.has(Math.abs(score ?? 0)))
  if (main && first.length > 0 && main.unit !== 'holes' && !isSo)
    return [`fixture card: ${winner?.name}, ${winner?.score}`]
  return []
}

/** The table at the desk: place, name and score of each row, and each match with its winner. */
export function atDesk(board: DayBoard): Differences {
  return eachOf(board, (one) => {
    const table = renderToStaticMarkup(<BoardTable board={one} card={() => '/'} name={(id) => id} />)
    if (one.matches.length > 0) {
      const lines = parts(table, 'li').map(text)
      return one.matches.flatMap(({ winner, a, b }, at) => {
        const line = lines[at] ?? ''
        const isSo =
          line.startsWith(`${one.names[a]} v ${one.names[b]}`) &&
          (winner === null || line.includes(`: ${one.names[winner]}`))
        return isSo ? [] : [`match ${at + 1} at the desk: ${line}`]
      })
    }
    const lines = parts(table, 'tr').slice(1)
    return one.rows.flatMap((row, at) => {
      const cells = [...(lines[at] ?? '').matchAll(/<t[dh].*?<\/t[dh]>/gs)].map(([cell]) => text(cell))
      const score = row.score === null ? null : scoreFigure(row.score, one.unit)
      const isSo =
        cells[0] === placeFigure(row) && cells[1]?.startsWith(row.name) && (score === null || cells.at(-1) === score)
      return isSo
        ? []
        : [`row ${at + 1} at the desk: ${cells.join(' | ')}, on the board ${placeFigure(row)} ${row.name} ${row.score}`]
    })
  })
}

/** A player's own card, read in each competition, and what a member's own page takes from the board. */
export function onCards(board: DayBoard, record: DayRecord): Differences {
  const ownPage = cardsOnBoard(board)
  const matches = matchesOnBoard(board)
  const main = board.competitions.find((one) => one.rows.length > 0)
  return [
    ...record.entries.flatMap(({ id }) => {
      const card = playerCardOf(record, id)
      if (!card) return []
      return board.competitions.flatMap((one) => {
        const row = one.rows.find(({ entryIds }) => entryIds.includes(id))
        const reading = card.readings.find(({ competitionId }) => competitionId === one.id)
        return same(`card of ${id} in ${one.format}`, figures(row), figures(reading?.row))
      })
    }),
    ...(main?.rows ?? []).flatMap((row) =>
      row.entryIds.flatMap((id) => {
        const { place, score, holesPlayed } = ownPage.get(id)?.row ?? {}
        return same(`own page of ${id}`, [row.place, row.score, row.holesPlayed], [place, score, holesPlayed])
      }),
    ),
    ...board.competitions
      .flatMap((one) => one.matches)
      .flatMap((match) => {
        if (!match.finished || match.result === 'no result') return []
        return [match.a, match.b].flatMap((end) => {
          const how = match.winner === null ? 'halved' : match.winner === end ? 'won' : 'lost'
          return matches.get(end)?.some((said) => said.startsWith(how))
            ? []
            : [`own page of ${end}: ${how} ${match.result}`]
        })
      }),
  ]
}

/** A member's own page as the private link opens it: this day's line on it. */
export function onOwnPage(board: DayBoard, page: MemberPage, personId: string, record: DayRecord): Differences {
  const entry = record.entries.find((one) => one.personId === personId)
  const line = page.cards.find((one) => one.entryId === entry?.id)
  if (!entry || !line) return [`own page of ${personId}: the day is not on it`]
  const main = board.competitions.find((one) => one.rows.length > 0)
  const row = main?.rows.find(({ entryIds }) => entryIds.includes(entry.id))
  const isOn = row !== undefined && row.holesPlayed > 0
  const ends = new Set<string>([
    entry.id,
    ...record.competitions
      .flatMap((one) => one.sides)
      .flatMap((one) => (one.entryIds.includes(entry.id) ? one.id : [])),
  ])
  const won = board.competitions
    .flatMap((one) => one.matches)
    .filter(({ a, b, finished, result }) => finished && result !== 'no result' && (ends.has(a) || ends.has(b)))
    .map(({ winner }) => (winner === null ? 'halved' : ends.has(winner) ? 'won' : 'lost'))
  const score = isOn && row.score !== null ? scoreShort(row.score, main!.unit) : null
  return [
    ...same(`own page of ${personId}`, [score, isOn ? row.place : null], [line.score, line.place]),
    ...same(
      `matches on the own page of ${personId}`,
      [...won].sort(),
      line.matches.map((said) => said.split(' ')[0]).sort(),
    ),
  ]
}

const figures = (row: BoardRow | undefined) => row && [row.entrant, row.place, row.tied, row.score, row.holesPlayed]

/**
 * The cards on the phones of one group: each card in the first competition, the sides that count together, the matches,
 * and the places. Rulings of the desk, and rounds of other days, are no part of a phone's own sum.
 */
export function onPhone(board: DayBoard, record: DayRecord, pack: CardPack): Differences {
  const cards = cardsNow(pack, [], 'this-phone')
  const main = board.competitions[0]
  const competition = record.competitions[0]
  if (!main || !competition) return []
  const ruled = new Set(record.rulings.map((ruling) => ruling.cardId))
  const format = formatIn(competition)
  const isPlain = (ids: readonly string[]) =>
    ids.every((id) => {
      const card = cardOf(record, id)
      return (card === undefined || !ruled.has(card.id)) && (record.status !== 'closed' || isWhole(record, id))
    })
  const ofDay = (row: BoardRow) => (row.rounds ? (row.rounds.at(-1)?.score ?? null) : row.score)
  const isSum = competition.countedDayIds.length > 0
  const own = cards.flatMap((card) => {
    const row = main.rows.find(({ entryIds }) => entryIds.includes(card.card.entryId))
    const isOne = format?.sideSize === 1 || format?.ball === 'one'
    if (!row || !isOne || format.isMatch || format.value.kind === 'shared' || !isPlain(row.entryIds)) return []
    // Beside a competition of everybody's own ball each partner has a card, and one of them is the side's.
    if (format.ball === 'one' && row.entryIds.filter((id) => cardOf(record, id)).length > 1) return []
    const total = totalOf(pack.reading, card.holes)
    if (total.played === 0) return []
    return same(`phone of ${card.card.entryId} in ${main.format}`, ofDay(row), total.value)
  })
  const sides = sidesSoFar(pack, cards).flatMap(({ name, figure, holes }) => {
    const row = main.rows.find((one) => one.name === name)
    if (!row) return [`phone: side ${name} is not on the board`]
    if (isSum || !isPlain(row.entryIds) || holes === 0) return []
    const wanted = row.score === null ? '–' : main.better === 'high' ? String(row.score) : sign(row.againstLevel ?? 0)
    return same(`side ${name} on the phone in ${main.format}`, [wanted, row.holesPlayed], [figure, holes])
  })
  const matches = (pack.matches ?? []).flatMap(({ match }) => {
    const on = board.competitions.flatMap((one) => one.matches).find((one) => one.id === match.id)
    if (!on) return [`phone: match ${match.id} is not on the board`]
    const now = matchNow(match, scoresIn(cards))
    const winner = !now.finished || now.up === 0 ? null : now.up > 0 ? on.a : on.b
    return same(`match ${match.id} on the phone`, [on.finished, on.winner], [now.finished, winner])
  })
  const games = (pack.games ?? []).flatMap(({ competition: name, players, game }) => {
    const on = board.competitions.find((one) => one.name === name)
    const now = gameNow(game, scoresIn(cards))
    // A ruling changes what a hole carries on to the others of the group too.
    if (!on || !isPlain(players.map(({ entryId }) => entryId))) return on ? [] : [`phone: ${name} is not on the board`]
    return players.flatMap(({ entryId }, ball) => {
      const row = on.rows.find(({ entrant }) => entrant === entryId)
      return same(`${entryId} in ${on.format} on the phone`, row && (ofDay(row) ?? 0), now.won[ball])
    })
  })
  const places = Object.entries(pack.position?.places ?? {}).flatMap(([id, { place, tied }]) => {
    const row = main.rows.find(({ entryIds }) => entryIds.some((one) => one === id))
    return same(`place of ${id} on the phone`, [row?.place, row?.tied], [place, tied])
  })
  return [...own, ...sides, ...matches, ...games, ...places]
}

const sign = (figure: number) => (figure === 0 ? 'level' : figure > 0 ? `+${figure}` : `−${-figure}`)

const cardOf = (record: DayRecord, entryId: string) => record.cards.find((one) => one.entryId === entryId)

/** Of a closed day a hole that was never written makes a no return, which no phone says. */
function isWhole(record: DayRecord, entryId: string): boolean {
  const card = cardOf(record, entryId)
  const holes = new Set(record.facts.filter((fact) => fact.cardId === card?.id).map((fact) => fact.hole))
  return card !== undefined && holes.size === record.round.holes
}
