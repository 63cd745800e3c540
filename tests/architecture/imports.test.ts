// The table of DEVELOPERS.md, "The rooms, and who may enter". Any other arrow, and any cycle, fails.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { directive, type Import, importsOf, type Part, partOf, ROOT, sources } from './imports'

const MAY: Record<Exclude<Part, 'other'>, readonly Part[]> = {
  result: [],
  rules: ['result'],
  facts: ['rules', 'result'],
  boards: ['facts', 'rules', 'result'],
  store: ['facts', 'result'],
  society: ['store', 'boards', 'facts', 'rules', 'result'],
  outbox: ['facts', 'rules', 'result'],
  app: ['society', 'boards', 'facts', 'rules', 'result', 'outbox'],
  seed: ['society', 'facts', 'result'],
}

/** Packages a part may use beside Node's own modules; a part not named here may use any but the ones below. */
const PACKAGES: Partial<Record<Part, readonly string[]>> = {
  result: [],
  rules: [],
  facts: ['zod', 'zod/mini'],
  boards: [],
  outbox: ['idb'],
}

const files = [...sources('lib'), ...sources('app'), ...sources('seed')]
const all: Import[] = files.flatMap(importsOf)

const isPrisma = (name: string) => /^@prisma\/|^better-sqlite3|store\/generated/.test(name)

describe('who may import whom', () => {
  it('follows the table', () => {
    const wrong = all
      .filter((one) => !one.outside)
      .filter(({ from, to }) => {
        const a = partOf(from)
        const b = partOf(to)
        if (a === 'other') return false
        // A seed and a screen may read package.json; nothing may reach tests or scripts.
        if (b === 'other') return !/package\.json$|node_modules/.test(to)
        return a !== b && !MAY[a].includes(b)
      })
      .map(({ from, to }) => `${from} -> ${to}`)
    expect(wrong).toEqual([])
  })

  it('keeps the pure parts free of packages', () => {
    const wrong = all
      .filter(({ from, outside }) => outside && PACKAGES[partOf(from)] !== undefined)
      .filter(({ from, to }) => !PACKAGES[partOf(from)]!.includes(to))
      .map(({ from, to }) => `${from} -> ${to}`)
    expect(wrong).toEqual([])
  })

  it('lets only the store speak Prisma', () => {
    const wrong = all
      .filter(({ from, to }) => isPrisma(to) && partOf(from) !== 'store')
      .map(({ from, to }) => `${from} -> ${to}`)
    expect(wrong).toEqual([])
  })

  it('gives the engine no clock, no chance and no network', () => {
    const forbidden = /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bfetch\(|\bprocess\.|\bcrypto\b/
    const wrong = files
      .filter((file) => ['rules', 'boards'].includes(partOf(file)))
      .filter((file) =>
        forbidden.test(readFileSync(join(ROOT, file), 'utf8').replace(/\/\/[^\n]*|\/\*[\s\S]*?\*\//g, '')),
      )
    expect(wrong).toEqual([])
  })

  it('has no cycle', () => {
    const next = new Map<string, string[]>()
    for (const { from, to, outside } of all) if (!outside) next.set(from, [...(next.get(from) ?? []), to])
    const state = new Map<string, 'open' | 'done'>()
    const cycles: string[] = []
    const visit = (file: string, path: string[]) => {
      if (state.get(file) === 'done') return
      if (state.get(file) === 'open') {
        cycles.push([...path.slice(path.indexOf(file)), file].join(' -> '))
        return
      }
      state.set(file, 'open')
      for (const to of next.get(file) ?? []) visit(to, [...path, file])
      state.set(file, 'done')
    }
    for (const file of files) visit(file, [])
    expect(cycles).toEqual([])
  })

  it('keeps the store and the use cases off the phone', () => {
    const byFile = new Map(files.map((file) => [file, importsOf(file)]))
    const reached: string[] = []
    for (const start of files.filter((file) => directive(file) === 'client')) {
      const seen = new Set<string>()
      const walk = (file: string) => {
        if (seen.has(file)) return
        seen.add(file)
        if (['store', 'society'].includes(partOf(file))) reached.push(`${start} reaches ${file}`)
        for (const { to, outside } of byFile.get(file) ?? []) if (!outside && directiveOf(to) !== 'server') walk(to)
      }
      walk(start)
    }
    expect(reached).toEqual([])
  })

  it('notices an arrow that is not in the table', () => {
    expect(MAY.rules.includes(partOf('lib/store/client.ts'))).toBe(false)
    expect(partOf('lib/rules/day.ts')).toBe('rules')
    expect(importsOf('lib/society/acts.ts').map(({ to }) => to)).toContain('lib/facts/actor.ts')
  })
})

function directiveOf(file: string) {
  return /\.(ts|tsx)$/.test(file) && files.includes(file) ? directive(file) : null
}
