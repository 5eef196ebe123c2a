'use client'

import { useEffect } from 'react'
import type { LineUpChoice } from '#lineup/draft/line-up-choice'
import { type FindChoices, useChoices } from '#ui/line-up/use-choices'
import { Button } from '#ui/page/button'
import { ProgressBar } from '#ui/planning/progress-bar'

/** What could be asked instead, what each would give, and a tap to take it. */
export function ChoicesPart({
  title,
  start,
  none,
  find,
  onTake,
}: {
  readonly title: string
  /** The words on the button that begins; null: it begins by itself. */
  readonly start: string | null
  /** Said where nothing was found. */
  readonly none: string
  readonly find: FindChoices
  readonly onTake: (choice: LineUpChoice) => void
}) {
  const { found, progress, isOver, start: begin, stop } = useChoices(find)
  const beginsItself = start === null
  useEffect(() => {
    if (beginsItself) begin()
  }, [beginsItself, begin])
  return (
    <section className="space-y-2" data-part="choices" aria-live="polite">
      <h3 className="font-semibold">{title}</h3>
      <ul className={found.length > 0 ? 'border-t border-rule' : ''}>
        {found.map((choice) => (
          <li
            key={choice.key}
            className="flex flex-wrap items-center justify-between gap-x-6 gap-y-1 border-b border-rule py-1.5"
          >
            <span className="max-w-prose">
              {choice.words ? <span className="font-medium">{capital(choice.words)}: </span> : null}
              {choice.says}
              {choice.isProven ? <span className="text-soft"> Nothing fairer is possible so.</span> : null}
            </span>
            <Button type="button" weight="plain" onClick={() => onTake(choice)}>
              Take this
            </Button>
          </li>
        ))}
      </ul>
      {isOver && found.length === 0 ? <p className="text-soft">{none}</p> : null}
      {progress ? (
        <div className="flex flex-wrap items-center gap-3">
          <ProgressBar label="Working out what could be done" value={progress.done} max={progress.of} />
          <span>
            {progress.done} of {progress.of} worked out
          </span>
          <Button type="button" weight="plain" onClick={stop}>
            Stop
          </Button>
        </div>
      ) : start !== null && !isOver ? (
        <Button type="button" weight="plain" onClick={begin}>
          {start}
        </Button>
      ) : null}
    </section>
  )
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
