'use client'

import { type ReactNode, useState } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, SelectField, Send } from '@/app/desk/_form/field'
import { StartsAgain } from '@/app/desk/_form/unsaved'
import { capital } from '@/lib/boards/in-words'
import { prizeRuleOf } from '@/lib/boards/prize-rule'
import { teeTerm } from '@/lib/boards/side-tee'
import { takenOver } from '@/lib/boards/taken-over'
import { dateIn } from '@/lib/facts/calendar'
import type { CallDay } from '@/lib/facts/commands'
import type { Gender } from '@/lib/rules/day'
import { editionFor, editionOf } from '@/lib/rules/editions/editions'
import { rangeInWords } from '@/lib/rules/hole-numbers'
import { closingWith } from './closing-date'
import { CompetitionFields } from './competition-fields'
import { draftOf, intervalAdvice, newCompetition, proposedAgain } from './drafts'
import { FieldOfDay } from './field-of-day'
import { PrizeChoice } from './prize-choice'
import { TeesOfDay } from './tees-of-day'
import { stepsOn } from './tie-rules'

export interface CourseChoice {
  readonly id: string
  readonly name: string
  readonly tees: readonly {
    readonly id: string
    readonly name: string
    readonly gender: Gender
    readonly courseRating: string
    readonly slopeRating: number
    readonly holes: number
    readonly firstHole: number
    readonly par: number
    readonly yards: number | null
    /** Where the numbers come from, where they are not simply printed. */
    readonly said?: string
  }[]
}

interface Props {
  readonly action: FormAction
  readonly label: string
  readonly day: CallDay
  readonly courses: readonly CourseChoice[]
  readonly expected: number
  readonly send: string
  /** The day whose choices a new one begins with. */
  readonly takenFrom?: string
  /** A day that is there is changed; a new one is proposed. */
  readonly saves?: boolean
  /** Words on the members' pages, for divisions. */
  readonly words: readonly string[]
  /** Playing handicaps of those entered, by competition. */
  readonly field?: Readonly<Record<string, readonly number[]>>
  readonly children?: ReactNode
}

const NOBODY = {}

export const DayForm = (props: Props) => (
  <StartsAgain>
    <DayFields {...props} />
  </StartsAgain>
)

/** Where the officer sits: only a proposal hangs on it. */
const todayHere = () => dateIn(new Date(), Intl.DateTimeFormat().resolvedOptions().timeZone)

function DayFields({
  action,
  label,
  day,
  courses,
  expected: known,
  send,
  words,
  field,
  saves,
  children,
  takenFrom,
}: Props) {
  const [courseId, setCourse] = useState(day.courseId || courses[0]?.id || '')
  const [date, setDate] = useState(day.date)
  const [closing, setClosing] = useState({ on: day.entriesCloseOn ?? '', byHand: false })
  const [holes, setHoles] = useState(day.holes ?? 18)
  const [expected, setExpected] = useState(known)
  const [start, setStart] = useState({ kind: day.startKind ?? 'tee-times', minutes: day.intervalMinutes })
  const [drafts, setDrafts] = useState(() => day.competitions.map(draftOf))
  const edition = editionFor(date)
  const course = courses.find((one) => one.id === courseId)
  const courseBefore = courses.find((one) => one.id === day.courseId)?.name ?? ''
  const before = takenFrom === undefined ? null : takenOver(takenFrom, day, courseBefore)
  const advice = intervalAdvice(start.minutes, start.kind)
  const propose = (size: number, of: string) => setDrafts((now) => [...proposedAgain(now, size, of)])

  return (
    <FieldOfDay value={field ?? NOBODY}>
      <ActForm action={action} label={label} className="day-form" saves={saves ?? false}>
        <input type="hidden" name="seasonId" value={day.seasonId} />
        {children}
        <section aria-labelledby="when-h">
          <h2 id="when-h">When and where</h2>
          {before ? <p className="small second">{before.course}</p> : null}
          <div className="fields">
            <Field name="name" label="Name of the day" initial={day.name} required maxLength={80} />
            <Field
              name="date"
              label="Date"
              type="date"
              value={date}
              onChange={(event) => {
                const to = event.target.value
                setDate(to)
                if (!closing.byHand) setClosing({ ...closing, on: closingWith(closing.on, date, to, todayHere()) })
                propose(expected, editionFor(event.target.value))
              }}
              required
              hint={date ? `Counted under the ${editionOf(edition).title}.` : undefined}
            />
            <Field
              name="entriesCloseOn"
              label="Entries close on"
              type="date"
              value={closing.on}
              onChange={(event) => setClosing({ on: event.target.value, byHand: true })}
              hint={closing.byHand ? undefined : 'Moves with the date, until you choose another.'}
            />
            <SelectField
              name="courseId"
              label="Course"
              value={courseId}
              onChange={setCourse}
              options={courses.map((one) => ({ value: one.id, label: one.name }))}
            />
            <TeeSelect
              key={`men ${courseId} ${holes}`}
              course={course}
              holes={holes}
              gender="men"
              initial={day.teeMen}
            />
            <TeeSelect
              key={`women ${courseId} ${holes}`}
              course={course}
              holes={holes}
              gender="women"
              initial={day.teeWomen}
            />
          </div>
        </section>
        <section aria-labelledby="start-h">
          <h2 id="start-h">The start</h2>
          {before ? <p className="small second">{before.start}</p> : null}
          <div className="fields">
            <SelectField
              name="startKind"
              label="Start"
              value={start.kind}
              onChange={(kind) => setStart({ ...start, kind: kind === 'shotgun' ? 'shotgun' : 'tee-times' })}
              options={[
                { value: 'tee-times', label: 'Tee times from the first tee' },
                { value: 'shotgun', label: 'Shotgun: all at once, on different holes' },
              ]}
            />
            <Field name="firstTee" label="First tee" type="time" initial={day.firstTee} required />
            <Field
              name="intervalMinutes"
              label="Minutes between groups"
              type="number"
              min={5}
              max={30}
              value={start.minutes}
              onChange={(event) => setStart({ ...start, minutes: Number(event.target.value) })}
              hint={advice ?? 'Published advice: at least 8 for two-balls, 10 for threes, 11 for fours.'}
              required
            />
            <SelectField
              name="holes"
              label="Holes"
              value={String(holes)}
              onChange={(chosen) => {
                const planned = chosen === '9' ? 9 : 18
                setHoles(planned)
                setDrafts((now) =>
                  now.map((one) => ({ ...one, ties: { ...one.ties, steps: stepsOn(one.ties.steps, planned) } })),
                )
              }}
              hint={
                holes === 9 && course && !course.tees.some((tee) => tee.holes === 9)
                  ? `${course.name} has no nine rated by itself. Add the front or the back nine, with its rating, to its card first.`
                  : undefined
              }
              options={[
                { value: '18', label: '18' },
                { value: '9', label: '9' },
              ]}
            />
            <Field
              name="places"
              label="Places"
              type="number"
              min={2}
              max={200}
              initial={day.places}
              hint="Whoever enters after that waits. Empty: as many as come."
            />
            <Field
              name="expected"
              label="Players expected"
              type="number"
              min={0}
              max={200}
              value={expected}
              onChange={(event) => {
                setExpected(Number(event.target.value))
                propose(Number(event.target.value), edition)
              }}
              hint="Allowances are proposed for this field."
            />
          </div>
        </section>
        <section aria-labelledby="comps-h">
          <h2 id="comps-h">Competitions on the same cards</h2>
          {before ? <p className="small second">{before.competitions}</p> : null}
          <TeesOfDay value={course ? teesOn(course, holes) : null}>
            {drafts.map((draft, place) => (
              <CompetitionFields
                key={draft.key}
                draft={draft}
                place={place}
                expected={expected}
                edition={edition}
                holes={holes}
                only={drafts.length === 1}
                words={words}
                onChange={(changed) => setDrafts(drafts.with(place, changed))}
                onLeaveOut={() => setDrafts(drafts.filter((one) => one !== draft))}
              />
            ))}
          </TeesOfDay>
          <p className="acts">
            <button
              type="button"
              className="btn"
              onClick={() => setDrafts([...drafts, newCompetition('four-ball-stableford', expected, edition)])}
            >
              Add a competition
            </button>
          </p>
          <PrizeChoice initial={prizeRuleOf(day.competitions)} />
        </section>
        <p className="acts">
          <Send kind="first">{send}</Send>
        </p>
      </ActForm>
    </FieldOfDay>
  )
}

/** Everything a player can be put on, as the terms name it. */
const teesOn = (course: CourseChoice, holes: number) => course.tees.filter((tee) => tee.holes === holes).map(teeTerm)

function TeeSelect({
  course,
  holes,
  gender,
  initial,
}: {
  readonly course: CourseChoice | undefined
  readonly holes: number
  readonly gender: Gender
  readonly initial: string | null
}) {
  const fitting = course?.tees.filter((tee) => tee.gender === gender && tee.holes === holes) ?? []
  // The first nine before the second, whatever their tees are called.
  const tees = fitting.toSorted((a, b) => a.firstHole - b.firstHole)
  const known = tees.some((tee) => tee.id === initial) ? initial : null
  const [chosen, setChosen] = useState(known ?? tees[0]?.id ?? '')
  const tee = tees.find((one) => one.id === chosen)
  return (
    <SelectField
      name={gender === 'men' ? 'teeMen' : 'teeWomen'}
      label={gender === 'men' ? 'Tees, men' : 'Tees, women'}
      value={chosen}
      onChange={setChosen}
      hint={
        tee
          ? `${holes === 9 ? `${capital(rangeInWords(tee))}, par` : 'Par'} ${tee.par}, course rating ${tee.courseRating}, slope ${tee.slopeRating}${tee.yards ? `, ${tee.yards} yards` : ''}.${tee.said ? ` ${tee.said}` : ''}`
          : `No tees are rated for ${gender} over ${holes} holes on this course.`
      }
      options={[
        ...tees.map((one) => ({ value: one.id, label: one.name })),
        ...(tees.length === 0 ? [{ value: '', label: 'none' }] : []),
      ]}
    />
  )
}
