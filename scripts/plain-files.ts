// Plain files in a folder or packed into one .zip, by the name they are given.
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import JSZip from 'jszip'
import { type PlainFiles, packed } from '../lib/society/export-society'

export async function writeFiles(files: PlainFiles, to: string): Promise<void> {
  if (to.endsWith('.zip')) {
    writeFileSync(to, await packed(files), { mode: 0o600 })
    return
  }
  if (existsSync(to) && readdirSync(to).length > 0) throw new Error(`${to} is not empty.`)
  for (const [name, text] of files) {
    mkdirSync(dirname(join(to, name)), { recursive: true, mode: 0o700 })
    writeFileSync(join(to, name), text, { mode: 0o600 })
  }
}

export async function readFiles(from: string): Promise<PlainFiles> {
  if (!existsSync(from)) throw new Error(`There is no ${from}.`)
  const files = new Map<string, string>()
  if (statSync(from).isDirectory()) {
    for (const path of readdirSync(from, { recursive: true, withFileTypes: true }))
      if (path.isFile()) {
        const full = join(path.parentPath, path.name)
        files.set(relative(from, full).replaceAll('\\', '/'), readFileSync(full, 'utf8'))
      }
    return files
  }
  const zip = await JSZip.loadAsync(readFileSync(from))
  for (const file of Object.values(zip.files)) if (!file.dir) files.set(file.name, await file.async('string'))
  return files
}
