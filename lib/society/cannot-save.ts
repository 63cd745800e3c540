// What somebody is told whose scores or changes cannot be saved, because of the place the book is kept in.
import { type Refused, type Result, refused } from '@/lib/result'
import { isCannotSave } from '@/lib/store/cannot-save'
import { logFault } from '@/lib/store/log'

/** For a phone: null for any other fault, which is a bug and is thrown on. */
export function scoresNotSaved(cause: unknown): Refused<'cannot-save'> | null {
  if (!isCannotSave(cause)) return null
  logFault('saving scores', cause)
  return refused(
    'cannot-save',
    'The server cannot save at the moment: its disk may be full. Your scores are on this phone and are sent again by themselves. Tell the secretary.',
  )
}

/** For a form: a change that cannot be saved is refused, so that what was typed stays; any other fault is thrown on. */
export async function orNotSaved<T, Code extends string>(
  work: () => Promise<Result<T, Code>>,
): Promise<Result<T, Code | 'cannot-save'>> {
  try {
    return await work()
  } catch (cause) {
    if (!isCannotSave(cause)) throw cause
    logFault('saving a form', cause)
    return refused(
      'cannot-save',
      'The server cannot save at the moment: its disk may be full. Tell whoever runs it, then press again.',
    )
  }
}
