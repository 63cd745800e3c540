// What a server does beside answering: it holds the book, takes the scheduled copies, writes the log, and stops in order.
import 'server-only'
import { bookFile } from '@/lib/store/client'
import { holdBook } from '@/lib/store/held'
import { logEvent, logFault } from '@/lib/store/log'
import { notReady, nowStopping } from '@/lib/store/ready'
import { settingsOfInstallation } from '@/lib/store/settings'
import { settleBook } from '@/lib/store/stop'
import { scheduledCopy } from './keep-copies'
import { carryOutRetention } from './keep-privacy'
import { hangUpAfterAnswers, logRequests } from './request-log'

const FIRST_LOOK = 60_000
const NEXT_LOOK = 15 * 60_000

const kept = globalThis as { daybookServing?: boolean }

export function beginServing(): void {
  if (kept.daybookServing) return
  kept.daybookServing = true
  settingsOfInstallation()
  holdBook(bookFile())
  logRequests()
  setTimeout(lookForCopy, FIRST_LOOK).unref()
  setTimeout(lookForRetention, FIRST_LOOK / 2).unref()
  for (const signal of ['SIGTERM', 'SIGINT'] as const)
    process.once(signal, () => {
      nowStopping()
      hangUpAfterAnswers()
      logEvent('stopping')
    })
  // The server has answered everything by then: Next ends the process only after the last answer.
  process.once('exit', () => {
    try {
      settleBook()
    } catch (cause) {
      logFault('settling the book at the end', cause)
    }
  })
  logEvent('serving')
}

async function lookForCopy(): Promise<void> {
  try {
    const done = await scheduledCopy()
    if (done === 'made') logEvent('copy made')
  } catch (cause) {
    logFault('the scheduled copy', cause)
  }
  setTimeout(lookForCopy, NEXT_LOOK).unref()
}

const A_DAY = 86_400_000

async function lookForRetention(): Promise<void> {
  try {
    const { takenOut } = await carryOutRetention()
    if (takenOut > 0) logEvent('retention carried out')
  } catch (cause) {
    logFault('carrying out the retention', cause)
  }
  setTimeout(lookForRetention, A_DAY).unref()
}

/** For whoever watches the server: can it do its work? */
export const whatKeepsFromWork = (): Promise<readonly string[]> => notReady()

export const tellFault = (where: string, cause: unknown): void => logFault(where, cause)
