'use client'

import { type ReactNode, useId } from 'react'

interface Props {
  readonly hint: ReactNode
  readonly tooLarge: boolean
  readonly onFile: (file: File | undefined) => void
}

export function FileField({ hint, tooLarge, onFile }: Props) {
  const id = useId()
  return (
    <div className={tooLarge ? 'field wrong' : 'field'}>
      <label htmlFor={id}>Spreadsheet, CSV or XLSX</label>
      <div className="hint" id={`${id}-hint`}>
        {hint}
      </div>
      <input
        id={id}
        name="file"
        type="file"
        accept=".csv,.tsv,.txt,.xlsx,text/csv,application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
        aria-describedby={`${id}-hint`}
        onChange={(event) => onFile(event.target.files?.[0])}
      />
      {tooLarge ? (
        <p className="why">This file is larger than 900 kB. Save only the list itself, without pictures.</p>
      ) : null}
    </div>
  )
}
