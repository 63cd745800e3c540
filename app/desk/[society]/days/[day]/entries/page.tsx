import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import { DayFrame, dayRoom } from '@/app/desk/_frame/day-room'
import { DeskRefusal } from '@/app/desk/_frame/desk-frame'
import { count, figure } from '@/app/desk/_frame/words'
import { shortDateInWords } from '@/lib/boards/dates-in-words'
import { memberList } from '@/lib/society/keep-person'
import { addGuest, keepEntries } from './actions'
import { type EntryLine, EntryList } from './entry-list'
import { GuestForm } from './guest-form'

export default async function Entries({ params }: { params: Promise<{ society: string; day: string }> }) {
  const room = await dayRoom(params, 'entries')
  if ('refusal' in room) return room.refusal
  const { society, day, at, actor, desk } = room
  const people = await memberList(actor)
  if (!people.ok) return <DeskRefusal answer={people} back={at} />
  const { record, counts, places } = desk
  const where = { society, day }
  const seen = <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
  const entryOf = new Map(record.entries.map((entry) => [entry.personId, entry]))
  const lines: EntryLine[] = people.value
    .filter((person) => person.kind === 'member' || entryOf.has(person.personId))
    .map((person) => {
      const entry = entryOf.get(person.personId)
      return {
        personId: person.personId,
        entryId: entry?.id ?? null,
        firstName: person.firstName,
        familyName: person.familyName,
        gender: person.gender,
        regular: person.regular,
        guestOf: entry?.kind === 'guest' ? (entry.hostName ?? 'the society') : null,
        figure: figure(entry ? entry.indexTenths : person.indexTenths),
        status: entry?.status ?? null,
        roundTeeId: entry?.roundTeeId ?? null,
      }
    })
  const shut = record.status === 'closed'
  return (
    <DayFrame room={room} current="entries">
      <div className="desk-title">
        <div>
          <p className="sc second">
            Day {record.number} · {record.name}
          </p>
          <h1>Entries</h1>
          <p className="lead">
            {count(counts.entered, 'player')} in{places === null ? '' : ` of ${places} places`}
            {counts.waiting > 0 ? `, ${counts.waiting} waiting` : ''}.
            {record.entriesCloseOn ? ` Entries close ${shortDateInWords(record.entriesCloseOn)}.` : ''}
          </p>
        </div>
      </div>
      <EntryList
        action={keepEntries.bind(null, where)}
        lines={lines}
        tees={record.tees.map(({ id, name, gender, isDefault }) => ({ id, name, gender, isDefault }))}
        shut={shut ? 'The day is closed: the entry list stands.' : null}
      >
        {seen}
      </EntryList>
      {shut ? null : (
        <section aria-labelledby="guest-h" className="guest">
          <h2 id="guest-h">Add a guest</h2>
          <GuestForm
            action={addGuest.bind(null, where)}
            hosts={people.value
              .filter((person) => person.kind === 'member')
              .map((person) => ({ value: person.personId, label: `${person.familyName}, ${person.firstName}` }))}
          >
            {seen}
          </GuestForm>
        </section>
      )}
    </DayFrame>
  )
}
