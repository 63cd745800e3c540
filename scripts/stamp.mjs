// A step is skipped when nothing it reads has changed since it last succeeded: its inputs' digest is kept beside its output.
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'

function walk(path, into) {
  if (!existsSync(path)) return
  if (statSync(path).isDirectory()) {
    for (const name of readdirSync(path).sort())
      if (name !== 'node_modules' && name !== 'generated') walk(join(path, name), into)
  } else into.push(path)
}

export function digestOf(paths) {
  const files = []
  for (const path of paths) walk(path, files)
  const hash = createHash('sha256').update(process.version)
  for (const file of files) hash.update(file).update(readFileSync(file))
  return hash.digest('hex')
}

export function isFresh(stampFile, digest) {
  return existsSync(stampFile) && readFileSync(stampFile, 'utf8') === digest
}

export function keep(stampFile, digest) {
  mkdirSync(dirname(stampFile), { recursive: true })
  writeFileSync(stampFile, digest)
}
