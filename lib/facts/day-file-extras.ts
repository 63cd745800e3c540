// The rarer terms of a competition in a day file, where they make no sense: holes that do not exist, a group that shares
// nothing, a round nobody played, a player in two teams.

import { ballValueOf, type Format } from '@/lib/rules/formats/format'
import { type Faults, quoted } from './day-file-faults'
import type { DayFileShape } from './day-file-schema'
import { resultFault } from './match-ending'
import { termsThatDoNotFit } from './terms-that-fit'

type CompetitionShape = DayFileShape['competitions'][number]

export function extraTermsFaults(
  file: DayFileShape,
  competition: CompetitionShape,
  format: Format,
  place: string,
  faults: Faults,
): void {
  const out = (key: string, sentence: string) => faults.at(`${place}.${key}`, sentence)
  for (const { term, inside, sentence } of termsThatDoNotFit(competition, format)) out(`${term}${inside}`, sentence)
  if (competition.dividedBy !== undefined && competition.allowance !== undefined) {
    out('dividedBy', 'Give an allowance or a divisor, not both.')
  }
  sideTeeFault(file, competition, format, `${place}.sideTee`, faults)
  groupFaults(competition, format, file, place, faults)
  roundFaults(file, competition, format, place, faults)
  const divisions = competition.divisions ?? []
  faults.unique(
    divisions.map(({ id }) => id),
    (i) => `${place}.divisions[${i}].id`,
    'a division',
  )
  if (format.namedHolesTimes !== undefined && !competition.namedHoles?.length)
    out('namedHoles', 'Name the holes that count double.')
  const numbers = new Set(file.course.tees.flatMap(({ holes }) => holes.map(({ hole }) => hole)))
  for (const key of ['namedHoles', 'countedHoles'] as const)
    competition[key]?.forEach((hole, at, all) => {
      if (!numbers.has(hole)) out(`${key}[${at}]`, `There is no hole ${hole} on these cards.`)
      else if (all.indexOf(hole) !== at) out(`${key}[${at}]`, `Hole ${hole} is named already.`)
    })
  if ((competition.minimumDrives ?? 0) > numbers.size)
    out('minimumDrives', `There are only ${numbers.size} tees to drive from.`)
  const pairings = new Set<string>()
  competition.matches?.forEach((match, m) => {
    const { walkover, concededBy, result, abandoned } = match
    const ends = [walkover, concededBy, result, abandoned || undefined].filter((end) => end !== undefined)
    if (ends.length > 1)
      out(`matches[${m}]`, 'A match ends by a walkover, by concession, with a result or abandoned: by one of them.')
    const given = result && resultFault(result, numbers.size)
    if (given) out(`matches[${m}].result`, given)
    match.concededHoles?.forEach(({ hole }, at, all) => {
      if (!numbers.has(hole)) out(`matches[${m}].concededHoles[${at}].hole`, `There is no hole ${hole} on these cards.`)
      else if (all.findIndex((one) => one.hole === hole) !== at)
        out(`matches[${m}].concededHoles[${at}].hole`, `Hole ${hole} is conceded already.`)
    })
    const pairing = [match.a, match.b].sort().join(' ')
    if (pairings.has(pairing))
      out(`matches[${m}]`, `${quoted(match.a)} and ${quoted(match.b)} have a match here already.`)
    pairings.add(pairing)
    const known = ballValueOf(format.value).kind === 'strokes'
    if (match.extraHoles !== undefined && !known) out(`matches[${m}].extraHoles`, 'Extra holes are played on strokes.')
  })
}

function sideTeeFault(
  file: DayFileShape,
  { sideTee }: CompetitionShape,
  format: Format,
  place: string,
  faults: Faults,
): void {
  if (sideTee === undefined || format.ball === 'own') return
  const played = [...file.players, ...file.cards].some(({ tee }) => tee === sideTee)
  if (!file.course.tees.some(({ id }) => id === sideTee))
    faults.at(place, `There is no tee ${quoted(sideTee)} on this course.`)
  else if (!played) faults.at(place, `Nobody plays from ${quoted(sideTee)}.`)
}

function groupFaults(
  competition: CompetitionShape,
  format: Format,
  file: DayFileShape,
  place: string,
  faults: Faults,
): void {
  const { value } = format
  const { groups } = competition
  if (value.kind !== 'shared') {
    if (groups !== undefined) faults.at(`${place}.groups`, `In ${format.name} nothing is shared inside a group.`)
    return
  }
  const seen = new Set<string>()
  const entered = new Set(competition.entrants ?? file.players.map(({ id }) => id))
  groups?.forEach((group, g) => {
    group.forEach((id, i) => {
      const where = `${place}.groups[${g}][${i}]`
      if (!entered.has(id)) faults.at(where, `There is no player ${quoted(id)} in this competition.`)
      else if (seen.has(id)) faults.at(where, `${quoted(id)} is in a group already.`)
      seen.add(id)
    })
  })
  if (value.shares.kind !== 'by-place') return
  const size = value.shares.points.length
  const sizes = groups?.map((group) => group.length) ?? [entered.size]
  sizes.forEach((one, g) => {
    if (one === size) return
    const where = groups === undefined ? `${place}.groups` : `${place}.groups[${g}]`
    faults.at(where, `${format.name} is shared by groups of ${size}, not of ${one}.`)
  })
}

function roundFaults(
  file: DayFileShape,
  competition: CompetitionShape,
  format: Format,
  place: string,
  faults: Faults,
): void {
  const played = new Set(file.cards.map((card) => card.round ?? 1))
  const { rounds } = competition
  if (rounds === undefined) {
    if (played.size === 1 && !played.has(1))
      faults.at(`${place}.rounds`, `There are only cards of round ${[...played][0]}: say that it counts here.`)
    if (competition.roundTerms !== undefined)
      faults.at(`${place}.roundTerms`, 'Say in "rounds" which rounds are added up.')
    if (played.size > 1)
      faults.at(`${place}.rounds`, 'There are cards of several rounds: say which of them count here.')
    return
  }
  rounds.forEach((round, at) => {
    // While a day is open its cards may still come.
    if (file.closed && !played.has(round)) faults.at(`${place}.rounds[${at}]`, `There is no card of round ${round}.`)
  })
  if (format.isMatch && rounds.length > 1) faults.at(`${place}.rounds`, 'A match is played over one round.')
  if (new Set(rounds).size !== rounds.length) faults.at(`${place}.rounds`, 'Every round counts once.')
  const own = competition.roundTerms ?? []
  faults.unique(
    own.map(({ round }) => String(round)),
    (i) => `${place}.roundTerms[${i}].round`,
    'an entry for round',
  )
  own.forEach(({ round, ...terms }, i) => {
    const where = `${place}.roundTerms[${i}]`
    if (!rounds.includes(round)) faults.at(`${where}.round`, `Round ${round} is not added up here.`)
    for (const { term, inside, sentence } of termsThatDoNotFit(terms, format))
      faults.at(`${where}.${term}${inside}`, sentence)
  })
}

export function teamFaults(file: DayFileShape, faults: Faults): void {
  const teams = file.teams ?? []
  const players = new Set([...file.players, ...(file.absent ?? [])].map(({ id }) => id))
  faults.unique(
    teams.map(({ id }) => id),
    (i) => `teams[${i}].id`,
    'a team',
  )
  const seen = new Set<string>()
  teams.forEach((team, t) => {
    team.players.forEach((id, p) => {
      const place = `teams[${t}].players[${p}]`
      if (!players.has(id)) faults.at(place, `There is no player ${quoted(id)}.`)
      else if (seen.has(id)) faults.at(place, `${quoted(id)} is in a team already.`)
      seen.add(id)
    })
  })
}
