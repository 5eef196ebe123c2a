'use client'

import type { DesignChange } from '#practice/adaptation'
import { plainChange } from '#practice/new-design'
import { seatRoles } from '#practice/turn'
import { EndingFields } from '#ui/designs/form/ending-fields'
import { FieldProblem, NumberField } from '#ui/designs/form/number-field'
import { TextField } from '#ui/designs/form/text-field'
import { Stepper } from '#ui/entry/stepper'
import { Button } from '#ui/page/button'
import { fieldLook } from '#ui/page/field'

type ChangesEditorProps = {
  readonly changes: readonly DesignChange[]
  /** Titles, by their places. */
  readonly rounds: readonly string[]
  readonly problemOf: (path: string) => string | null
  readonly onChange: (changes: readonly DesignChange[]) => void
}

const whats: Readonly<Record<DesignChange['what'], string>> = {
  area: 'the area is larger or smaller',
  places: 'more or fewer in each area',
  areas: 'more or fewer areas',
  turns: 'longer, shorter, more or fewer turns',
  ending: 'another ending counts',
  condition: 'a rule of play, or other equipment, in words',
}

/** What an adaptation does, one thing after another. */
export function ChangesEditor({ changes, rounds, problemOf, onChange }: ChangesEditorProps) {
  return (
    <div className="space-y-3">
      {changes.map((change, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: changes have no other name
        <div key={index} className="space-y-3 border-l-2 border-rule-strong pl-3">
          <label className="block max-w-prose">
            <span className="block text-sm font-medium text-soft">Change {index + 1}</span>
            <select
              className={`${fieldLook} mt-1`}
              value={change.what}
              onChange={(event) =>
                onChange(changes.with(index, plainChange(event.target.value as DesignChange['what'])))
              }
            >
              {Object.entries(whats).map(([what, words]) => (
                <option key={what} value={what}>
                  {words}
                </option>
              ))}
            </select>
          </label>
          <ChangeFields
            change={change}
            rounds={rounds}
            onChange={(next) => onChange(changes.with(index, next))}
          />
          <FieldProblem text={problemOf(`changes.${index}`)} />
          <Button type="button" weight="plain" onClick={() => onChange(changes.toSpliced(index, 1))}>
            Take the change out
          </Button>
        </div>
      ))}
      <Button type="button" weight="plain" onClick={() => onChange([...changes, plainChange('condition')])}>
        Add a change
      </Button>
    </div>
  )
}

type ChangeFieldsProps = {
  readonly change: DesignChange
  readonly rounds: readonly string[]
  readonly onChange: (change: DesignChange) => void
}

function ChangeFields({ change, rounds, onChange }: ChangeFieldsProps) {
  if (change.what === 'area')
    return (
      <div className="flex flex-wrap gap-x-6 gap-y-3">
        <TimesField
          label="Length times"
          value={change.lengthTimes}
          onChange={(lengthTimes) => onChange({ ...change, lengthTimes })}
        />
        <TimesField
          label="Width times"
          value={change.widthTimes}
          onChange={(widthTimes) => onChange({ ...change, widthTimes })}
        />
      </div>
    )
  return (
    <>
      <label className="block max-w-prose">
        <span className="block text-sm font-medium text-soft">In</span>
        <select
          className={`${fieldLook} mt-1`}
          value={change.round ?? ''}
          onChange={(event) =>
            onChange({ ...change, round: event.target.value === '' ? null : Number(event.target.value) })
          }
        >
          <option value="">every round but the free game</option>
          {rounds.map((title, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: rounds have no other name
            <option key={index} value={index}>
              {index + 1}. {title}
            </option>
          ))}
        </select>
      </label>
      <RoundChangeFields change={change} onChange={onChange} />
    </>
  )
}

type RoundChangeFieldsProps = {
  readonly change: Exclude<DesignChange, { readonly what: 'area' }>
  readonly onChange: (change: DesignChange) => void
}

const placeLabels = { attack: 'Attack', defend: 'Defence', keep: 'Goal' }

function RoundChangeFields({ change, onChange }: RoundChangeFieldsProps) {
  switch (change.what) {
    case 'places':
      return (
        <div className="flex flex-wrap gap-4">
          {seatRoles.map((role) => (
            <Stepper
              key={role}
              label={`${placeLabels[role]}, more (−: fewer)`}
              value={change[role]}
              least={-5}
              most={5}
              onChange={(count) => onChange({ ...change, [role]: count })}
            />
          ))}
        </div>
      )
    case 'areas':
      return (
        <Stepper
          label="Areas more (−: fewer)"
          value={change.by}
          least={-5}
          most={5}
          onChange={(by) => onChange({ ...change, by })}
        />
      )
    case 'turns':
      return (
        <div className="flex flex-wrap gap-x-6 gap-y-3">
          <TimesField
            label="Length of a turn times"
            value={change.secondsTimes}
            onChange={(secondsTimes) => onChange({ ...change, secondsTimes })}
          />
          <TimesField
            label="Number of turns times"
            value={change.countTimes}
            onChange={(countTimes) => onChange({ ...change, countTimes })}
          />
        </div>
      )
    case 'ending':
      return (
        <div className="flex flex-wrap items-end gap-x-4 gap-y-2">
          <EndingFields
            label="Ending"
            ending={change.ending}
            onChange={(part) => onChange({ ...change, ending: { ...change.ending, ...part } })}
          />
        </div>
      )
    case 'condition':
      return (
        <TextField
          label="In words"
          value={change.words}
          most={300}
          onChange={(words) => onChange({ ...change, words })}
        />
      )
  }
}

/** 1 leaves it as it is. */
function TimesField({
  label,
  value,
  onChange,
}: {
  readonly label: string
  readonly value: number
  readonly onChange: (value: number) => void
}) {
  return <NumberField label={label} hint="1: as it is" value={value} onChange={onChange} />
}
