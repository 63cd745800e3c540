// Reads every import of app, lib and seed, types included, and says which part each file belongs to.

import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import ts from 'typescript'

export const ROOT = process.cwd()

export function sources(folder: string): string[] {
  const found: string[] = []
  for (const name of readdirSync(join(ROOT, folder))) {
    const path = join(folder, name)
    if (statSync(join(ROOT, path)).isDirectory()) {
      if (name !== 'generated' && name !== 'node_modules') found.push(...sources(path))
    } else if (/\.(ts|tsx|mts)$/.test(name) && !name.endsWith('.d.ts')) found.push(path)
  }
  return found
}

export interface Import {
  readonly from: string
  /** Path inside the project, or the name of a package. */
  readonly to: string
  readonly outside: boolean
}

const ENDINGS = ['', '.ts', '.tsx', '.mts', '.json', '.css', '/index.ts', '/index.tsx']

export function importsOf(file: string): Import[] {
  const info = ts.preProcessFile(readFileSync(join(ROOT, file), 'utf8'), true, true)
  return info.importedFiles.map(({ fileName }) => {
    const base = fileName.startsWith('@/')
      ? join(ROOT, fileName.slice(2))
      : fileName.startsWith('.')
        ? resolve(ROOT, dirname(file), fileName)
        : null
    if (base === null) return { from: file, to: fileName, outside: true }
    const hit = ENDINGS.map((ending) => base + ending).find((path) => existsSync(path) && statSync(path).isFile())
    return { from: file, to: relative(ROOT, hit ?? base), outside: false }
  })
}

/** What a file says at its top: 'use client', 'use server' or nothing. */
export function directive(file: string): 'client' | 'server' | null {
  const first = /^\s*(?:\/\/[^\n]*\n|\/\*[\s\S]*?\*\/|\s)*['"]use (client|server)['"]/.exec(
    readFileSync(join(ROOT, file), 'utf8'),
  )
  return (first?.[1] as 'client' | 'server' | undefined) ?? null
}

export type Part = 'result' | 'rules' | 'facts' | 'boards' | 'store' | 'society' | 'outbox' | 'app' | 'seed' | 'other'

export function partOf(path: string): Part {
  if (path === join('lib', 'result.ts')) return 'result'
  const [top, second] = path.split('/')
  if (top === 'lib' && ['rules', 'facts', 'boards', 'store', 'society', 'outbox'].includes(second ?? ''))
    return second as Part
  if (top === 'app' || top === 'seed') return top
  return 'other'
}
