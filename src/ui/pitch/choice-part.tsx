import type { DesignRound } from '#practice/design'
import type { PlayerId } from '#squad/player'
import type { Cast } from '#ui/pitch/cast'
import { sizeWords } from '#ui/pitch/choice-size'
import { listed } from '#ui/plural'

type ChoicePartProps = {
  readonly choice: NonNullable<DesignRound['choice']>
  /** Place in the list of sizes; null: not chosen yet. */
  readonly chosen: number | null
  readonly stepsOff: readonly PlayerId[]
  readonly cast: Cast
  readonly onChoose: (size: number) => void
}

/** Before a choice turn: which of the sizes it is to be, and who steps off for it. */
export function ChoicePart({ choice, chosen, stepsOff, cast, onChoose }: ChoicePartProps) {
  return (
    <fieldset className="space-y-2 border-2 border-ink p-2">
      <legend className="px-1 font-bold">
        {choice.by === 'attack' ? 'The attackers choose' : 'You choose'}
      </legend>
      {choice.sizes.map((size, index) => (
        <button
          key={sizeWords(size)}
          type="button"
          aria-pressed={chosen === index}
          onClick={() => onChoose(index)}
          className="tap w-full cursor-pointer touch-manipulation border-2 border-ink bg-leaf px-3 text-left font-semibold aria-pressed:bg-ink aria-pressed:text-white"
        >
          {sizeWords(size)}
        </button>
      ))}
      {stepsOff.length > 0 ? (
        <p className="font-semibold">Steps off: {listed(stepsOff.map(cast.nameOf))}</p>
      ) : null}
    </fieldset>
  )
}
