'use client'

import { FieldProblem } from '#ui/designs/form/number-field'
import type { EditPartProps } from '#ui/designs/form/rounds-part'
import { TextField } from '#ui/designs/form/text-field'
import { Toggle } from '#ui/entry/toggle'
import { CheckBox } from '#ui/page/check-box'
import { SectionTitle } from '#ui/page/section-title'

/** Two sides in their bibs for the whole practice, or none. */
export function SidesPart({ design, problemOf, onChange }: EditPartProps) {
  const { sides } = design
  const set = (next: typeof sides) => onChange((held) => ({ ...held, sides: next }))
  return (
    <section className="space-y-4">
      <SectionTitle>Sides</SectionTitle>
      <CheckBox
        label="Two sides in bibs for the whole practice"
        isTicked={!!sides}
        onChange={(isTicked) => set(isTicked ? { names: ['Yellow', 'Blue'], swap: 'eachRound' } : null)}
      />
      {sides ? (
        <>
          <div className="grid max-w-prose grid-cols-2 gap-3">
            {([0, 1] as const).map((side) => (
              <TextField
                key={side}
                label={side === 0 ? 'Attacks first' : 'Defends first'}
                value={sides.names[side]}
                most={40}
                problem={problemOf(`sides.${side}`)}
                onChange={(name) =>
                  set({ ...sides, names: side === 0 ? [name, sides.names[1]] : [sides.names[0], name] })
                }
              />
            ))}
          </div>
          <Toggle
            label="Attack and defence change over"
            options={[
              { value: 'eachRound', label: 'after each round' },
              { value: 'never', label: 'never' },
            ]}
            value={sides.swap}
            onChange={(swap) => set({ ...sides, swap })}
          />
          <FieldProblem text={problemOf('sides.swap')} />
        </>
      ) : null}
    </section>
  )
}
