import type { Deed } from '#pitch/pitch-event'
import type { PitchState } from '#pitch/pitch-state'
import type { PitchSide } from '#pitch/side-points'
import type { DesignRound } from '#practice/design'
import { capital } from '#ui/capital'
import { Bib } from '#ui/pitch/bib'
import type { Cast } from '#ui/pitch/cast'
import { PitchButton } from '#ui/pitch/pitch-button'
import { words } from '#ui/words'

type PointsPartProps = {
  readonly state: PitchState
  readonly cast: Cast
  readonly onDeeds: (deeds: readonly Deed[]) => void
}

/** Points of the sides, round by round. A round that went ball by ball has its own; any other is counted here. */
export function PointsPart({ state, cast, onDeeds }: PointsPartProps) {
  const rounds = (state.plan?.design.rounds ?? []).flatMap((round, index) =>
    (round.endings ?? []).length > 0 ? [{ round, index }] : [],
  )
  if (rounds.length === 0) return null
  const pointsOf = (round: number, side: PitchSide) =>
    state.points.find((won) => won.round === round && won.side === side)?.points ?? 0
  const isByBall = (index: number) =>
    state.played.some(({ round, endings }) => round === index && endings.length > 0)
  return (
    <section aria-labelledby="points" className="space-y-2">
      <h2 id="points" className="text-2xl font-bold">
        Points of the sides
      </h2>
      {rounds.map(({ round, index }) => (
        <fieldset key={index} className="min-w-0 border-t-2 border-ink pt-1">
          <legend className="text-lg font-semibold">
            Round {index + 1}, {round.title}
          </legend>
          {sidesOf(round, cast).map((side) => (
            <SideRow
              key={side}
              side={side}
              round={index}
              points={pointsOf(index, side)}
              isFixed={isByBall(index)}
              cast={cast}
              onDeeds={onDeeds}
            />
          ))}
        </fieldset>
      ))}
      <p className="text-base">Points belong to a side and to today. They are counted for no child.</p>
    </section>
  )
}

function sidesOf(round: DesignRound, { bibs }: Cast): readonly PitchSide[] {
  if (bibs) return [0, 1]
  return [...new Set((round.endings ?? []).map(({ side }) => side))]
}

type SideRowProps = {
  readonly side: PitchSide
  readonly round: number
  readonly points: number
  readonly isFixed: boolean
  readonly cast: Cast
  readonly onDeeds: (deeds: readonly Deed[]) => void
}

function SideRow({ side, round, points, isFixed, cast, onDeeds }: SideRowProps) {
  const name = typeof side === 'number' ? `${cast.bibs?.[side] ?? side + 1} bibs` : words.role[side]
  const set = (next: number) => onDeeds([{ kind: 'points', round, side, points: next }])
  return (
    <div className="flex items-center gap-1.5 py-1">
      <span className="min-w-0 flex-1 font-bold">
        {typeof side === 'number' ? <Bib name={capital(name)} side={side} /> : capital(name)}
      </span>
      {isFixed ? null : (
        <PitchButton
          aria-label={`${capital(name)}: one point fewer`}
          disabled={points <= 0}
          onClick={() => set(points - 1)}
        >
          −
        </PitchButton>
      )}
      <output aria-label={`Points of ${name}`} className="w-10 text-center text-2xl font-bold tabular-nums">
        {points}
      </output>
      {isFixed ? null : (
        <PitchButton aria-label={`${capital(name)}: one point more`} onClick={() => set(points + 1)}>
          +
        </PitchButton>
      )}
    </div>
  )
}
