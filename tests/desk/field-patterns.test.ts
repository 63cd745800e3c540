// Promise: every pattern of a field is one that browsers accept: they compile it with the v flag, and a pattern that does
// not compile is passed over in silence. (HTML, the pattern attribute.)
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const files = readdirSync('app', { recursive: true, encoding: 'utf8' }).filter((name) => /\.tsx?$/.test(name))
const found = files.flatMap((name) => {
  const text = readFileSync(join('app', name), 'utf8')
  return [...text.matchAll(/\bpattern=(?:"([^"]*)"|\{'([^']*)'\}|\{`([^`]*)`\})/g)].map((match) => ({
    name,
    pattern: match[1] ?? match[2] ?? match[3] ?? '',
  }))
})

describe('the pattern of a field', () => {
  it('is written where it can be read here', () => {
    const all = files.flatMap((name) => readFileSync(join('app', name), 'utf8').match(/\bpattern=/g) ?? [])
    expect(found.length).toBe(all.length)
    expect(found.length).toBeGreaterThan(2)
  })

  it.each(found)('$pattern in $name', ({ pattern }) => {
    expect(() => new RegExp(`^(?:${pattern})$`, 'v')).not.toThrow()
  })

  it('takes a minus and a dash for a plus handicap', () => {
    const handicap = new RegExp(`^(?:${found.find(({ pattern }) => pattern.includes('−'))?.pattern})$`, 'v')
    for (const text of ['12', '-2', '−2', '0']) expect(handicap.test(text)).toBe(true)
    for (const text of ['', '+2', '1.5', '123']) expect(handicap.test(text)).toBe(false)
  })
})
