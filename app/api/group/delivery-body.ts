// The body of a delivery, with a limit: one phone's scores of a day are far below it.
import { readAtMost } from '@/lib/facts/read-body'

const MOST_BYTES = 128 * 1024

export async function bodyOf(request: Request): Promise<{ readonly json: unknown } | 'too-long' | 'not-json'> {
  const bytes = await readAtMost(request, MOST_BYTES)
  if (bytes === 'too-long') return 'too-long'
  try {
    return { json: JSON.parse(new TextDecoder().decode(bytes)) }
  } catch {
    return 'not-json'
  }
}
