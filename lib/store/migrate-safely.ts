// A migration changes the book for good, so a copy is taken first. If the copy fails, nothing is migrated.
import 'server-only'
import { bookFile } from './client'
import { copiesFolder, makeCopy } from './copies'
import { migrate, migrationsAhead } from './migrate'

export async function migrateSafely(
  now: Date,
  file = bookFile(),
): Promise<{ readonly applied: readonly string[]; readonly copy: string | null }> {
  const folder = copiesFolder(file)
  const copy = migrationsAhead(file).length > 0 ? await makeCopy('before-migration', now, file, folder) : null
  return { applied: migrate(file), copy: copy ? `${folder}/${copy.fileName}` : null }
}
