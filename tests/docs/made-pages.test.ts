// The pages of docs/ that are made from the code say what the code says: run "npm run docs" when one fails.
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { exportPage } from '@/scripts/export-page'
import { isPermissive, licences, licencesPage, WHY } from '@/scripts/licences-page'

const page = (name: string) => readFileSync(`docs/${name}`, 'utf8')

describe('a made page', () => {
  it('of the export is the one of the code', () => {
    expect(page('export.md')).toBe(exportPage())
  })

  it('of the licences is the one of the installed packages', () => {
    expect(page('licences.md')).toBe(licencesPage())
  })
})

describe('the licences', () => {
  it('are stated by every package that runs, and each that is not plainly permissive was looked at', () => {
    expect(licences().filter(({ licence, runs }) => runs && /not installed/.test(licence))).toEqual([])
    expect(licences().filter(({ name, licence }) => !isPermissive(licence) && !WHY[name])).toEqual([])
    expect(licences().length).toBeGreaterThan(100)
  })

  it('are told apart', () => {
    expect(isPermissive('(MIT OR GPL-3.0-or-later)')).toBe(true)
    expect(isPermissive('GPL-3.0-or-later')).toBe(false)
    expect(isPermissive('MIT AND LGPL-3.0')).toBe(false)
  })
})
