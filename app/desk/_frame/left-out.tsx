import Link from '@/app/_parts/link'
import { Notice } from '@/app/_parts/notice'

/** Whoever the numbers or the draw leave without a part in a competition, and the way to where that is put right. */
export function LeftOutNotice({ sentences, at }: { readonly sentences: readonly string[]; readonly at: string }) {
  if (sentences.length === 0) return null
  return (
    <Notice
      kind="waits"
      word="Left out"
      acts={
        <Link className="btn" href={`${at}/draw`}>
          To the draw
        </Link>
      }
    >
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </Notice>
  )
}
