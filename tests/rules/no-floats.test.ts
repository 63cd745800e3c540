// No stroke is decided by a rounded float: only lib/rules/exact divides, and nothing in lib/rules rounds by itself.
import { readFileSync } from 'node:fs'
import { join, sep } from 'node:path'
import ts from 'typescript'
import { describe, expect, test } from 'vitest'
import { filesEnding, RULES } from './case-file'

const NAMES = new Set(['parseFloat', 'toFixed', 'toPrecision', 'EPSILON'])
const OF_MATH = new Set(['round', 'sqrt', 'cbrt', 'hypot', 'log', 'exp', 'fround', 'random'])

/** Where the text would let a float decide, as "line: what". */
function floatsIn(text: string): string[] {
  const file = ts.createSourceFile('rule.ts', text, ts.ScriptTarget.Latest, true)
  const found: string[] = []
  const note = (node: ts.Node, what: string) => {
    found.push(`${file.getLineAndCharacterOfPosition(node.getStart()).line + 1}: ${what}`)
  }
  const walk = (node: ts.Node): void => {
    if (ts.isBinaryExpression(node)) {
      const sign = node.operatorToken.kind
      if (sign === ts.SyntaxKind.SlashToken || sign === ts.SyntaxKind.SlashEqualsToken) note(node, 'division')
    }
    if (ts.isIdentifier(node) && NAMES.has(node.text)) note(node, node.text)
    if (ts.isStringLiteralLike(node) && NAMES.has(node.text) && ts.isElementAccessExpression(node.parent)) {
      note(node, node.text)
    }
    if (ts.isPropertyAccessExpression(node) && node.expression.getText() === 'Math' && OF_MATH.has(node.name.text)) {
      note(node, `Math.${node.name.text}`)
    }
    if (ts.isElementAccessExpression(node) && node.expression.getText() === 'Math') note(node, 'Math by name')
    if (ts.isNumericLiteral(node) && !Number.isInteger(Number(node.text))) note(node, `the figure ${node.text}`)
    ts.forEachChild(node, walk)
  }
  walk(file)
  return found
}

describe('rules without floats', () => {
  const files = filesEnding('.ts').filter((path) => path.split(sep)[0] !== 'exact')

  test('there is something to look at', () => {
    expect(files.length).toBeGreaterThan(10)
  })

  test.each(files)('%s', (path) => {
    expect(floatsIn(readFileSync(join(RULES, path), 'utf8'))).toEqual([])
  })
})

describe('the look-out itself', () => {
  test.each([
    ['const half = n / 2', '1: division'],
    ['n /= 2', '1: division'],
    ['Math.round(n)', '1: Math.round'],
    ["Math['round'](n)", '1: Math by name'],
    ['Number.parseFloat(text)', '1: parseFloat'],
    ['n.toFixed(1)', '1: toFixed'],
    ["n['toFixed'](1)", '1: toFixed'],
    ['const weight = 0.95', '1: the figure 0.95'],
  ])('sees %s', (text, what) => {
    expect(floatsIn(text)).toEqual([what])
  })

  test('leaves slashes in texts, patterns and remarks alone', () => {
    expect(floatsIn("// a / b\nconst line = 'a / b'\nconst shape = /a\\/b/\nconst all = `half / 2`")).toEqual([])
  })
})
