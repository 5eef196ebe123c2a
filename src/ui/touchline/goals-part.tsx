import { PitchButton } from '#ui/pitch/pitch-button'

type GoalsPartProps = {
  readonly ours: number
  readonly theirs: number
  readonly onGoal: (side: 'ours' | 'theirs') => void
  /** Takes the last goal of a side back. */
  readonly onLess: (side: 'ours' | 'theirs') => void
}

const sides = { ours: 'Us', theirs: 'Them' } as const

/** Goals of the two sides, never of a child; only where the club counts them. */
export function GoalsPart({ ours, theirs, onGoal, onLess }: GoalsPartProps) {
  const counts = { ours, theirs }
  return (
    <section aria-label="Goals" className="grid grid-cols-2 gap-3">
      {(['ours', 'theirs'] as const).map((side) => (
        <div key={side} className="flex items-stretch justify-between gap-2 border border-ink">
          <PitchButton
            weight="quiet"
            aria-label={`One goal fewer: ${sides[side].toLowerCase()}`}
            disabled={counts[side] === 0}
            onClick={() => onLess(side)}
            className="border-0 text-2xl"
          >
            −
          </PitchButton>
          <p className="text-center leading-tight">
            <span className="block text-base font-semibold">{sides[side]}</span>
            <span className="text-2xl font-bold tabular-nums">{counts[side]}</span>
          </p>
          <PitchButton
            aria-label={`Goal: ${sides[side].toLowerCase()}`}
            onClick={() => onGoal(side)}
            className="border-0 border-l-2 text-2xl"
          >
            +
          </PitchButton>
        </div>
      ))}
    </section>
  )
}
