import { execFile } from 'node:child_process'
import { promisify } from 'node:util'

/**
 * The score command on a day's own file: what it prints. Never waited for with spawnSync: meanwhile the server may close an
 * idle line, which nobody would notice before the next request is sent on it.
 */
export async function scoreFile(file: string): Promise<string> {
  const run = await promisify(execFile)('npm', ['run', '--silent', 'score', '--', file], { maxBuffer: 50_000_000 })
  if (run.stderr !== '') throw new Error(run.stderr)
  return run.stdout
}
