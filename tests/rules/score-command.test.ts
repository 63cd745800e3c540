// The score command as anybody would run it: a process of its own, its output and its exit.
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test, vi } from 'vitest'
import { fourCards } from './four-cards'

// Every run starts a process of its own, perhaps on a busy machine.
vi.setConfig({ testTimeout: 600_000 })

const folder = mkdtempSync(join(tmpdir(), 'daybook-score-'))
afterAll(() => rmSync(folder, { recursive: true }))

function file(name: string, content: unknown): string {
  const path = join(folder, name)
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content))
  return path
}

function score(...given: string[]) {
  const run = spawnSync('npm', ['run', '--silent', 'score', '--', ...given], { encoding: 'utf8', timeout: 300_000 })
  return { exit: run.status, out: run.stdout, faults: run.stderr.split('\n').filter((line) => line !== '') }
}

interface Answer {
  readonly dayFile: number
  readonly results: readonly {
    readonly competition: string
    readonly standings: readonly Record<string, unknown>[]
    readonly matches?: readonly Record<string, unknown>[]
  }[]
}

const good = file('four-cards.json', fourCards())

describe('four cards', () => {
  const run = score(good)
  const answer = JSON.parse(run.out) as Answer

  test('leaves quietly with the results on standard output', () => {
    expect([run.exit, run.faults]).toEqual([0, []])
    expect(answer.dayFile).toBe(1)
    expect(answer.results.map((one) => one.competition)).toEqual(['cup', 'pairs'])
  })

  test('has the singles as reckoned by hand', () => {
    const rows = answer.results[0]!.standings.map((row) => [
      row.place,
      row.entrant,
      row.courseHandicap,
      row.playingHandicap,
      row.score,
      row.holesPlayed,
      row.tied,
    ])
    expect(rows).toEqual([
      [1, 'trevennor', 20, 19, 38, 18, false],
      [2, 'coldbrook', 18, 17, 35, 18, false],
      [3, 'tarrablane', 25, 24, 34, 18, false],
      [4, 'haldane', 1, 1, 32, 18, false],
    ])
  })

  test('has both nines of each card', () => {
    const nines = Object.fromEntries(answer.results[0]!.standings.map((row) => [row.entrant, [row.out, row.in]]))
    expect(nines).toEqual({ trevennor: [20, 18], coldbrook: [18, 17], tarrablane: [16, 18], haldane: [17, 15] })
  })

  test('has the pairs off 85 percent', () => {
    const handicaps = answer.results[1]!.standings.map((row) => row.handicaps)
    expect(handicaps).toContainEqual({ haldane: 1, coldbrook: 15 })
    expect(handicaps).toContainEqual({ trevennor: 17, tarrablane: 21 })
  })

  test('gives the same bytes every time', () => {
    expect(score(good).out).toBe(run.out)
  })
})

describe('several files', () => {
  test('are answered in order, one document a line', () => {
    const other = fourCards()
    other.competitions = [{ id: 'gross', format: 'gross', allowance: 0 }]
    const run = score(good, file('gross.json', other))
    const lines = run.out.trimEnd().split('\n')
    expect(run.exit).toBe(0)
    expect(lines.map((line) => (JSON.parse(line) as Answer).results[0]!.competition)).toEqual(['cup', 'gross'])
  })

  test('the good ones are scored, each line with its file, and the bad one is named', () => {
    const spoilt = file('bad.json', { ...fourCards(), surprise: true })
    const run = score(good, spoilt, good)
    const lines = run.out.trimEnd().split('\n')
    expect(run.exit).toBe(1)
    expect(lines.map((line) => JSON.parse(line).file)).toEqual([good, good])
    expect(run.faults).toHaveLength(1)
    expect(run.faults[0]).toMatch(new RegExp(`^${spoilt}: surprise: `))
  })
})

describe('bad input', () => {
  const bad: [string, unknown, RegExp][] = [
    ['not JSON', '{ "dayFile": 1,', /./],
    ['an empty file', '', /./],
    ['a list', [], /./],
    ['another version', { ...fourCards(), dayFile: 2 }, /dayFile/],
    ['no cards key misspelt', { ...fourCards(), crads: [] }, /crads/],
    ['a date that is none', { ...fourCards(), date: '2026-02-30' }, /date/],
  ]
  test.each(bad)('%s: exit 1, nothing on standard output, a fault a line', (name, content, fault) => {
    const run = score(file(`${name}.json`, content))
    expect([run.exit, run.out]).toEqual([1, ''])
    expect(run.faults.length).toBeGreaterThan(0)
    expect(run.faults.join('\n')).toMatch(fault)
    expect(run.faults.join('\n')).not.toMatch(/\s+at .*:\d+:\d+/)
  })

  test('names every place, one line each', () => {
    const day = fourCards()
    day.players[3]!.handicapIndex = 99
    day.cards[0]!.scores[4] = -1
    const run = score(file('two-faults.json', day))
    expect(run.exit).toBe(1)
    expect(run.faults).toHaveLength(2)
    expect(run.faults.some((line) => line.includes('players[3].handicapIndex:'))).toBe(true)
    expect(run.faults.some((line) => line.includes('cards[0].scores[4]:'))).toBe(true)
  })

  test('a file that is not there', () => {
    const run = score(join(folder, 'nowhere.json'))
    expect([run.exit, run.out]).toEqual([1, ''])
    expect(run.faults).toHaveLength(1)
    expect(run.faults[0]).toMatch(/nowhere\.json/)
  })

  test('no file at all says how to use it', () => {
    const run = score()
    expect([run.exit, run.out]).toEqual([1, ''])
    expect(run.faults.join(' ')).toMatch(/score/)
  })
})

describe('--formats', () => {
  test('lists every format with its allowance', () => {
    const run = score('--formats')
    expect(run.exit).toBe(0)
    const allowances: [string, string][] = [
      ['stableford', '95'],
      ['medal', '95'],
      ['par', '95'],
      ['maximum-score', '95'],
      ['four-ball-stableford', '85'],
      ['four-ball-medal', '85'],
      ['four-ball-par', '90'],
      ['match', '100'],
    ]
    for (const [format, allowance] of allowances) {
      const said = run.out.includes('"') ? JSON.stringify(JSON.parse(run.out)) : run.out
      expect(said).toContain(format)
      expect(said).toContain(allowance)
    }
  })
})
