import type { ReactNode } from 'react'
import type { ToldFlag } from '#fairness/book/told-flag'
import { formatDay } from '#ui/format-day'
import { words } from '#ui/words'

type FlagLineProps = {
  readonly flag: ToldFlag
  /** Whose, with a link; left out on a player's own page. */
  readonly who?: ReactNode
  /** What was said to it, or the form to say it. */
  readonly answer?: ReactNode
}

/** One flag: what it says, since when, whether it is closing, and the smallest thing that would put it right. */
export function FlagLine({ flag, who, answer }: FlagLineProps) {
  return (
    <li className="keep-together border-b border-rule py-3 last:border-b-0">
      <p className="flex flex-wrap items-baseline gap-x-3">
        {who ? <span className="font-semibold">{who}</span> : null}
        <span className="font-semibold">{flag.title}</span>
        <span className="text-sm text-soft">
          {words.kinds[flag.scope]}, since {formatDay(flag.since)}
          {flag.isClosing ? ', closing' : ''}
        </span>
      </p>
      <p className="max-w-prose">{flag.sentence}</p>
      <p className="max-w-prose text-soft">{flag.cure}</p>
      {answer ? <div className="mt-2">{answer}</div> : null}
    </li>
  )
}
