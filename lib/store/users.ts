import 'server-only'
import { type Book, book, type Tx } from './client'

export async function emailOfUser(userId: string, on: Book | Tx = book()): Promise<string | null> {
  return (await on.user.findUnique({ where: { id: userId }, select: { email: true } }))?.email ?? null
}
