// Promise: a new society is told what to do next, in order, each step ticking itself, until all is done; a lost password is
// replaced behind a one-time link, by another officer of the same society or by a command on the server, and nobody else.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Actor } from '@/lib/facts/actor'
import { dayPlace } from '@/lib/society/day-place'
import { firstSteps } from '@/lib/society/first-steps'
import { foundSociety } from '@/lib/society/found-society'
import { giveDuty } from '@/lib/society/give-duty'
import { keepPerson } from '@/lib/society/keep-person'
import { newOneTimeLink } from '@/lib/society/officer-list'
import { passwordLink } from '@/lib/society/reset-password'
import { behindLink, setFirstPassword } from '@/lib/society/set-first-password'
import type { Book } from '@/lib/store/client'
import { ownBook } from '../../setup/copy'
import { aDay, got, world } from './world'

type Officer = Extract<Actor, { kind: 'officer' }>

let close: () => Promise<void>
let book: Book
let dorcas: Officer

const officer = { name: 'Dorcas Ellerthwaite', email: 'dorcas@example.org', password: 'a long enough password' }

beforeAll(async () => {
  const own = await ownBook()
  close = own.close
  book = own.book
  const { societyId, userId } = got(await foundSociety({ name: 'Old Mill', slug: 'old-mill', officer }))
  dorcas = { kind: 'officer', societyId, userId, name: officer.name, duties: ['secretary'] }
})
afterAll(() => close())

const done = async (actor: Actor) =>
  got(await firstSteps(actor))
    ?.steps.filter((step) => step.isDone)
    .map((step) => step.what)

describe('the first steps', () => {
  it('begin with nothing done, and offer to add the founder', async () => {
    expect(await done(dorcas)).toEqual([])
    expect(got(await firstSteps(dorcas))?.addMe).toEqual({ firstName: 'Dorcas', familyName: 'Ellerthwaite' })
  })

  it('do not take the founder alone for the members, nor offer it twice', async () => {
    const me = { firstName: 'Dorcas', familyName: 'Ellerthwaite', gender: 'women', kind: 'member' } as const
    got(await keepPerson(dorcas, { ...me, handicapSource: 'society', indexTenths: null }))
    expect(await done(dorcas)).toEqual([])
    expect(got(await firstSteps(dorcas))?.addMe).toBeNull()
  })

  it('are gone once there is a season, members, a course, a day and a second officer', async () => {
    const w = await world('full')
    expect(await done(w.actor)).toEqual(['season', 'members', 'course'])
    await aDay(w)
    const second = { name: 'Piers Ravenhall', email: 'piers-full@example.org', duty: 'captain' as const }
    got(await giveDuty(w.actor, second))
    // Nobody who cannot sign in yet counts as a second officer.
    expect(await done(w.actor)).toEqual(['season', 'members', 'course', 'day'])
    const { path } = got(await passwordLink('piers-full@example.org'))
    got(await setFirstPassword(path.split('/').at(-1)!, 'a password of his own'))
    expect(got(await firstSteps(w.actor))).toBeNull()
  })

  it('are followed by days that know their neighbours', async () => {
    const w = await world('days')
    const first = await aDay(w)
    const second = await aDay(w, { name: 'Summer Cup', date: '2031-07-12' })
    expect(got(await dayPlace(w.actor, first.slug))).toMatchObject({
      number: 1,
      of: 2,
      before: null,
      after: { number: 2 },
    })
    expect(got(await dayPlace(w.actor, second.slug))).toMatchObject({ before: { slug: first.slug }, after: null })
    expect(await dayPlace(dorcas, first.slug)).toMatchObject({ code: 'not-found' })
  })
})

describe('a lost password', () => {
  it('is replaced behind a link that another officer of the society makes; sessions of before end', async () => {
    const email = 'una@example.org'
    const given = got(await giveDuty(dorcas, { name: 'Una Tarrablane', email, duty: 'captain' }))
    got(await setFirstPassword(given.token!, 'a password of her own'))
    const una: Officer = { ...dorcas, userId: given.userId, name: 'Una Tarrablane', duties: ['captain'] }
    const at = new Date()
    await book.session.create({
      data: {
        id: 's',
        token: 't',
        userId: dorcas.userId,
        expiresAt: new Date(at.getTime() + 9e6),
        createdAt: at,
        updatedAt: at,
      },
    })
    const { token } = got(await newOneTimeLink(una, { userId: dorcas.userId }))
    expect(got(await behindLink(token))).toMatchObject({ name: 'Dorcas Ellerthwaite' })
    expect(got(await setFirstPassword(token, 'another one of her own'))).toEqual({ email: officer.email })
    expect(await book.session.count({ where: { userId: dorcas.userId } })).toBe(0)
    expect(await behindLink(token)).toMatchObject({ code: 'link-ended' })
  })

  it('is not replaced for oneself, nor where the link would open another society’s desk', async () => {
    expect(await newOneTimeLink(dorcas, { userId: dorcas.userId })).toMatchObject({ code: 'own-link' })
    const w = await world('other')
    expect(await newOneTimeLink(dorcas, { userId: w.actor.userId })).toMatchObject({ code: 'not-found' })
    got(await giveDuty(dorcas, { name: 'Petra', email: 'secretary-other@example.org', duty: 'committee' }))
    expect(await newOneTimeLink(dorcas, { userId: w.actor.userId })).toMatchObject({ code: 'desk-elsewhere' })
  })

  it('is replaced by a command on the server, which the record tells', async () => {
    expect(await passwordLink('nobody@example.org')).toMatchObject({ code: 'no-such-officer' })
    const { path } = got(await passwordLink(' Dorcas@Example.org '))
    expect((await behindLink(path.split('/').at(-1)!)).ok).toBe(true)
    const act = await book.actRecord.findFirstOrThrow({ orderBy: { id: 'desc' } })
    expect(act).toMatchObject({ societyId: dorcas.societyId, actorKind: 'server', subject: 'Dorcas Ellerthwaite' })
  })
})
