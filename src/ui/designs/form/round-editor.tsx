'use client'

import type { DesignRound } from '#practice/design'
import type { DraftDesign } from '#practice/design-faults'
import { kindOfRound } from '#practice/round-kind'
import { placesOfAll } from '#practice/round-places'
import { shapesText } from '#practice/shape-text'
import { AreaDrawing } from '#ui/designs/area-drawing'
import { kindWords } from '#ui/designs/design-words'
import { ChoicePart } from '#ui/designs/form/choice-part'
import { EndingsPart } from '#ui/designs/form/endings-part'
import { FieldProblem, NumberField } from '#ui/designs/form/number-field'
import { ShapeSteppers } from '#ui/designs/form/shape-steppers'
import { TextField } from '#ui/designs/form/text-field'
import { Toggle } from '#ui/entry/toggle'
import { Button } from '#ui/page/button'
import { CheckBox } from '#ui/page/check-box'

export type RoundEditorProps = {
  readonly design: DraftDesign
  readonly round: DesignRound
  readonly problemOf: (path: string) => string | null
  readonly onChange: (change: Partial<DesignRound>) => void
}

/** Everything of one round. */
export function RoundEditor({ design, round, problemOf, onChange }: RoundEditorProps) {
  const { keep } = placesOfAll(round.stations)
  return (
    <div className="space-y-5">
      <div className="grid gap-x-8 gap-y-3 md:grid-cols-2">
        <TextField
          label="Title"
          value={round.title}
          most={120}
          problem={problemOf('title')}
          onChange={(title) => onChange({ title })}
        />
        <Toggle
          label="What it is"
          options={[
            { value: 'turns', label: 'turns' },
            { value: 'free', label: 'the free game' },
          ]}
          value={round.isFreeGame ? 'free' : 'turns'}
          onChange={(what) =>
            onChange(
              what === 'free'
                ? { isFreeGame: true, turnCount: 2, gapSeconds: 0, choice: null, isUntilDead: false }
                : { isFreeGame: false },
            )
          }
        />
      </div>
      <TurnsPart round={round} problemOf={problemOf} onChange={onChange} />
      <AreasPart round={round} problemOf={problemOf} onChange={onChange} />
      <p>
        {shapesText(round.stations) || 'No area'}: {kindWords[kindOfRound(round)]}.
      </p>
      {round.stations.length > 0 ? <AreaDrawing sheet={design} round={round} /> : null}
      {keep > 0 ? (
        <CheckBox
          label="Keepers stay for the whole round"
          hint="Unticked, they change with the turns."
          isTicked={round.keepersStay === true}
          onChange={(keepersStay) => onChange({ keepersStay })}
        />
      ) : null}
      {round.isFreeGame ? null : <ChoicePart round={round} problemOf={problemOf} onChange={onChange} />}
      <EndingsPart round={round} problemOf={problemOf} onChange={onChange} />
      <ConditionsPart round={round} onChange={onChange} />
    </div>
  )
}

type PartProps = Omit<RoundEditorProps, 'design'>

function TurnsPart({ round, problemOf, onChange }: PartProps) {
  const seconds = round.isFreeGame
    ? 'Seconds a half'
    : round.isUntilDead
      ? 'Seconds a ball lives'
      : 'Seconds a turn'
  return (
    <div className="flex flex-wrap items-start gap-x-6 gap-y-3">
      <NumberField
        label={round.isFreeGame ? 'Halves' : 'Turns'}
        value={round.turnCount}
        problem={problemOf('turnCount')}
        onChange={(turnCount) => onChange({ turnCount })}
      />
      {round.isFreeGame ? null : (
        <Toggle
          label="A turn lasts"
          options={[
            { value: 'time', label: 'a time' },
            { value: 'dead', label: 'until the ball is dead' },
          ]}
          value={round.isUntilDead ? 'dead' : 'time'}
          onChange={(way) => onChange({ isUntilDead: way === 'dead' })}
        />
      )}
      <NumberField
        label={seconds}
        hint={round.isUntilDead ? 'about' : undefined}
        value={round.turnSeconds}
        unit="s"
        problem={problemOf('turnSeconds')}
        onChange={(turnSeconds) => onChange({ turnSeconds })}
      />
      <NumberField
        label="Seconds between"
        value={round.gapSeconds}
        unit="s"
        problem={problemOf('gapSeconds')}
        onChange={(gapSeconds) => onChange({ gapSeconds })}
      />
    </div>
  )
}

const firstArea = { attack: 2, defend: 1, keep: 0 }

function AreasPart({ round, problemOf, onChange }: PartProps) {
  const { stations } = round
  return (
    <div className="space-y-3">
      {stations.map((shape, index) => (
        <ShapeSteppers
          // biome-ignore lint/suspicious/noArrayIndexKey: areas have no other name
          key={index}
          name={`Area ${index + 1}`}
          shape={shape}
          problem={problemOf(`stations.${index}`)}
          onChange={(next) => onChange({ stations: stations.with(index, next) })}
        >
          <Button
            type="button"
            weight="plain"
            aria-label={`Take out area ${index + 1}`}
            onClick={() => onChange({ stations: stations.toSpliced(index, 1) })}
          >
            Take out
          </Button>
        </ShapeSteppers>
      ))}
      <FieldProblem text={problemOf('stations')} />
      <Button
        type="button"
        weight="plain"
        onClick={() => onChange({ stations: [...stations, stations.at(-1) ?? firstArea] })}
      >
        Add an area
      </Button>
    </div>
  )
}

function ConditionsPart({ round, onChange }: Omit<PartProps, 'problemOf'>) {
  const text = (round.conditions ?? []).join('\n')
  return (
    <TextField
      label="Rules of play"
      hint="one a line; may stay empty"
      value={text}
      most={2000}
      lines={2}
      onChange={(next) => onChange({ conditions: next === '' ? [] : next.split('\n') })}
    />
  )
}
