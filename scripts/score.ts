// npm run --silent score -- day.json [more.json …]    the results of each day, as JSON; of several files
//                                                     the good ones are scored, and the others named
// npm run --silent score -- --formats                 the formats with their allowances

import { readFileSync } from 'node:fs'
import { parseDayFile } from '../lib/facts/day-file'
import { keysTwice } from '../lib/facts/json-keys'
import type { Fault } from '../lib/result'
import type { Competition, Day } from '../lib/rules/day'
import { FORMATS, proposedAllowance } from '../lib/rules/formats/catalogue'
import { scoreDay } from '../lib/rules/score-day'
import type { CompetitionResult } from '../lib/rules/standings'
import { type OpenedHandicap, openedHandicaps, openedMatches } from '../lib/rules/working/opened'

type Read = { readonly day: Day } | { readonly faults: readonly Fault[] }

const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'There is no such file.',
  EISDIR: 'This is a folder, not a file.',
  EACCES: 'This file may not be read.',
}

function readDay(file: string): Read {
  let text: string
  try {
    text = readFileSync(file, 'utf8').replace(/^\uFEFF/, '')
  } catch (failure) {
    const code = failure instanceof Error && 'code' in failure ? String(failure.code) : ''
    return { faults: [{ place: file, sentence: WHY[code] ?? `This file cannot be read (${code}).` }] }
  }
  let json: unknown
  try {
    json = JSON.parse(text)
  } catch (failure) {
    const why = failure instanceof Error ? failure.message.replace(/\s+/g, ' ') : ''
    return { faults: [{ place: file, sentence: `This is not JSON: ${why}` }] }
  }
  const twice = keysTwice(text)
  if (twice.length > 0) return { faults: twice }
  const parsed = parseDayFile(json)
  return parsed.ok ? { day: parsed.value } : { faults: parsed.faults }
}

/** A key or an id of the file may hold anything, line breaks included. */
function oneLine(text: string): string {
  return text.replace(/[\s\p{Cc}]+/gu, ' ')
}

/**
 * A match competition has matches instead of standings, each hole with both sides' balls. Every playing handicap is opened.
 * Of a broken tie the one below is named with the figures; the list of all who were level would be written out once for
 * each of them.
 */
function shown({ standings, matches, ...result }: CompetitionResult, competition: Competition, day: Day) {
  const opened = openedHandicaps(day, competition)
  if (matches !== undefined) {
    const holes = openedMatches(day, competition)
    return {
      ...result,
      matches: matches.map((match) => {
        const balls = new Map(holes.get(match.id)?.map(({ hole, ...both }) => [hole, both]))
        return {
          ...match,
          holes: match.holes.map((state) => ({ ...state, ...balls.get(state.hole) })),
          ...of(opened.get(match.id)),
        }
      }),
    }
  }
  return {
    ...result,
    standings: standings.map(({ tieBroken, ...standing }) => {
      const whole = { ...standing, ...of(opened.get(standing.entrant)) }
      if (tieBroken === undefined) return whole
      const { level: _level, ...broken } = tieBroken
      return { ...whole, tieBroken: broken }
    }),
  }
}

const of = (opened: readonly OpenedHandicap[] | undefined) => (opened === undefined ? {} : { opened })

/** Written a competition at a time: a large day is longer than one string may be. */
function write(day: Day, apart: string, file: string | null): void {
  const named = file === null ? '' : `"file":${JSON.stringify(file)},`
  process.stdout.write(`{"dayFile":1,${named}"results":[`)
  scoreDay(day).forEach((result, at) => {
    const competition = day.competitions.find(({ id }) => id === result.competition)!
    process.stdout.write(`${at === 0 ? '' : ','}${apart}${JSON.stringify(shown(result, competition, day))}`)
  })
  process.stdout.write(`${apart}]}\n`)
}

function formats(): unknown {
  return FORMATS.map(({ id, name, sentence, family, unit, better, sideSize, clause }) => {
    const { allowance, from, clause: allowanceClause } = proposedAllowance(id, 0, '2024')
    return {
      id,
      name,
      sentence,
      family,
      sideSize,
      unit,
      better,
      clause,
      allowance,
      allowanceFrom: from,
      allowanceClause,
    }
  })
}

function run(args: readonly string[]): number {
  if (args.length === 1 && args[0] === '--formats') {
    console.log(JSON.stringify({ dayFile: 1, formats: formats() }, null, 2))
    return 0
  }
  const unknown = args.find((one) => one.startsWith('--'))
  if (args.length === 0 || unknown !== undefined) {
    if (unknown !== undefined) console.error(`${unknown}: This option is not known.`)
    console.error('Usage: npm run --silent score -- day.json [more.json …]   or   npm run --silent score -- --formats')
    return 1
  }
  const reads = args.map((file) => ({ file, read: readDay(file) }))
  const several = args.length > 1
  let exit = 0
  for (const { file, read } of reads) {
    if ('day' in read) {
      write(read.day, several ? '' : '\n', several ? file : null)
      continue
    }
    exit = 1
    for (const { place, sentence } of read.faults) {
      const prefix = several && place !== file ? `${file}: ` : ''
      console.error(oneLine(`${prefix}${place}: ${sentence}`))
    }
  }
  return exit
}

process.exitCode = run(process.argv.slice(2))
