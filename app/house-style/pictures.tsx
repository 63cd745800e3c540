import type { ReactNode } from 'react'
import { CourseBars } from '@/app/_parts/course-bars'
import { CourseNow } from '@/app/_parts/course-now'
import { Device, Pin } from '@/app/_parts/device'
import { Dots, Tally } from '@/app/_parts/dots'
import { HoleBars } from '@/app/_parts/hole-bars'
import { HoleScale } from '@/app/_parts/hole-scale'
import { Fold, Ledger, LedgerRow } from '@/app/_parts/ledger'
import { Opens } from '@/app/_parts/opens'
import { averages, course, groupsOut } from './specimen'
import '../desk/course.css'

function Shown({ children, words }: { children: ReactNode; words: string }) {
  return (
    <figure>
      <div className="shown">{children}</div>
      <figcaption className="small second">{words}</figcaption>
    </figure>
  )
}

/** Figures, dots, the four lines, and what is drawn. */
export function Pictures() {
  return (
    <section className="oxford">
      <h2>Figures, lines and drawings</h2>
      <div className="kit">
        <Shown words="Lining, tabular and in the serif, in a column or alone. Inside a sentence figures stay in the text face, whose zero cannot be an O.">
          <p className="fig big">0123456789</p>
          <p className="fig big">38 20.7 £45 +2.1</p>
        </Shown>
        <Shown words="Strokes received are ink dots. What a plus player gives back is open. They stand beside the name or the index, never round a score.">
          <p className="big-dots">
            <Dots strokes={1} /> <Dots strokes={2} /> <Dots strokes={3} /> <Dots strokes={-1} /> <Dots strokes={-2} />
          </p>
        </Shown>
        <Shown words="A dotted heather underline says that a figure opens. It says nothing else anywhere.">
          <p className="fig hero">
            <Opens href="#working" label="38 points: open the working">
              38
            </Opens>
          </p>
        </Shown>
        <Shown words="Hairline between rows; ink line round a table; thick over a total; thick-and-thin once a page.">
          <div className="lines">
            <i className="l-hair" />
            <i className="l-line" />
            <i className="l-thick" />
            <i className="l-oxford" />
          </div>
        </Shown>
        <Shown words="The fold parts the front nine from the back, the hole from the group, the results from the prizes.">
          <Fold />
        </Shown>
        <Shown words="Left of the double rule stands what orders the page. Right of it stands the page.">
          <Ledger className="short-ledger">
            <LedgerRow margin="10.20">Haldane, Coldbrook</LedgerRow>
            <LedgerRow margin="10.30">Holmgarth, Arkwood</LedgerRow>
          </Ledger>
        </Shown>
        <Shown words="Holes are columns, a group a row: a block where it is, an open one where it would be at the expected pace. Gorse has been silent for twenty minutes, a rowan edge is a card not agreed, a dashed block has not started.">
          <CourseNow holes={course} groups={groupsOut} />
        </Shown>
        <Shown words="A par five to length, back from the pin: filled block the main tee, open block the other.">
          <HoleScale
            tees={[
              { name: 'yellow', yards: 479 },
              { name: 'red', yards: 428 },
            ]}
            longest={502}
          />
        </Shown>
        <Shown words="A par three on the same scale.">
          <HoleScale
            tees={[
              { name: 'yellow', yards: 162 },
              { name: 'red', yards: 131 },
            ]}
            longest={502}
          />
        </Shown>
        <Shown words="The course to length, and where the last groups are.">
          <CourseBars
            course={course}
            groupsOn={[16, 17, 18, 18]}
            label="Groups are on the 16th, the 17th and two on the 18th"
          />
        </Shown>
        <Shown words="How the course played: average points, with the line at two.">
          <HoleBars
            values={averages}
            level={2}
            write={(value) => value.toFixed(2)}
            label="Average points a hole: most on the 1st, 2.11, fewest on the 12th, 1.44"
          />
        </Shown>
        <Shown words="The society’s own device in one ink, the pin for a page with nothing on it, the tally for what is only on this phone. One ornament a page.">
          <p className="ornaments">
            <Device />
            <Pin />
            <Tally count={3} />
          </p>
        </Shown>
      </div>
    </section>
  )
}
