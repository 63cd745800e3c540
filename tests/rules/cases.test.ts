// The published cases, run as data. Each stands beside its rule in lib/rules with its source.
import { dirname, join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { REGISTER } from '@/lib/rules/register'
import { caseFile, filesEnding, judge, NOT_APPLICABLE, notApplicableFile, type RuleCase, readJson } from './case-file'
import { READINGS } from './readings/readings'

const files = filesEnding('.cases.json').filter((path) => path !== NOT_APPLICABLE)
const read = files.map((path) => ({ path, parsed: caseFile.safeParse(readJson(path)) }))
const good = read.flatMap(({ path, parsed }) => (parsed.success ? [{ path, ...parsed.data }] : []))

describe('every file of cases', () => {
  test.each(read.map(({ path, parsed }) => [path, parsed] as const))('%s is well formed', (_, parsed) => {
    expect(
      parsed.success ? [] : parsed.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`),
    ).toEqual([])
  })

  test('no id is used twice, not even by a case set aside', () => {
    const aside = notApplicableFile.parse(readJson(NOT_APPLICABLE)).notApplicable.map((one) => one.id)
    const ids = [...good.flatMap((file) => file.cases.map((one) => one.id)), ...aside]
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([])
  })

  test('a case from memory or from practice says so', () => {
    const silent = good.flatMap((file) => file.cases).filter((one) => one.source.publisher === 'no source' && !one.note)
    expect(silent).toEqual([])
  })
})

for (const { path, cases } of good) {
  describe(path, () => {
    test.each(cases.map((one) => [`${one.id} ${one.title}`, one] as const))('%s', (_, one) => {
      expect(judge(one, READINGS)).toEqual([])
    })
  })
}

describe('the rules have their cases', () => {
  test('every rule of the register and of the folders of rules has cases beside it', () => {
    const covered = new Set(good.flatMap((file) => file.about.map((name) => join(dirname(file.path), name))))
    const rules = filesEnding('.ts').filter((path) => needsCases(path))
    expect(rules.filter((path) => !covered.has(path))).toEqual([])
  })

  test('cases are about files that exist, and every reading is used', () => {
    const known = new Set(filesEnding('.ts'))
    const about = good.flatMap((file) => file.about.map((name) => join(dirname(file.path), name)))
    expect(about.filter((path) => !known.has(path))).toEqual([])
    const used = new Set(good.flatMap((file) => file.cases.map((one) => one.rule)))
    expect(Object.keys(READINGS).filter((rule) => !used.has(rule))).toEqual([])
  })
})

/** Folders of rules; what only reads the day, prints or draws groups is tested elsewhere. */
const RULE_FOLDERS = ['handicap', 'strokes', 'values', 'count', 'formats/data', 'matches', 'ties']

function needsCases(path: string): boolean {
  return RULE_FOLDERS.includes(dirname(path)) || REGISTER.some((rule) => rule.file === `lib/rules/${path}`)
}

describe('the runner itself', () => {
  const right: RuleCase = {
    id: 'RUN-01',
    rule: 'strokes-by-index',
    title: 'A handicap of one',
    given: { playingHandicap: 1 },
    expect: { total: 1 },
    source: { title: 'Made for the runner', publisher: 'ourselves', edition: 'none', section: 'none' },
    origin: 'ours',
    status: 'read in source',
  }

  test('passes a right case', () => {
    expect(judge(right, READINGS)).toEqual([])
  })

  test('fails a wrong figure', () => {
    expect(judge({ ...right, expect: { total: 2 } }, READINGS)).toEqual(['total: expected 2, the engine says 1'])
  })

  test('fails one wrong figure among right ones', () => {
    const byStrokeIndex = [1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1]
    expect(judge({ ...right, expect: { total: 1, byStrokeIndex } }, READINGS)).toHaveLength(1)
  })

  test('fails a figure of the wrong kind', () => {
    expect(judge({ ...right, expect: { total: '1' } }, READINGS)).toHaveLength(1)
  })

  test('fails a key that is given and not read', () => {
    expect(judge({ ...right, given: { playingHandicap: 1, slope: 113 } }, READINGS)).toHaveLength(1)
  })

  test('fails an expectation that nothing compares', () => {
    expect(judge({ ...right, expect: { total: 1, points: 36 } }, READINGS)).toEqual([
      'points is expected but nothing compares it',
    ])
  })

  test('fails a rule nobody reads, also one named like a property of every object', () => {
    expect(judge({ ...right, rule: 'luck' }, READINGS)).toHaveLength(1)
    expect(judge({ ...right, rule: 'constructor' }, READINGS)).toHaveLength(1)
  })

  test('refuses a case without a source, without an expectation, or with a key of its own', () => {
    const { source: _, ...sourceless } = right
    for (const bad of [sourceless, { ...right, expect: {} }, { ...right, tolerance: 1 }]) {
      expect(caseFile.safeParse({ about: ['strokes-on-holes.ts'], cases: [bad] }).success).toBe(false)
    }
  })
})
