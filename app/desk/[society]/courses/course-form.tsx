'use client'

import { useState } from 'react'
import { ActForm, useFormNow } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, Send } from '@/app/desk/_form/field'
import { StartsAgain } from '@/app/desk/_form/unsaved'
import type { CourseId } from '@/lib/facts/ids'
import { copyOf, emptyTee, nineOf, type TeeDraft, toKeep, twiceOf, withHoles } from './card-draft'
import { TeeCard } from './tee-card'

interface Props {
  readonly action: FormAction
  readonly course: {
    readonly known: { readonly courseId: CourseId; readonly version: number } | null
    readonly name: string
    readonly place: string
    readonly tees: readonly TeeDraft[] | null
  }
}

/** The card of a course: one table a set of tees, keyed from the printed card. */
export const CourseForm = (props: Props) => (
  <StartsAgain>
    <CourseCard {...props} />
  </StartsAgain>
)

function CourseCard({ action, course }: Props) {
  const [name, setName] = useState(course.name)
  const [place, setPlace] = useState(course.place)
  const [tees, setTees] = useState<readonly TeeDraft[]>(() => course.tees ?? [emptyTee(18, 'men')])
  // What this form was opened with: two desks are merged against it.
  const [was] = useState(() => (course.known ? toKeep(course.name, course.place, tees, null) : null))
  const holes = Math.max(...tees.map((tee) => tee.holes.length))
  return (
    <ActForm
      action={action}
      label={course.known ? `Change ${course.name}` : 'Enter a course'}
      className="course-form"
      saves
    >
      <input
        type="hidden"
        name="course"
        value={JSON.stringify({ ...toKeep(name, place, tees, course.known), ...(was ? { was } : {}) }, keepNaN)}
      />
      <Overrule />
      <div className="fields">
        <Field
          name="name"
          label="Course"
          value={name}
          onChange={(event) => setName(event.target.value)}
          required
          maxLength={80}
        />
        <Field
          name="place"
          label="Where"
          value={place}
          onChange={(event) => setPlace(event.target.value)}
          maxLength={80}
        />
        <div className="field">
          <label htmlFor="holes-of-course">Holes</label>
          <select
            id="holes-of-course"
            value={holes}
            onChange={(event) => setTees(withHoles(tees, Number(event.target.value)))}
          >
            <option value={18}>18</option>
            <option value={9}>9</option>
          </select>
        </div>
      </div>
      {tees.map((tee, index) => (
        <TeeCard
          key={tee.key}
          tee={tee}
          place={index}
          only={tees.length === 1}
          onChange={(changed) => setTees(tees.with(index, changed))}
          onLeaveOut={() => setTees(tees.filter((one) => one !== tee))}
          onNine={(nine) => setTees([...tees, nineOf(tee, nine)])}
          onTwice={() => setTees([...tees.with(index, { ...tee, nine: 1 }), twiceOf(tee)])}
        />
      ))}
      <p className="acts">
        <button
          type="button"
          className="btn"
          onClick={() => setTees([...tees, tees[0] ? copyOf(tees[0]) : emptyTee(holes, 'men')])}
        >
          Add another set of tees
        </button>
      </p>
      <p className="acts">
        <Send kind="first">{course.known ? 'Keep the course' : 'Enter the course'}</Send>
      </p>
    </ActForm>
  )
}

/** After being told what another desk wrote in the same place, pressing again keeps mine. */
function Overrule() {
  const { refused, typed } = useFormNow()
  if (refused?.code !== 'course-moved-on') return null
  const told = [...(typed.overrule ?? []), ...refused.faults.map((fault) => fault.place)]
  return told.map((place) => <input key={place} type="hidden" name="overrule" value={place} />)
}

/** What is no number goes as text, so that the schema names the cell instead of a silent null. */
const keepNaN = (_key: string, value: unknown) => (typeof value === 'number' && Number.isNaN(value) ? '' : value)
