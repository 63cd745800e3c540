import type { MemberRow } from '@/lib/boards/desk-views'

/** Every word that marks somebody of the book, once, for a division to name. */
export const wordsOf = (members: readonly Pick<MemberRow, 'labels'>[]): readonly string[] =>
  [...new Set(members.flatMap((one) => one.labels))].sort((one, other) => one.localeCompare(other, 'en-GB'))
