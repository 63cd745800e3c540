import 'server-only'
import pino from 'pino'
import { settingsOfInstallation } from './settings'

// One line of JSON an event, on standard output, where the service manager keeps it. No line is given anything a person
// typed, no name, no address of anybody, no key: what may be said is what these types let through.

export interface RequestLine {
  readonly method: string
  /** The address with everything that is not a fixed word of ours taken out. */
  readonly address: string
  readonly status: number
  readonly ms: number
  /** The code of a refusal, or the answer's own word. */
  readonly outcome?: string
}

const kept = globalThis as { daybookLog?: pino.Logger }

function log(): pino.Logger {
  kept.daybookLog ??= pino({
    level: settingsOfInstallation().DAYBOOK_LOG,
    base: undefined,
    timestamp: pino.stdTimeFunctions.isoTime,
    formatters: { level: (label) => ({ level: label }) },
  })
  return kept.daybookLog
}

export function logRequest(line: RequestLine): void {
  if (line.status >= 500) log().error(line, 'request')
  else log().info(line, 'request')
}

export function logEvent(event: string, details: Readonly<Record<string, string | number>> = {}): void {
  log().info(details, event)
}

/** A bug. Its kind and where it was thrown; never its message, which may hold what somebody typed. */
export function logFault(where: string, cause: unknown): void {
  const kind = cause instanceof Error ? cause.name : typeof cause
  const code = cause instanceof Error && 'code' in cause ? String(cause.code) : undefined
  const at =
    cause instanceof Error
      ? (cause.stack ?? '')
          .split('\n')
          .filter((line) => /^\s+at /.test(line))
          .slice(0, 6)
          .map((line) => line.trim().replace(process.cwd(), ''))
      : []
  log().error({ kind, code, at }, where)
}
