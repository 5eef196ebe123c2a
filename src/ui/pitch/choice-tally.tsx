import type { PitchState } from '#pitch/pitch-state'
import type { UpcomingRound } from '#pitch/upcoming'
import type { DesignRound } from '#practice/design'
import type { Cast } from '#ui/pitch/cast'
import { sizeWords } from '#ui/pitch/choice-size'
import type { OnDeeds } from '#ui/pitch/on-deeds'
import { PitchButton } from '#ui/pitch/pitch-button'
import { choicesOf, oneLess, oneMore, plannedSize, steppingOff } from '#ui/pitch/round-choices'
import { counted, listed } from '#ui/plural'

type ChoiceTallyProps = {
  readonly state: PitchState
  readonly round: UpcomingRound
  readonly choice: NonNullable<DesignRound['choice']>
  readonly cast: Cast
  readonly onDeeds: OnDeeds
}

/** In a round that is tapped once: how often each size was chosen, in the order they are tapped. Nothing has to be. */
export function ChoiceTally({ state, round, choice, cast, onDeeds }: ChoiceTallyProps) {
  const { choices } = state
  const said = choicesOf(round, choices)
  const left = said.filter((one) => one === null).length
  const planned = plannedSize(round.turns[0].turn, choice.sizes)
  const asPlanned = planned === null ? null : choice.sizes[planned]
  return (
    <fieldset className="border-2 border-ink p-2">
      <legend className="px-1 font-bold">
        {choice.by === 'attack' ? 'What did the attackers choose?' : 'What did you choose?'}
      </legend>
      {choice.sizes.map((size, index) => {
        const words = sizeWords(size)
        const stepsOff = left > 0 ? steppingOff(state, round, size) : []
        const count = said.filter((one) => one?.size === index).length
        return (
          <div key={words} className="flex items-center gap-2 py-1">
            <span className="min-w-0 flex-1 leading-tight font-semibold">
              {words}
              {stepsOff.length > 0 ? (
                <span className="block text-base font-normal">
                  {listed(stepsOff.map(cast.nameOf))} {stepsOff.length > 1 ? 'step' : 'steps'} off
                </span>
              ) : null}
            </span>
            <PitchButton
              aria-label={`${words}: one ball fewer`}
              disabled={count === 0}
              onClick={() => onDeeds(oneLess(index, { round, choices }))}
            >
              −
            </PitchButton>
            <output
              aria-label={`Balls: ${words}`}
              className="w-8 text-center text-2xl font-bold tabular-nums"
            >
              {count}
            </output>
            <PitchButton
              aria-label={`${words}: one ball more`}
              disabled={left === 0}
              onClick={() => onDeeds(oneMore(index, { round, choices, cast }))}
            >
              +
            </PitchButton>
          </div>
        )
      })}
      <p className="text-base">{restWords(left, said.length, asPlanned ? sizeWords(asPlanned) : null)}</p>
    </fieldset>
  )
}

/** What becomes of the balls that nothing was tapped of. */
function restWords(left: number, all: number, planned: string | null): string {
  if (left === 0) return 'Every ball has its size.'
  const balls = left === all ? 'Balls' : `The other ${counted(left, 'ball')}`
  return planned === null
    ? `${balls} of which nothing is tapped are written down as planned.`
    : `${balls} of which nothing is tapped count as planned: ${planned}.`
}
