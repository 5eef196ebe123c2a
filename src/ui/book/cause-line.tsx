import type { JudgedFigure } from '#fairness/book/judged-figure'
import { signedMinutes } from '#ui/figures/difference'
import { wholeMinutes } from '#ui/figures/minutes'
import { words } from '#ui/words'

type CauseLineProps = {
  readonly figure: JudgedFigure
  /** The difference as shown beside the bar, which "while here" must repeat. */
  readonly differenceMinutes: number
}

/** Why a player is behind or ahead of the squad: the parts told apart, the coach answering for the last. */
export function CauseLine({ figure, differenceMinutes }: CauseLineProps) {
  if (!figure.isCauseTold || !figure.cause) return null
  const parts = [
    { label: words.cause.missed, minutes: wholeMinutes(figure.cause.missed) },
    { label: words.cause.goalDuty, minutes: wholeMinutes(figure.cause.goalDuty) },
    { label: 'agreed', minutes: wholeMinutes(figure.agreedSeconds) },
    { label: words.cause.whileHere, minutes: differenceMinutes },
  ].filter(({ label, minutes }) => label !== 'agreed' || minutes !== 0)
  return (
    <dl className="mt-1 flex flex-wrap gap-x-3 text-sm">
      {parts.map(({ label, minutes }) => (
        <div key={label} className={label === words.cause.whileHere ? 'font-medium' : 'text-soft'}>
          <dt className="inline">{label} </dt>
          <dd className="inline whitespace-nowrap">{signedMinutes(minutes)}</dd>
        </div>
      ))}
    </dl>
  )
}
