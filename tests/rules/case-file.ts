// What a file of cases must look like, and the judge that holds a case against the engine. Strict on purpose: a key
// nobody reads, an expectation nobody compares or a case without a source is a fault, not a shrug.
import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { isDeepStrictEqual } from 'node:util'
import { z } from 'zod'

const source = z.strictObject({
  title: z.string().min(3),
  publisher: z.string().min(2),
  edition: z.string().min(2),
  section: z.string().min(2),
  url: z.url().optional(),
})

const ruleCase = z.strictObject({
  id: z.string().min(2),
  rule: z.string().min(2),
  title: z.string().min(5),
  given: z.record(z.string(), z.unknown()),
  expect: z.record(z.string(), z.unknown()).refine((keys) => Object.keys(keys).length > 0, 'expects nothing'),
  source,
  /** Were the numbers published, or made by us from the published rule? */
  origin: z.enum(['published', 'ours']),
  status: z.enum(['read in source', 'secondary copy', 'from memory']),
  note: z.string().optional(),
})
export type RuleCase = z.infer<typeof ruleCase>

export const caseFile = z.strictObject({
  /** The rule files these cases stand beside, without their folder. */
  about: z.array(z.string().endsWith('.ts')).min(1),
  cases: z.array(ruleCase).min(1),
})

export const notApplicableFile = z.strictObject({
  notApplicable: z.array(
    z.strictObject({
      id: z.string().min(2),
      title: z.string().min(5),
      because: z.enum(['not built yet', 'not ours to compute', 'decided by the committee']),
      reason: z.string().min(10),
      source,
    }),
  ),
})

export const RULES = join(import.meta.dirname, '../../lib/rules')
export const NOT_APPLICABLE = 'not-applicable.cases.json'

/** Every file below lib/rules with that ending, as a path from there. */
export function filesEnding(ending: string, root = RULES): string[] {
  return readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(ending))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)))
    .sort()
}

export function readJson(path: string): unknown {
  return JSON.parse(readFileSync(join(RULES, path), 'utf8'))
}

/** How the cases of one rule are put to the engine: what may be given, and everything that can be read off. */
export interface Reading {
  readonly given: z.ZodType
  readonly answer: (given: never) => Readonly<Record<string, unknown>>
}

export function reading<G extends z.ZodType>(
  given: G,
  answer: (given: z.infer<G>) => Readonly<Record<string, unknown>>,
): Reading {
  return { given, answer: answer as Reading['answer'] }
}

/** Everything wrong with a case; nothing when the engine agrees with every figure of it. */
export function judge(one: RuleCase, readings: Readonly<Record<string, Reading>>): string[] {
  const how = Object.hasOwn(readings, one.rule) ? readings[one.rule] : undefined
  if (!how) return [`no reading for the rule ${one.rule}`]
  const given = how.given.safeParse(one.given)
  if (!given.success) return given.error.issues.map((issue) => `given ${issue.path.join('.')}: ${issue.message}`)
  const answer = how.answer(given.data as never)
  return Object.entries(one.expect).flatMap(([key, wanted]) => {
    if (!Object.hasOwn(answer, key)) return [`${key} is expected but nothing compares it`]
    // A minus nought would be printed as "-0" one day.
    if (Object.is(answer[key], -0)) return [`${key} is -0`]
    if (isDeepStrictEqual(answer[key], wanted)) return []
    return [`${key}: expected ${JSON.stringify(wanted)}, the engine says ${JSON.stringify(answer[key])}`]
  })
}
