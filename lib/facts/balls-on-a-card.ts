// One card of a day is either of one player's own ball or of the ball a side shares. Competitions of both kinds, or of sides
// of different sizes with one ball, cannot be counted from the same cards.

import type { Format } from '@/lib/rules/formats/format'

export interface OnTheCard {
  readonly name: string
  readonly format: Pick<Format, 'ball' | 'sideSize'> | null
}

export interface BallClash {
  /** Of the competition that comes later. */
  readonly at: number
  readonly sentence: string
}

/** Each competition that does not go with the first one, by its place. */
export function ballClashes(competitions: readonly OnTheCard[]): readonly BallClash[] {
  const first = competitions.find(({ format }) => format !== null)
  return competitions.flatMap(({ name, format }, at) => {
    if (!first?.format || !format) return []
    const way = 'Call a day of its own for one of them.'
    if (format.ball !== first.format.ball) {
      const [own, shared] = format.ball === 'own' ? [name, first.name] : [first.name, name]
      return [
        {
          at,
          sentence: `${own} is played with a ball each and ${shared} with one ball a side: they cannot share the cards. ${way}`,
        },
      ]
    }
    if (format.ball === 'one' && format.sideSize !== first.format.sideSize)
      return [
        {
          at,
          sentence: `${first.name} is played by sides of ${first.format.sideSize} with one ball and ${name} by sides of ${format.sideSize}: they cannot share the cards. ${way}`,
        },
      ]
    return []
  })
}
