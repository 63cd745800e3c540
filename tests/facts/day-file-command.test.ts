// The score command as a user runs it.

import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { dayFile, spoilt } from './day-file-example'

const ROOT = join(import.meta.dirname, '../..')
let folder = ''

function score(...args: string[]) {
  const command = ['--conditions=react-server', '--import', 'tsx', 'scripts/score.ts', ...args]
  return spawnSync(process.execPath, command, { cwd: ROOT, encoding: 'utf8' })
}

function file(name: string, content: unknown): string {
  const path = join(folder, name)
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content))
  return path
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'day-file-'))
})
afterAll(() => {
  rmSync(folder, { recursive: true, force: true })
})

describe('the score command', () => {
  it('scores the four cards of Aldermoss Park as worked out by hand', () => {
    const run = score(file('day.json', dayFile()))
    expect(run.stderr).toBe('')
    expect(run.status).toBe(0)
    const { dayFile: version, results } = JSON.parse(run.stdout)
    expect(version).toBe(1)
    expect(
      results[0].standings.map((one: Record<string, unknown>) => [
        one.place,
        one.entrant,
        one.playingHandicap,
        one.score,
        one.out,
        one.in,
      ]),
    ).toEqual([
      [1, 'trevennor', 19, 38, 20, 18],
      [2, 'coldbrook', 17, 35, 18, 17],
      [3, 'tarrablane', 24, 34, 16, 18],
      [4, 'haldane', 1, 32, 17, 15],
    ])
    expect(results[2].standings).toBeUndefined()
    expect(results[2].matches[0]).toMatchObject({ id: 'm1', winner: 'trevennor', result: '4&3' })
  })

  it('writes one document a line for several files', () => {
    const day = file('day.json', dayFile())
    const run = score(day, day)
    expect(
      run.stdout
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line).dayFile),
    ).toEqual([1, 1])
  })

  it('says nothing on standard output and one line a fault when a file is bad', () => {
    const bad = file('bad.json', spoilt('players.3.handicapIndex', 'lots'))
    const run = score(bad)
    expect(run.status).toBe(1)
    expect(run.stdout).toBe('')
    expect(run.stderr.trim().split('\n')).toHaveLength(1)
    expect(run.stderr).toMatch(/^players\[3\]\.handicapIndex: /)
    const both = score(
      file('day.json', dayFile()),
      bad,
      join(folder, 'none.json'),
      file('text.json', '{ not json'),
      folder,
    )
    expect(both.status).toBe(1)
    // The one good file is scored all the same.
    expect(
      both.stdout
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line).file),
    ).toEqual([join(folder, 'day.json')])
    expect(both.stderr.trim().split('\n')).toHaveLength(4)
    expect(both.stderr).toMatch(/none\.json: There is no such file\.\n.*text\.json: This is not JSON/)
  })

  it('lists the formats with their allowances', () => {
    const run = score('--formats')
    const { formats } = JSON.parse(run.stdout)
    const find = (id: string) => formats.find((one: { id: string }) => one.id === id)
    expect(find('stableford')).toMatchObject({ allowance: 95, allowanceFrom: 'published' })
    expect(find('four-ball-par')).toMatchObject({ allowance: 90, sideSize: 2 })
    expect(score('--nonsense').status).toBe(1)
    expect(score().status).toBe(1)
  })
})
