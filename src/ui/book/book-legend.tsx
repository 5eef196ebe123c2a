import type { Policy } from '#squad/policy'
import { wholeMinutes } from '#ui/figures/minutes'
import { Details } from '#ui/page/details'
import { words } from '#ui/words'

/** How to read the bars, and what the parts of a difference mean. */
export function BookLegend({
  policy,
  kind,
}: {
  readonly policy: Policy
  readonly kind: 'practice' | 'match'
}) {
  return (
    <div className="mb-3 text-sm">
      <p className="max-w-prose text-soft">
        The upright line is the even share, the pale band is about even: up to{' '}
        {wholeMinutes(policy.toleranceSeconds)} min or {Math.round(policy.toleranceShare * 100)} % of the even
        share, whichever is more. A dot to the left had less, to the right more.
      </p>
      <Details summary="What the numbers under a bar mean">
        <dl className="grid gap-x-4 gap-y-1 sm:grid-cols-[8rem_1fr]">
          {(['missed', 'goalDuty', 'whileHere'] as const).map((part) => (
            <div key={part} className="contents">
              <dt className="font-medium">{words.cause[part]}</dt>
              <dd className="max-w-prose">{meaning[part]}</dd>
            </div>
          ))}
        </dl>
        <p className="mt-2 max-w-prose">
          The three add up to what separates a player from what the squad’s members would on average have had,
          there for everything. They are shown where something is outside the band.
          {kind === 'match'
            ? ` Attack and defence in matches are judged from ${policy.matchesBeforeRoles} matches on.`
            : ''}
        </p>
      </Details>
    </div>
  )
}

const meaning = {
  missed: 'Turns there would have been in what the player was not there for, in minutes.',
  goalDuty: 'More or less than the others’ even share because of time that was due in goal.',
  whileHere:
    'Shared unevenly while the player was there: the difference from an even share. The coach’s part.',
} as const
