'use client'

import { areaPerChildOver } from '#practice/area-per-child'
import { fromMetres, toMetres } from '#practice/area-unit'
import { type AreaUnit, areaUnits } from '#practice/design-sheet'
import { roundsThatRise } from '#practice/round-places'
import { squareText, unitWords } from '#ui/designs/design-words'
import { FieldProblem, NumberField } from '#ui/designs/form/number-field'
import type { EditPartProps } from '#ui/designs/form/rounds-part'
import { TextField } from '#ui/designs/form/text-field'
import { Toggle } from '#ui/entry/toggle'
import { CheckBox } from '#ui/page/check-box'
import { fieldLook } from '#ui/page/field'
import { SectionTitle } from '#ui/page/section-title'

type AboutPartProps = EditPartProps & {
  readonly themes: readonly { readonly id: string; readonly name: string; readonly depth: number }[]
}

/** Name, theme, note and the ground it is played on. */
export function AboutPart({ design, themes, problemOf, onChange }: AboutPartProps) {
  const set = (change: Partial<typeof design>) => onChange((held) => ({ ...held, ...change }))
  return (
    <section className="space-y-5">
      <SectionTitle>What it is</SectionTitle>
      <TextField
        label="Name"
        value={design.name}
        most={80}
        problem={problemOf('name')}
        onChange={(name) => set({ name })}
      />
      <label className="block max-w-prose">
        <span className="block text-sm font-medium text-soft">Theme</span>
        <select
          className={`${fieldLook} mt-1`}
          value={design.themeId ?? ''}
          onChange={(event) => set({ themeId: event.target.value || null })}
        >
          <option value="">No theme</option>
          {themes.map(({ id, name, depth }) => (
            <option key={id} value={id}>
              {'– '.repeat(depth)}
              {name}
            </option>
          ))}
        </select>
      </label>
      <FieldProblem text={problemOf('themeId')} />
      <TextField
        label="Note for the coach"
        hint="what to look for and to say; may stay empty"
        value={design.note}
        most={2000}
        lines={3}
        problem={problemOf('note')}
        onChange={(note) => set({ note })}
      />
      <GroundPart design={design} problemOf={problemOf} set={set} />
    </section>
  )
}

type GroundPartProps = Pick<EditPartProps, 'design' | 'problemOf'> & {
  readonly set: (change: Partial<EditPartProps['design']>) => void
}

function GroundPart({ design, problemOf, set }: GroundPartProps) {
  const { areaUnit: unit } = design
  const area = areaPerChildOver(design, roundsThatRise(design.rounds))
  const hasSize = design.areaLengthM > 0 && design.areaWidthM > 0
  return (
    <>
      <div className="flex flex-wrap items-start gap-x-6 gap-y-3">
        <NumberField
          // Another unit, another text.
          key={`length ${unit}`}
          label="Length"
          unit={unitWords[unit]}
          value={fromMetres(design.areaLengthM, unit)}
          problem={problemOf('areaLengthM')}
          onChange={(length) => set({ areaLengthM: toMetres(length, unit) })}
        />
        <NumberField
          key={`width ${unit}`}
          label="Width"
          unit={unitWords[unit]}
          value={fromMetres(design.areaWidthM, unit)}
          problem={problemOf('areaWidthM')}
          onChange={(width) => set({ areaWidthM: toMetres(width, unit) })}
        />
        <Toggle<AreaUnit>
          label="Written in"
          options={areaUnits.map((value) => ({ value, label: value === 'm' ? 'metres' : 'yards' }))}
          value={unit}
          onChange={(areaUnit) => set({ areaUnit })}
        />
      </div>
      {area && hasSize ? (
        <p className="text-soft">
          All that is marked out, together: {squareText(area.least, unit)}
          {Math.round(area.least) === Math.round(area.most) ? '' : ` to ${squareText(area.most, unit)}`} for
          each child.
        </p>
      ) : null}
      <CheckBox
        label="Two halves that mirror each other"
        hint="The goals stand back to back in the middle; every area is there twice."
        isTicked={design.isMirrored}
        onChange={(isMirrored) => set({ isMirrored })}
      />
      <CheckBox
        label="Heading the ball is part of it"
        hint="The page then says what is advised for the age."
        isTicked={design.hasHeading}
        onChange={(hasHeading) => set({ hasHeading })}
      />
    </>
  )
}
