'use client'

import type { ReactNode } from 'react'
import type { AreaShape } from '#practice/design'
import { seatRoles } from '#practice/turn'
import { FieldProblem } from '#ui/designs/form/number-field'
import { Stepper } from '#ui/entry/stepper'

type ShapeSteppersProps = {
  /** Which area, to be read out. */
  readonly name: string
  readonly shape: AreaShape
  readonly problem?: string | null
  readonly onChange: (shape: AreaShape) => void
  readonly children?: ReactNode
}

const labels = { attack: 'Attack', defend: 'Defence', keep: 'Goal' }

/** How many of each role an area takes. */
export function ShapeSteppers({ name, shape, problem, onChange, children }: ShapeSteppersProps) {
  return (
    <fieldset className="border-l-2 border-rule-strong pl-3">
      <legend className="font-medium">{name}</legend>
      <div className="flex flex-wrap items-end gap-x-4 gap-y-2">
        {seatRoles.map((role) => (
          <Stepper
            key={role}
            label={labels[role]}
            value={shape[role]}
            least={0}
            most={11}
            onChange={(count) => onChange({ ...shape, [role]: count })}
          />
        ))}
        {children}
      </div>
      <FieldProblem text={problem} />
    </fieldset>
  )
}
