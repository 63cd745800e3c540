import type { SocietyId } from '@/lib/facts/ids'
import 'server-only'
import { type SocietySettings, settingsIn } from '@/lib/facts/society-settings'
import { type Book, reading, type Tx } from './client'

export interface SocietyKept {
  readonly societyId: SocietyId
  readonly slug: string
  readonly name: string
  readonly isDemo: boolean
  readonly settings: SocietySettings
}

const columns = { id: true, slug: true, name: true, isDemo: true, settings: true } as const

function kept(row: { id: SocietyId; slug: string; name: string; isDemo: boolean; settings: string }): SocietyKept {
  const { id, settings, ...rest } = row
  return { societyId: id, ...rest, settings: settingsIn(settings) }
}

export async function societyKept(societyId: SocietyId, on: Book | Tx = reading()): Promise<SocietyKept | null> {
  const row = await on.society.findUnique({ where: { id: societyId }, select: columns })
  return row && kept(row)
}

export async function societyBySlug(slug: string, on: Book | Tx = reading()): Promise<SocietyKept | null> {
  const row = await on.society.findUnique({ where: { slug }, select: columns })
  return row && kept(row)
}

export async function everySociety(on: Book | Tx = reading()): Promise<readonly SocietyKept[]> {
  return (await on.society.findMany({ select: columns, orderBy: { name: 'asc' } })).map(kept)
}

export async function societyName(societyId: SocietyId): Promise<string | null> {
  return (await societyKept(societyId))?.name ?? null
}

export async function keepSettings(tx: Tx, societyId: SocietyId, settings: SocietySettings): Promise<void> {
  await tx.society.update({ where: { id: societyId }, data: { settings: JSON.stringify(settings) } })
}
