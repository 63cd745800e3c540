import { list } from '@/app/desk/_frame/words'

/** Why the handicaps cannot be frozen yet, with the names; false when they can. */
export function whyNotFreeze(entered: number, missing: readonly { readonly name: string }[]): string | false {
  if (missing.length > 4) return `${missing.length} players have no handicap yet`
  if (missing.length > 0)
    return `${list(missing.map((one) => one.name))} ${missing.length === 1 ? 'has' : 'have'} no handicap yet`
  return entered === 0 && 'nobody is entered'
}
