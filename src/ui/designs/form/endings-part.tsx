'use client'

import type { DesignRound, Ending } from '#practice/design'
import { freeId } from '#practice/new-design'
import { EndingFields } from '#ui/designs/form/ending-fields'
import { Button } from '#ui/page/button'

type EndingsPartProps = {
  readonly round: DesignRound
  readonly problemOf: (path: string) => string | null
  readonly onChange: (change: Partial<DesignRound>) => void
}

/** What ends a turn, and what it is worth to whom. Points belong to a side and a practice. */
export function EndingsPart({ round, problemOf, onChange }: EndingsPartProps) {
  const endings = round.endings ?? []
  const set = (index: number, change: Partial<Ending>) =>
    onChange({ endings: endings.map((ending, at) => (at === index ? { ...ending, ...change } : ending)) })
  const add = () => {
    const id = freeId(
      'e',
      endings.map((ending) => ending.id),
    )
    const first = endings.length === 0
    onChange({
      endings: [...endings, { id, words: first ? 'Goal' : '', side: first ? 'attack' : 'defend', points: 1 }],
    })
  }
  return (
    <fieldset className="space-y-3">
      <legend className="text-sm font-medium text-soft">
        What ends a turn and counts {endings.length === 0 ? '(nothing yet)' : ''}
      </legend>
      {endings.map((ending, index) => (
        <div
          key={ending.id}
          className="flex flex-wrap items-end gap-x-4 gap-y-2 border-l-2 border-rule-strong pl-3"
        >
          <EndingFields
            label={`Ending ${index + 1}`}
            ending={ending}
            problem={problemOf(`endings.${index}`)}
            onChange={(change) => set(index, change)}
          />
          <Button
            type="button"
            weight="plain"
            aria-label={`Take out ending ${index + 1}`}
            onClick={() => onChange({ endings: endings.toSpliced(index, 1) })}
          >
            Take out
          </Button>
        </div>
      ))}
      <Button type="button" weight="plain" onClick={add}>
        Add an ending
      </Button>
    </fieldset>
  )
}
