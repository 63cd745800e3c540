// The register as a page of the docs: every rule with its clause, edition, departures and the number of its cases.
import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { EDITIONS, editionOf } from '../lib/rules/editions/editions'
import { allowanceFor, FORMATS, inWords } from '../lib/rules/formats/catalogue'
import { REGISTER, type RegisteredRule } from '../lib/rules/register'

interface CaseFile {
  readonly cases: readonly { readonly origin: 'published' | 'ours' }[]
}

/** Published and own cases that stand beside a rule's file, under the name of the file or of the rule. */
function casesOf(rule: RegisteredRule): { published: number; ours: number } {
  const names = [rule.file.replace(/\.ts$/, '.cases.json'), join(dirname(rule.file), `${rule.id}.cases.json`)]
  const beside = names.map((name) => join(process.cwd(), name)).find((path) => existsSync(path))
  if (!beside) throw new Error(`${rule.name} has no cases beside ${rule.file}.`)
  const { cases } = JSON.parse(readFileSync(beside, 'utf8')) as CaseFile
  const published = cases.filter((one) => one.origin === 'published').length
  return { published, ours: cases.length - published }
}

const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('\n', ' ')

export function registerPage(): string {
  const rules = REGISTER.map((rule) => {
    const { published, ours } = casesOf(rule)
    const departures = rule.departures.length === 0 ? 'none' : rule.departures.join(' ')
    return `| [${cell(rule.name)}](../${rule.file}) | ${cell(rule.clause)} | ${cell(rule.edition)} | ${rule.status} | ${published} | ${ours} | ${cell(departures)} |`
  })
  const editions = EDITIONS.map((edition) => edition.id)
  const formats = FORMATS.map((format) => {
    const proposed = allowanceFor(format, 0, editionOf('2024'))
    const from = proposed.from === 'published' ? proposed.clause : 'house choice'
    return `| \`${format.id}\` | ${cell(format.name)} | ${inWords(proposed.allowance)} (${from}) | ${cell(format.sentence)} |`
  })
  return [
    '# The register',
    '',
    'Every rule the engine knows. Made by `npm run docs` from `lib/rules/register.ts`; a test fails when this page is behind it.',
    'The same list stands in the application under "How we count".',
    '',
    `Editions kept as data: ${editions.map((id) => `\`${id}\``).join(', ')}.`,
    '',
    '| Rule | Clause | Edition | State | Published cases | Own cases | Departures and choices |',
    '|---|---|---|---|---|---|---|',
    ...rules,
    '',
    '## Formats, with the allowance of the 2024 edition',
    '',
    '| Id | Name | Allowance | What it is |',
    '|---|---|---|---|',
    ...formats,
    '',
  ].join('\n')
}
