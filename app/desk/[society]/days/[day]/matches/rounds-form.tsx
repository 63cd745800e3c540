import type { ReactNode } from 'react'
import { Choices } from '@/app/_parts/choice'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Choice, Field, SelectField, Send } from '@/app/desk/_form/field'
import { shortDateInWords } from '@/lib/boards/dates-in-words'
import type { CompetitionId, CourseId, DayId } from '@/lib/facts/ids'

interface CountedProps {
  readonly action: FormAction
  readonly competition: {
    readonly id: CompetitionId
    readonly name: string
    readonly countedDayIds: readonly DayId[]
    readonly recountedDayIds: readonly DayId[]
  }
  readonly days: readonly {
    readonly id: DayId
    readonly name: string
    readonly date: string
    readonly holes: number
    readonly courseName: string
    /** What would be counted otherwise than on its own sheet; null where nothing is. */
    readonly otherwise: string | null
    /** What each way of counting it does, where its terms were others; null where they are the same. */
    readonly ways: { readonly published: string; readonly anew: string } | null
  }[]
  readonly children: ReactNode
}

/** The earlier days a competition is added up with. */
export function CountedDays({ action, competition, days, children }: CountedProps) {
  return (
    <ActForm action={action} label={`${competition.name} counts together with`} saves>
      {children}
      <input type="hidden" name="competitionId" value={competition.id} />
      <fieldset>
        <legend>{competition.name} counts together with</legend>
        {days.map((day) => (
          <div key={day.id}>
            <Choice type="checkbox" name="counted" value={day.id} initial={competition.countedDayIds.includes(day.id)}>
              {day.name}, {shortDateInWords(day.date)}: {day.holes} holes, {day.courseName}
              {day.otherwise ? <span className="block small second">{day.otherwise}</span> : null}
            </Choice>
            {day.ways ? (
              <>
                <p className="small second">The terms of {day.name} were others.</p>
                <Choices question={`How ${day.name} counts`}>
                  <Choice
                    type="radio"
                    name={`under-${day.id}`}
                    value="as-published"
                    initial={!competition.recountedDayIds.includes(day.id)}
                    hint={day.ways.published}
                  >
                    As it was published
                  </Choice>
                  <Choice
                    type="radio"
                    name={`under-${day.id}`}
                    value="this-day"
                    initial={competition.recountedDayIds.includes(day.id)}
                    hint={`${day.ways.anew} Its own sheet stays as it is.`}
                  >
                    Under the terms of this day
                  </Choice>
                </Choices>
              </>
            ) : null}
          </div>
        ))}
      </fieldset>
      {days.some((day) => day.otherwise !== null) ? (
        <>
          <p className="small second">
            All rounds of one competition count under its terms, each off the handicap of its own day. What is published
            of the earlier days stays as it is.
          </p>
          <Choice type="checkbox" name="underTheseTerms">
            Count days with other terms under the terms of {competition.name}
          </Choice>
        </>
      ) : null}
      <p className="acts">
        <Send>Save what is added up</Send>
      </p>
    </ActForm>
  )
}

interface AgainProps {
  readonly action: FormAction
  readonly day: { readonly name: string; readonly date: string; readonly courseId: CourseId; readonly holes: number }
  readonly courses: readonly { readonly courseId: CourseId; readonly name: string }[]
  readonly children: ReactNode
}

/** A further round with the same field, sides and groups. */
export function CallAgain({ action, day, courses, children }: AgainProps) {
  return (
    <ActForm action={action} label="Call a further round">
      {children}
      <div className="fields">
        <Field name="name" label="Name" initial={`${day.name}, second round`} maxLength={80} required />
        <Field name="date" label="Date" type="date" initial={day.date} required />
        <Field name="firstTee" label="First tee" type="time" initial="14:00" required />
        <SelectField
          name="courseId"
          label="Course"
          initial={day.courseId}
          options={courses.map((one) => ({ value: one.courseId, label: one.name }))}
        />
        <SelectField
          name="holes"
          label="Holes"
          initial={String(day.holes)}
          options={[
            { value: '18', label: '18' },
            { value: '9', label: '9' },
          ]}
        />
      </div>
      <p className="acts">
        <Send>Call the round: same field</Send>
      </p>
    </ActForm>
  )
}
