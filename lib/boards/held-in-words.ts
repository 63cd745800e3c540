// What the book holds about somebody, in words: for that person's own page and for the file to take away.

import { dateIn } from '@/lib/facts/calendar'
import { labelsOf } from '@/lib/facts/labels'
import { fullName } from '@/lib/facts/person-name'
import { shortDateInWords } from './dates-in-words'
import { figureOf } from './figure'

export interface HeldPart {
  readonly title: string
  /** Why it is held. */
  readonly why: string
  readonly lines: readonly { readonly what: string; readonly value: string }[]
}

interface Held {
  readonly societyName: string
  readonly firstName: string
  readonly familyName: string
  readonly gender: string
  readonly kind: string
  readonly regular: boolean
  readonly email: string | null
  readonly phone: string | null
  readonly memberSince: number | null
  readonly membershipNumber: string | null
  readonly homeClub: string | null
  readonly leftOn: string | null
  readonly junior: boolean
  readonly shownAs: string
  readonly labels: string
  readonly createdAt: Date
  readonly duties: readonly { readonly duty: string; readonly from: Date; readonly until: Date | null }[]
  readonly records: readonly { readonly indexTenths: number; readonly from: string; readonly reason: string }[]
  readonly entries: readonly {
    readonly dayName: string
    readonly date: string
    readonly status: string
    readonly indexTenths: number | null
    readonly claimedTenths: number | null
    readonly hostName: string | null
    readonly cards: readonly {
      readonly facts: readonly { readonly hole: number; readonly strokes: number | null; readonly outcome: string }[]
      readonly rulings: readonly { readonly number: number; readonly reason: string }[]
    }[]
  }[]
  readonly guestsBrought: number
  readonly acts: readonly { readonly at: Date; readonly act: string; readonly actorName: string }[]
}

const SHOWN: Readonly<Record<string, string>> = {
  name: 'by name',
  initials: 'by initials',
  'former-member': 'as a former member',
}

export function heldInWords(held: Held, actInWords: (act: string) => string, zone: string): readonly HeldPart[] {
  const date = (at: Date) => shortDateInWords(dateIn(at, zone))
  const line = (what: string, value: string | number | null) => ({
    what,
    value: value === null ? 'not in the book' : String(value),
  })
  return [
    {
      title: 'Who you are',
      why: 'To enter you, to find your tees, and to write you on the sheets.',
      lines: [
        line('Name', fullName(held)),
        line('Kind', held.kind),
        line('Plays from the tees for', held.gender),
        line('Plays regularly', held.regular ? 'yes' : 'no'),
        line('Under 18', held.junior ? 'yes' : 'no'),
        line('Member since', held.memberSince),
        line('Membership number', held.membershipNumber),
        line('Home club', held.homeClub),
        line('Left on', held.leftOn && shortDateInWords(held.leftOn)),
        line('Sorted under', labelsOf(held.labels).join(', ') || null),
        line('Shown on public sheets', SHOWN[held.shownAs] ?? held.shownAs),
        line('In the book since', date(held.createdAt)),
      ],
    },
    {
      title: 'How to reach you',
      why: 'For the officers only. Never on a sheet, a board or any public page.',
      lines: [line('E-mail', held.email), line('Telephone', held.phone)],
    },
    {
      title: 'Duties',
      why: 'Who may change what is part of the history of the society.',
      lines: held.duties.map((one) =>
        line(one.duty.replace('-', ' '), `${date(one.from)} to ${one.until ? date(one.until) : 'now'}`),
      ),
    },
    {
      title: 'Handicaps',
      why: 'Every figure with its date and reason, so that a past day can be explained.',
      lines: held.records.map((one) => line(shortDateInWords(one.from), `${figureOf(one.indexTenths)}: ${one.reason}`)),
    },
    {
      title: 'Days and cards',
      why: 'The results of the society. A card is kept hole by hole as it was written, and stays with the day.',
      lines: held.entries.flatMap((entry) => [
        line(
          `${shortDateInWords(entry.date)}, ${entry.dayName}`,
          [
            entry.status,
            entry.hostName ? `guest of ${entry.hostName}` : '',
            entry.indexTenths === null && entry.claimedTenths === null
              ? ''
              : `off ${figureOf(entry.indexTenths ?? entry.claimedTenths)}`,
          ]
            .filter(Boolean)
            .join(', '),
        ),
        ...entry.cards.flatMap((card) => [
          line(
            'Written on the card, in order',
            card.facts
              .map((fact) => `${fact.hole}: ${fact.strokes ?? (fact.outcome === 'cleared' ? 'cleared' : 'no score')}`)
              .join(', ') || null,
          ),
          ...card.rulings.map((ruling) => line(`Ruling ${ruling.number}`, ruling.reason)),
        ]),
      ]),
    },
    {
      title: 'Guests',
      why: 'A guest plays with a host.',
      lines: [line('Guests you brought', held.guestsBrought)],
    },
    {
      title: 'What was done about you',
      why: 'The record of acts: officers can add to it, nobody can change it.',
      lines: held.acts.map((one) => line(date(one.at), `${one.actorName} ${actInWords(one.act)}`)),
    },
  ].filter((part) => part.lines.length > 0)
}
