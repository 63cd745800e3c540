'use client'

import type { PartProps } from './part-props'

/** Rows that are not imported, and why; each can be brought back. */
export function LeftOut({ preview, choices, onChange }: PartProps) {
  const { leftOut } = preview
  if (leftOut.length === 0) return null
  return (
    <section aria-labelledby="left-out-h">
      <h3 id="left-out-h">Left out, {leftOut.length}</h3>
      <ul className="rows-left-out">
        {leftOut.map((one) => (
          <li key={one.row}>
            Row {one.row}, “{one.reads}”: {one.why}.{' '}
            <button
              type="button"
              className="btn plain"
              onClick={() =>
                one.byItself
                  ? onChange({ broughtBack: [...choices.broughtBack, one.row] })
                  : onChange({ leftOut: choices.leftOut.filter((row) => row !== one.row) })
              }
            >
              Bring row {one.row} back
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
