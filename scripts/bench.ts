// Prints the figures the project has promised itself, each with its target beside it. Every file in scripts/bench is one
// bench: it exports `measure`, which answers with figures, or with the reason why it was left out.
import { readdirSync } from 'node:fs'
import { cpus } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Bench } from './bench-figures'

async function main(): Promise<void> {
  const folder = join(import.meta.dirname, 'bench')
  const wanted = process.argv.slice(2)
  const files = readdirSync(folder).filter((name) => name.endsWith('.ts'))
  const named = files.filter((name) => wanted.length === 0 || wanted.includes(name.replace('.ts', ''))).sort()
  console.log(`Node ${process.version}, ${cpus().length} processors (${cpus()[0]?.model.trim() ?? 'unknown'})\n`)
  let missed = 0
  for (const name of named) {
    const bench = (await import(pathToFileURL(join(folder, name)).href)) as Bench
    const figures = await bench.measure()
    console.log(name.replace('.ts', ''))
    if ('leftOut' in figures) {
      console.log(`  left out: ${figures.leftOut}\n`)
      continue
    }
    for (const { what, measured, target, held } of figures) {
      if (held === false) missed += 1
      const mark = held === null ? ' ' : held ? '✓' : '✗'
      console.log(`  ${mark} ${what.padEnd(64)} ${measured.padStart(14)}   ${target}`)
    }
    console.log()
  }
  if (missed > 0) console.log(`${missed} of the figures did not hold on this machine in this run.`)
}

await main()
