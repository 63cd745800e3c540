// Promise: nothing outside a transaction sees what is not committed, or is undone by somebody else's rollback; a busy
// book is tried again, and any other fault is not.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { SocietyId } from '@/lib/facts/ids'
import type { Book } from '@/lib/store/client'
import { reading } from '@/lib/store/client'
import { write } from '@/lib/store/write'
import { ownBook } from '../../setup/copy'
import { asId } from '../../setup/ids'

let book: Book
let close: () => Promise<void>

beforeAll(async () => {
  ;({ book, close } = await ownBook())
})
afterAll(() => close())

const society = (slug: string) => ({ id: asId<SocietyId>(slug), slug, name: slug, createdAt: new Date(0) })
const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms))

describe('one connection', () => {
  it('keeps a statement from outside out of an open transaction and its rollback', async () => {
    const undone = book.$transaction(async (tx) => {
      await tx.society.create({ data: society('undone') })
      await pause(150)
      throw new Error('rolled back')
    })
    await pause(40)
    const fromOutside = book.society.count()
    const written = book.society.create({ data: society('kept') })
    // The reader has a connection of its own: it does not wait, and sees only what is committed.
    expect(await reading().society.count()).toBe(0)
    await expect(undone).rejects.toThrow('rolled back')
    expect(await fromOutside).toBe(0)
    await written
    expect((await book.society.findMany({ select: { slug: true } })).map((one) => one.slug)).toEqual(['kept'])
  })

  it('lets many transactions wait for one another', async () => {
    const before = await book.society.count()
    await Promise.all(
      Array.from({ length: 12 }, (_, at) =>
        write(async (tx) => {
          const count = await tx.society.count()
          await pause(3)
          await tx.society.create({ data: { ...society(`turn-${at}`), foundedYear: 1900 + count } })
        }),
      ),
    )
    const years = (await book.society.findMany({ where: { slug: { startsWith: 'turn-' } } })).map(
      (one) => one.foundedYear!,
    )
    expect([...years].sort()).toEqual(Array.from({ length: 12 }, (_, at) => 1900 + before + at))
  })
})

describe('a busy book', () => {
  const failing = (faults: unknown[]) => {
    let tries = 0
    const on = {
      $transaction: async () => {
        tries++
        if (faults.length) throw faults.shift()
        return 'done'
      },
    } as unknown as Book
    return { on, tries: () => tries }
  }

  it('is tried again', async () => {
    const { on, tries } = failing([{ code: 'P1008' }, new Error('database is locked')])
    expect(await write(async () => 'never', on)).toBe('done')
    expect(tries()).toBe(3)
  })

  it('is not tried again for a fault of ours', async () => {
    const { on, tries } = failing([new Error('a bug')])
    await expect(write(async () => 'never', on)).rejects.toThrow('a bug')
    expect(tries()).toBe(1)
  })
})
