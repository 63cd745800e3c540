'use client'

import { useState } from 'react'
import type { CallDay } from '@/lib/facts/commands'

/** What the form was filled with, kept as it was although the page is read again after a refusal. */
export function FilledWith({ day }: { readonly day: CallDay }) {
  const [filled] = useState(() => JSON.stringify(day))
  return <input type="hidden" name="filled" value={filled} />
}
