// docs/export.md from the list of kinds and the columns of the book itself.
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { EXPORT_KINDS, NOT_EXPORTED } from '../lib/facts/export-kinds'
import { migrate } from '../lib/store/migrate'
import { exportColumns } from '../lib/store/society-rows'

const FORMS = { text: 'text', whole: 'whole number', 'yes-no': 'yes or no', moment: 'moment' } as const

export function exportPage(): string {
  const folder = mkdtempSync(join(tmpdir(), 'daybook-'))
  try {
    const file = join(folder, 'book.db')
    migrate(file)
    return `${PREFACE}\n${EXPORT_KINDS.map((kind) => section(kind, file)).join('\n')}\n${notExported()}`
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

function section(kind: (typeof EXPORT_KINDS)[number], file: string): string {
  const columns = exportColumns(kind, file).map((column) => {
    const form = kind.json?.[column.name] ? 'JSON' : FORMS[column.kind]
    const names = column.names ? `, an id of \`${column.names}.csv\`` : ''
    return `\`${column.name}\` ${form}${names}${column.needed ? '' : ', may be empty'}`
  })
  const renewed = kind.renewed
    ? ` Made anew when read in: ${kind.renewed.map((name) => `\`${name}\``).join(', ')}.`
    : ''
  const order = kind.counted ? ' The order of the rows is the order in which they were received.' : ''
  return `### \`${kind.name}.csv\`\n\n${sentence(kind.holds)}.${renewed}${order}\n\n${columns.join(' · ')}\n`
}

const sentence = (words: string) => words.charAt(0).toUpperCase() + words.slice(1)

function notExported(): string {
  const rows = Object.entries(NOT_EXPORTED).map(([table, why]) => `| ${table} | ${why} |`)
  return `## What is not in it\n\n| Table | Why |\n|---|---|\n${rows.join('\n')}\n`
}

const PREFACE = `# A society's book as plain files

<!-- Made by \`npm run docs\` from lib/facts/export-kinds.ts: change it there. -->

The whole book of one society, to keep, to look at in a spreadsheet, or to move to another installation:

\`\`\`
npm run --silent export -- fernbrake fernbrake.zip      # or a folder; the desk has the same as a download
npm run --silent import -- fernbrake.zip                # into an installation that does not have the society yet
\`\`\`

What is exported and read in again is the same book: a second export has the same bytes. Reading in does everything or
nothing; what is wrong is told by file, row and column (the first row holds the names of the columns). Each officer
sets a new password behind a one-time link, printed once; links of members and links and codes of groups are new. A file that was opened and saved
in a spreadsheet may have lost leading zeros or the form of its moments: keep the untouched file too.

## How the files are written

- One file a kind of row, UTF-8 with a byte order mark, commas, lines end with CR LF, quotation as in RFC 4180.
- An empty cell is "not set". A text that begins with \`=\`, \`+\`, \`-\`, \`@\`, a tab, a line break or an apostrophe has an
  apostrophe before it, so that no spreadsheet takes it for a formula; a lone apostrophe is a text of no signs. Reading in
  takes exactly one apostrophe off.
- Moments are UTC, \`2026-06-13T09:30:00.000Z\`; days and clock times of the society are text. Money is in pence,
  handicap indexes and course ratings are in tenths (plus handicaps negative).
- \`export.json\` says what it is and how many rows each file has. \`days/\` holds a day file for each day (see
  lib/facts/day-file.md): for people and for the score command; reading in does not need them.

## The files
`
