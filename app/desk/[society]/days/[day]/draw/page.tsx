import { Empty } from '@/app/_parts/empty'
import Link from '@/app/_parts/link'
import { Notice } from '@/app/_parts/notice'
import { ActForm } from '@/app/desk/_form/act-form'
import { Send } from '@/app/desk/_form/field'
import { SeenDay } from '@/app/desk/_form/seen-day'
import { UnsavedSentence } from '@/app/desk/_form/unsaved-bar'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import { DayFrame, dayRoom } from '@/app/desk/_frame/day-room'
import { momentOf } from '@/app/desk/_frame/moments'
import { count } from '@/app/desk/_frame/words'
import { formatIn } from '@/lib/boards/format-of-competition'
import { goInPairs, groupNeeds, proposedGroupSize, whatTheNumberGives } from '@/lib/boards/groups-that-fit'
import { leftOut } from '@/lib/boards/left-out'
import { sideFigures, sideHandicapsOf } from '@/lib/boards/side-handicaps'
import { teamMatesPaired } from '@/lib/boards/team-mates'
import { fullName } from '@/lib/facts/person-name'
import { handicapTable } from '@/lib/society/freeze-handicaps'
import { publishTheStart } from '../actions'
import { keepPairings } from '../matches/actions'
import { TeamMates } from '../matches/team-mates'
import { drawGroups, keepGroups, keepSides, renewLink } from './actions'
import { Arrange } from './arrange'
import { DrawForm } from './draw-form'
import { figureOf } from './drawn-player'
import { Links } from './links'
import { SideFigures } from './side-figures'
import { SidesForm } from './sides-form'

/** The groups on the screen go along with this form, whose fields stand elsewhere on the page. */
const PUBLISH = 'publish-start'

export default async function Draw({ params }: { params: Promise<{ society: string; day: string }> }) {
  const room = await dayRoom(params, 'draw')
  if ('refusal' in room) return room.refusal
  const { society, day, at, actor, desk } = room
  const { record, groupKeys, draw, counts } = desk
  const handicaps = await handicapTable(actor, record.id)
  const playing = new Map(
    handicaps.ok ? handicaps.value.rows.map((row) => [row.entryId, row.playing[0]?.playingHandicap]) : [],
  )
  const main = record.competitions[0]?.id
  const mainSides = main && sideFigures(record).get(main)
  const teeName = new Map(record.tees.map((tee) => [tee.id, tee.name.toLowerCase()]))
  const usual = new Set(record.tees.filter((tee) => tee.isDefault && tee.gender === 'men').map((tee) => tee.id))
  const players = record.entries
    .filter((entry) => entry.status === 'entered')
    .map((entry) => {
      const notes = [
        entry.kind === 'guest' ? 'guest' : null,
        usual.has(entry.roundTeeId) ? null : teeName.get(entry.roundTeeId),
      ]
      return {
        entryId: entry.id,
        name: fullName(entry),
        figure: figureOf(playing.get(entry.id), mainSides?.get(entry.id)),
        note: notes.filter(Boolean).join(', ') || null,
      }
    })
  const where = { society, day }
  const seen = <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
  const shut = record.status === 'closed'
  const drawn = record.groups.length > 0
  const teams = record.competitions.flatMap((competition) => {
    const size = formatIn(competition)?.sideSize ?? 1
    // Larger sides stand in several groups: they have their list in the room for sides and matches.
    return size > 1 && size <= 4 ? [{ ...competition, size }] : []
  })
  const left = leftOut(record)
  const ofSides = sideHandicapsOf(record)
  const mates = teamMatesPaired(record)
  const needs = groupNeeds(record.competitions)
  const given = ([4, 3, 2] as const).map((groupSize) => {
    const asked = { players: counts.entered, groupSize }
    const even = whatTheNumberGives(needs, { ...asked, inPairs: false })
    return { groupSize, even, paired: goInPairs(needs) ? whatTheNumberGives(needs, { ...asked, inPairs: true }) : even }
  })
  return (
    <DayFrame room={room} current="draw">
      <div className="desk-title">
        <div>
          <p className="sc second">
            Day {record.number} · {record.name}
          </p>
          <h1>Draw</h1>
          <p className="lead">
            {drawn
              ? `${count(record.groups.length, 'group')}, ${count(counts.entered, 'player')}${draw?.seed != null ? `, draw number ${draw.seed}` : ''}.`
              : `${count(counts.entered, 'player')} to draw.`}
            {record.startPublishedAt ? ` The start sheet went out ${momentOf(record.startPublishedAt)}.` : ''}
            <UnsavedSentence />
          </p>
        </div>
        {drawn ? (
          <p className="acts">
            <Link className="btn" href={`${at}/matches`}>
              Sides and matches
            </Link>
            <Link className="btn" href={`${at}/print`}>
              Print the start sheet
            </Link>
          </p>
        ) : null}
      </div>
      {drawn ? (
        <>
          <Arrange
            action={keepGroups.bind(null, where)}
            players={players}
            groups={record.groups}
            shotgun={record.round.startKind === 'shotgun'}
            interval={record.round.intervalMinutes}
            firstTee={record.round.firstTee}
            round={{ holes: record.round.holes, firstHole: record.round.firstHole }}
            shut={shut}
            publishForm={PUBLISH}
            meanwhile={
              record.startPublishedAt
                ? `Members still see the start sheet of ${momentOf(record.startPublishedAt)}.`
                : 'Members see no start sheet yet.'
            }
          >
            {seen}
          </Arrange>
          {left.length > 0 ? (
            <Notice kind="waits" word="Left out">
              {left.map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
            </Notice>
          ) : null}
          {mates.map((one) => (
            <TeamMates key={one.competitionId} paired={one} action={keepPairings.bind(null, where)}>
              {seen}
            </TeamMates>
          ))}
          {teams.map((competition) => (
            <section key={competition.id} aria-labelledby={`sides-${competition.id}`} className="desk-sheet">
              <h2 id={`sides-${competition.id}`}>Sides of {competition.name}</h2>
              <SidesForm
                action={keepSides.bind(null, where)}
                competition={{ id: competition.id, name: competition.name, size: competition.size }}
                groups={record.groups}
                sides={competition.sides.map((side) => side.entryIds)}
                names={Object.fromEntries(players.map((player) => [player.entryId, player.name]))}
                shut={shut}
              >
                {seen}
              </SidesForm>
              <SideFigures competition={ofSides.find(({ competitionId }) => competitionId === competition.id)} />
            </section>
          ))}
          <section aria-labelledby="publish-h" className="desk-sheet">
            <h2 id="publish-h">Start sheet</h2>
            {record.startPublishedAt && groupKeys === null ? (
              <p>It is out. Links and codes of the groups are for the secretary and the captain.</p>
            ) : record.startPublishedAt && groupKeys ? (
              <Links renew={renewLink.bind(null, where)} groups={groupKeys}>
                {seen}
              </Links>
            ) : (
              <ActForm
                id={PUBLISH}
                action={publishTheStart.bind(null, where)}
                label="Publish the start sheet"
                savesFirst
              >
                {seen}
                <p>
                  Publishing gives each group a link and a code to its card. The public sheet shows names, times and
                  tees, never the codes.
                </p>
                {left.map((sentence) => (
                  <p key={sentence}>{sentence}</p>
                ))}
                <p className="acts">
                  <Send kind="first" why={record.frozenAt === null && 'freeze the handicaps first'}>
                    Publish the start sheet
                  </Send>
                  {record.frozenAt === null ? (
                    <Link className="btn plain" href={`${at}/handicaps`}>
                      Go to the handicaps
                    </Link>
                  ) : null}
                </p>
              </ActForm>
            )}
          </section>
        </>
      ) : (
        <Empty first="No groups yet.">
          {counts.entered === 0 ? 'Enter the players first.' : 'Draw them here, then move whom you like.'}
        </Empty>
      )}
      {shut ? null : (
        <details className="rule-all" open={!drawn}>
          <summary>{drawn ? 'Draw again' : 'Make the draw'}</summary>
          <DrawForm
            action={drawGroups.bind(null, where)}
            players={counts.entered}
            drawn={drawn}
            proposed={proposedGroupSize(needs)}
            given={given}
          >
            {seen}
          </DrawForm>
        </details>
      )}
    </DayFrame>
  )
}
