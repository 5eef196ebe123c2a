'use client'

import type { DesignRound } from '#practice/design'
import { FieldProblem, NumberField } from '#ui/designs/form/number-field'
import { ShapeSteppers } from '#ui/designs/form/shape-steppers'
import { Toggle } from '#ui/entry/toggle'
import { Button } from '#ui/page/button'

type ChoicePartProps = {
  readonly round: DesignRound
  readonly problemOf: (path: string) => string | null
  readonly onChange: (change: Partial<DesignRound>) => void
}

type ChoosesBy = 'nobody' | 'attack' | 'coach'

/** Who picks the size of a turn, from which sizes, and what each is worth. */
export function ChoicePart({ round, problemOf, onChange }: ChoicePartProps) {
  const { choice } = round
  const sizes = choice?.sizes ?? []
  const setSizes = (next: typeof sizes) => choice && onChange({ choice: { ...choice, sizes: next } })
  return (
    <div className="space-y-3">
      <Toggle<ChoosesBy>
        label="Who picks the size of each turn"
        options={[
          { value: 'nobody', label: 'nobody' },
          { value: 'attack', label: 'the attackers' },
          { value: 'coach', label: 'the coach' },
        ]}
        value={choice?.by ?? 'nobody'}
        onChange={(by) =>
          onChange({ choice: by === 'nobody' ? null : { by, sizes: choice?.sizes ?? firstSizes(round) } })
        }
      />
      {sizes.map(({ shape, points }, index) => (
        <ShapeSteppers
          // biome-ignore lint/suspicious/noArrayIndexKey: sizes have no other name
          key={index}
          name={`Size ${index + 1}`}
          shape={shape}
          problem={problemOf(`choice.sizes.${index}`)}
          onChange={(next) => setSizes(sizes.with(index, { shape: next, points }))}
        >
          <NumberField
            label="Points"
            value={points}
            onChange={(next) => setSizes(sizes.with(index, { shape, points: next }))}
          />
          <Button
            type="button"
            weight="plain"
            aria-label={`Take out size ${index + 1}`}
            onClick={() => setSizes(sizes.toSpliced(index, 1))}
          >
            Take out
          </Button>
        </ShapeSteppers>
      ))}
      <FieldProblem text={problemOf('choice')} />
      {choice ? (
        <Button
          type="button"
          weight="plain"
          onClick={() => {
            const last = sizes.at(-1)
            setSizes([...sizes, last ?? { shape: round.stations[0] ?? noPlaces, points: 1 }])
          }}
        >
          Add a size
        </Button>
      ) : null}
    </div>
  )
}

const noPlaces = { attack: 0, defend: 0, keep: 0 }

/** The area as it is for one point, and one attacker fewer for two. */
function firstSizes({ stations }: DesignRound) {
  const shape = stations[0] ?? noPlaces
  const harder = { ...shape, attack: Math.max(1, shape.attack - 1) }
  return [
    { shape, points: 1 },
    { shape: harder, points: 2 },
  ]
}
