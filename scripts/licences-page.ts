// docs/licences.md: the licence of every package in the lock file, as the packages themselves state it.
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

interface Locked {
  readonly version?: string
  readonly dev?: boolean
  readonly devOptional?: boolean
  readonly optional?: boolean
}

interface Stated {
  readonly name: string
  readonly version: string
  readonly licence: string
  readonly runs: boolean
}

/** May be used, changed and passed on with little more than a notice. Of several to choose from, one is enough. */
const PERMISSIVE = new Set([
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'CC0-1.0',
  'CC-BY-4.0',
  'ISC',
  'MIT',
  'MIT-0',
  'MIT/X11',
  'OFL-1.1',
  'Python-2.0',
  'Unicode-DFS-2016',
  'Unlicense',
  'WTFPL',
  'Zlib',
])

export function isPermissive(licence: string): boolean {
  const plain = licence.replace(/[()]/g, ' ').trim()
  if (/\bOR\b/.test(plain)) return plain.split(/\bOR\b/).some(isPermissive)
  if (/\bAND\b/i.test(plain)) return plain.split(/\bAND\b/i).every(isPermissive)
  return PERMISSIVE.has(plain.trim())
}

function licenceOf(folder: string): string {
  const path = join(folder, 'package.json')
  if (!existsSync(path)) return 'not installed here'
  const { license, licenses } = JSON.parse(readFileSync(path, 'utf8'))
  const one = (value: unknown): string =>
    typeof value === 'string' ? value : ((value as { type?: string } | null)?.type ?? '')
  const said = Array.isArray(licenses) ? licenses.map(one).join(' OR ') : one(license ?? licenses)
  if (said && !/^SEE LICEN/i.test(said)) return said
  // Some packages state it only in the text beside them.
  const text = readdirSync(folder).find((name) => /^licen[cs]e/i.test(name))
  if (!text) return 'none stated'
  const words = readFileSync(join(folder, text), 'utf8')
  if (/Permission is hereby granted, free of charge/.test(words)) return 'MIT'
  if (/Redistribution and use in source and binary forms/.test(words)) return 'BSD-3-Clause'
  return 'none stated'
}

/** What the lock file names and is installed, without what belongs to another kind of machine. */
export function licences(): readonly Stated[] {
  const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8')) as { packages: Record<string, Locked> }
  const found = new Map<string, Stated>()
  for (const [path, locked] of Object.entries(packages)) {
    if (path === '' || locked.optional || locked.devOptional) continue
    const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length)
    const version = locked.version ?? ''
    const runs = !locked.dev || found.get(`${name} ${version}`)?.runs === true
    found.set(`${name} ${version}`, { name, version, licence: licenceOf(path), runs })
  }
  return [...found.values()].sort((a, b) =>
    a.name < b.name ? -1 : a.name > b.name ? 1 : a.version < b.version ? -1 : 1,
  )
}

export function licencesPage(): string {
  const all = licences()
  const many = new Map<string, number>()
  for (const { licence } of all) many.set(licence, (many.get(licence) ?? 0) + 1)
  const sums = [...many]
    .sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1))
    .map(([licence, n]) => `| ${licence} | ${n} |`)
  const others = all.filter(({ licence }) => !isPermissive(licence))
  const rows = all.map(
    ({ name, version, licence, runs }) =>
      `| ${name} | ${version} | ${licence} | ${runs ? 'yes' : 'tests and build only'} |`,
  )
  return `# Licences

<!-- Made by \`npm run docs\` from the installed packages: install and make it anew. -->

Daybook itself is under the MIT licence. These are the packages of the lock file, with the licence each states in its own
package.json. Optional packages for one kind of machine (native builds of the same projects) are left out.

| Licence | Packages |
|---|---|
${sums.join('\n')}

## Not plainly permissive

${others.length === 0 ? 'None.' : others.map(({ name, version, licence }) => `- ${name} ${version}: ${licence}. ${WHY[name] ?? 'To be looked at.'}`).join('\n')}

## All of them

| Package | Version | Licence | Runs with Daybook |
|---|---|---|---|
${rows.join('\n')}
`
}

/** Looked at, and why it is all right. */
export const WHY: Readonly<Record<string, string>> = {
  'axe-core': 'Used unchanged and in tests only; the licence is about changed files of its own.',
  '@axe-core/playwright': 'Used unchanged and in tests only; the licence is about changed files of its own.',
  elkjs: 'Used unchanged; it comes with the database tool (prisma) and is never loaded by Daybook.',
  buffers:
    'States no licence. It comes with the spreadsheet library (exceljs) for a way of reading that Daybook does not use.',
}
