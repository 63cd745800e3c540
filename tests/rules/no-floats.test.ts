// No stroke is decided by a rounded float: only lib/rules/exact divides, there only in two functions whose quotients are
// whole, and nothing in lib/rules rounds by itself. A name that could hide a division is not allowed either.
import { readFileSync } from 'node:fs'
import { join, sep } from 'node:path'
import ts from 'typescript'
import { describe, expect, test } from 'vitest'
import { filesEnding, RULES } from './case-file'

const NAMES = new Set([
  'parseFloat',
  'parseInt',
  'toFixed',
  'toPrecision',
  'toExponential',
  'EPSILON',
  'eval',
  'Function',
])
/** What whole numbers stay whole under. Whatever else Math or Number can do is not needed to count strokes. */
const OF_MATH = new Set(['max', 'min', 'abs', 'sign', 'imul'])
const OF_NUMBER = new Set(['isInteger', 'isSafeInteger', 'MAX_SAFE_INTEGER', 'POSITIVE_INFINITY', 'NEGATIVE_INFINITY'])
const ALLOWED: Readonly<Record<string, ReadonlySet<string>>> = { Math: OF_MATH, Number: OF_NUMBER }
const SIGNS: ReadonlyMap<ts.SyntaxKind, string> = new Map([
  [ts.SyntaxKind.SlashToken, 'division'],
  [ts.SyntaxKind.SlashEqualsToken, 'division'],
  [ts.SyntaxKind.AsteriskAsteriskToken, 'a power'],
  [ts.SyntaxKind.AsteriskAsteriskEqualsToken, 'a power'],
])

interface Found {
  readonly line: number
  readonly what: string
  /** The function it stands in. */
  readonly within: string
}

function lookIn(text: string): Found[] {
  const file = ts.createSourceFile('rule.ts', text, ts.ScriptTarget.Latest, true)
  const found: Found[] = []
  const walk = (node: ts.Node, within: string): void => {
    const note = (what: string) =>
      found.push({ line: file.getLineAndCharacterOfPosition(node.getStart()).line + 1, what, within })
    const here = ts.isFunctionDeclaration(node) ? (node.name?.text ?? within) : within
    if (ts.isBinaryExpression(node)) {
      const what = SIGNS.get(node.operatorToken.kind)
      if (what !== undefined) note(what)
    }
    if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.PlusToken) note('a text made a number')
    if (ts.isIdentifier(node) && NAMES.has(node.text)) note(node.text)
    if (ts.isStringLiteralLike(node) && NAMES.has(node.text) && ts.isElementAccessExpression(node.parent)) {
      note(node.text)
    }
    if (ts.isIdentifier(node)) noteGlobal(node, note)
    // A string with that name fetches it from globalThis.
    if (ts.isStringLiteralLike(node) && ALLOWED[node.text] !== undefined) note(`${node.text} by name`)
    if (ts.isNumericLiteral(node) && !Number.isInteger(Number(node.text))) note(`the figure ${node.text}`)
    ts.forEachChild(node, (child) => walk(child, here))
  }
  walk(file, '')
  return found
}

/** Math and Number only as the owner of one of the harmless names: not taken apart, not handed on, not called. */
function noteGlobal(node: ts.Identifier, note: (what: string) => void): void {
  const allowed = Object.hasOwn(ALLOWED, node.text) ? ALLOWED[node.text] : undefined
  if (allowed === undefined) return
  const { parent } = node
  const isOwner = ts.isPropertyAccessExpression(parent) && parent.expression === node
  if (!isOwner) note(`${node.text} itself`)
  else if (!allowed.has(parent.name.text)) note(`${node.text}.${parent.name.text}`)
}

const floatsIn = (text: string) => lookIn(text).map(({ line, what }) => `${line}: ${what}`)

describe('rules without floats', () => {
  const files = filesEnding('.ts').filter((path) => path.split(sep)[0] !== 'exact')

  test('there is something to look at', () => {
    expect(files.length).toBeGreaterThan(10)
  })

  test.each(files)('%s', (path) => {
    expect(floatsIn(readFileSync(join(RULES, path), 'utf8'))).toEqual([])
  })
})

/** What is published for ever is made here: a place, a prize, an average. */
const RESULT_MAKING = [
  'board.ts',
  'divisions.ts',
  'prize-giving.ts',
  'prize-rule.ts',
  'prizes.ts',
  'result-sheet.ts',
  'rounds-of-record.ts',
  'row-extras.ts',
  'sides-of-record.ts',
  'day-of-record.ts',
  'current-card.ts',
]

describe('results without floats', () => {
  test.each(RESULT_MAKING)('lib/boards/%s', (path) => {
    const found = lookIn(readFileSync(join(RULES, '..', 'boards', path), 'utf8'))
    // The average of a hole is rounded as a fraction and written as a decimal: only that text becomes a number.
    const allowed = path === 'result-sheet.ts' ? ['Number itself in averageOf'] : []
    expect(found.map(({ what, within }) => `${what} in ${within}`)).toEqual(allowed)
  })
})

describe('the arithmetic itself', () => {
  test('divides where nothing is left over, and nowhere else', () => {
    const found = filesEnding('.ts')
      .filter((path) => path.split(sep)[0] === 'exact')
      .flatMap((path) => lookIn(readFileSync(join(RULES, path), 'utf8')))
    expect([...new Set(found.map(({ what, within }) => `${what} in ${within}`))].sort()).toEqual([
      'Number itself in wholeIn',
      'a power in asHandicap',
      'a power in decimal',
      'division in floorDiv',
      'division in reduced',
    ])
  })
})

describe('the look-out itself', () => {
  test.each([
    ['const half = n / 2', '1: division'],
    ['n /= 2', '1: division'],
    ['const half = n * 2 ** -1', '1: a power'],
    ['n **= -1', '1: a power'],
    ['Math.round(n)', '1: Math.round'],
    ['Math.floor(n)', '1: Math.floor'],
    ['Math.trunc(n)', '1: Math.trunc'],
    ['Math.pow(n, k)', '1: Math.pow'],
    ["Math['round'](n)", '1: Math itself'],
    ['const { round } = Math', '1: Math itself'],
    ['const m = Math', '1: Math itself'],
    ["globalThis['Math'].max(1, 2)", '1: Math by name'],
    ['Number(text)', '1: Number itself'],
    ['texts.map(Number)', '1: Number itself'],
    ['Number.parseFloat(text)', '1: Number.parseFloat'],
    ['+text', '1: a text made a number'],
    ['n.toFixed(1)', '1: toFixed'],
    ["n['toFixed'](1)", '1: toFixed'],
    ['const weight = 0.95', '1: the figure 0.95'],
    ['const weight = 95e-2', '1: the figure 0.95'],
  ])('sees %s', (text, what) => {
    expect(floatsIn(text)).toContain(what)
  })

  test('leaves slashes in texts, patterns and remarks alone, and what keeps whole numbers whole', () => {
    expect(floatsIn("// a / b\nconst line = 'a / b'\nconst shape = /a\\/b/\nconst all = `half / 2`")).toEqual([])
    expect(floatsIn('Math.max(1, 2) + Number.MAX_SAFE_INTEGER - 3 * 4')).toEqual([])
  })
})
