// Which competition, and how to look at it: plain links, so that they work before any script does.

import Link from '@/app/_parts/link'
import { Tabs } from '@/app/_parts/tabs'
import { boardAt } from './addresses'
import { type ScreenBoard, type View, viewsOf } from './screen-board'

const VIEW_WORDS: Record<View, string> = {
  leaders: 'Leaders',
  teams: 'By team',
  groups: 'Group by group',
  needs: 'What it needs',
  mine: 'My card',
}

interface Props {
  readonly board: ScreenBoard
  readonly c: number
  readonly view: View
  /** The division that is looked at; null for the whole field. */
  readonly d: string | null
}

export function ViewLinks({ board, c, view, d }: Props) {
  const { societySlug, daySlug } = board.head
  const divisions = board.competition.divisions ?? []
  const views = viewsOf(board)
  return (
    <>
      {board.competitions.length > 1 && (
        <Tabs
          label="Competitions"
          items={board.competitions.map((competition, at) => ({
            href: boardAt(societySlug, daySlug, { c: at + 1, v: view }),
            label: competition.name,
            current: at + 1 === c,
          }))}
        />
      )}
      {views.length > 1 && (
        <nav className={board.competitions.length > 1 ? 'board-views' : 'board-views ruled'} aria-label="Views">
          {views.map((way) => (
            <Link
              key={way}
              scroll={false}
              href={boardAt(societySlug, daySlug, { c, d, v: way })}
              aria-current={way === view ? 'page' : undefined}
            >
              {VIEW_WORDS[way]}
            </Link>
          ))}
        </nav>
      )}
      {divisions.length > 0 && (
        <nav className="board-views divisions" aria-label="Divisions">
          {[{ id: null, name: 'Everybody' }, ...divisions].map((one) => (
            <Link
              key={one.id ?? ''}
              scroll={false}
              href={boardAt(societySlug, daySlug, { c, d: one.id, v: view })}
              aria-current={one.id === d ? 'page' : undefined}
            >
              {one.name}
            </Link>
          ))}
        </nav>
      )}
    </>
  )
}
