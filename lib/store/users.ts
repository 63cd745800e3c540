import type { UserId } from '@/lib/facts/ids'
import 'server-only'
import { type Book, book, type Tx } from './client'

export async function emailOfUser(userId: UserId, on: Book | Tx = book()): Promise<string | null> {
  return (await on.user.findUnique({ where: { id: userId }, select: { email: true } }))?.email ?? null
}
