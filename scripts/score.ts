// npm run --silent score -- day.json [more.json …]    the results of each day, as JSON
// npm run --silent score -- --formats                 the formats with their allowances

import { readFileSync } from 'node:fs'
import { parseDayFile } from '../lib/facts/day-file'
import type { Fault } from '../lib/result'
import type { Day } from '../lib/rules/day'
import { FORMATS, proposedAllowance } from '../lib/rules/formats/catalogue'
import { scoreDay } from '../lib/rules/score-day'
import type { CompetitionResult } from '../lib/rules/standings'

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
  const parsed = parseDayFile(json)
  return parsed.ok ? { day: parsed.value } : { faults: parsed.faults }
}

/** A key or an id of the file may hold anything, line breaks included. */
function oneLine(text: string): string {
  return text.replace(/[\s\p{Cc}]+/gu, ' ')
}

/**
 * A match competition has matches instead of standings. Of a broken tie the one below is named with the figures; the list
 * of all who were level would be written out once for each of them.
 */
function shown({ standings, matches, ...result }: CompetitionResult) {
  if (matches !== undefined) return { ...result, matches }
  return {
    ...result,
    standings: standings.map(({ tieBroken, ...standing }) => {
      if (tieBroken === undefined) return standing
      const { level: _level, ...broken } = tieBroken
      return { ...standing, tieBroken: broken }
    }),
  }
}

/** Written a competition at a time: a large day is longer than one string may be. */
function write(day: Day, apart: string): void {
  process.stdout.write('{"dayFile":1,"results":[')
  scoreDay(day).forEach((result, at) => {
    process.stdout.write(`${at === 0 ? '' : ','}${apart}${JSON.stringify(shown(result))}`)
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
  const bad = reads.flatMap(({ file, read }) => {
    if ('day' in read) return []
    return read.faults.map(({ place, sentence }) => {
      const prefix = args.length > 1 && place !== file ? `${file}: ` : ''
      return oneLine(`${prefix}${place}: ${sentence}`)
    })
  })
  if (bad.length > 0) {
    for (const line of bad) console.error(line)
    return 1
  }
  for (const { read } of reads) {
    if (!('day' in read)) continue
    write(read.day, args.length === 1 ? '\n' : '')
  }
  return 0
}

process.exitCode = run(process.argv.slice(2))
