'use client'

import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Send } from '@/app/desk/_form/field'
import type { CourseId } from '@/lib/facts/ids'

interface Props {
  readonly action: FormAction
  readonly courseId: CourseId
  readonly version: number
  readonly name: string
}

/** For a course entered by mistake. Opened first, so that one wrong tap deletes nothing. */
export function DeleteCourse({ action, courseId, version, name }: Props) {
  return (
    <details className="rule-all">
      <summary>Delete this course</summary>
      <ActForm action={action} label={`Delete ${name}`}>
        <input type="hidden" name="courseId" value={courseId} />
        <input type="hidden" name="version" value={version} />
        <p>
          For a course entered by mistake. {name} and all its tees are deleted. A course that has a golf day cannot be
          deleted.
        </p>
        <p className="acts">
          <Send kind="grave">Delete {name}</Send>
        </p>
      </ActForm>
    </details>
  )
}
