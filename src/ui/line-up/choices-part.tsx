'use client'

import { type ReactNode, useEffect } from 'react'
import type { LineUpChoice } from '#lineup/draft/line-up-choice'
import type { LineUpSolver } from '#lineup/draft/line-up-solver'
import { type JudgedChoice, useJudgedChoices } from '#ui/line-up/use-judged-choices'
import { Button } from '#ui/page/button'
import { ProgressBar } from '#ui/planning/progress-bar'

/** What could be asked instead, what each would give, and a tap to take it. */
export function ChoicesPart({
  choices,
  solver,
  title,
  start,
  isWanted,
  say,
  onTake,
}: {
  readonly choices: readonly LineUpChoice[]
  readonly solver: LineUpSolver
  readonly title: ReactNode
  /** The words on the button that begins; null: it begins by itself. */
  readonly start: string | null
  /** Whether what a choice comes to is any help. */
  readonly isWanted: (judged: NonNullable<JudgedChoice>) => boolean
  readonly say: (judged: NonNullable<JudgedChoice>) => string
  readonly onTake: (choice: LineUpChoice) => void
}) {
  const { judged, isRunning, start: begin, stop } = useJudgedChoices(choices, solver)
  const beginsItself = start === null && choices.length > 0
  useEffect(() => {
    if (beginsItself) begin()
  }, [beginsItself, begin])
  if (choices.length === 0) return null
  const wanted = choices.flatMap((choice) => {
    const found = judged.get(choice.key)
    return found && isWanted(found) ? [{ choice, found }] : []
  })
  const isOver = !isRunning && judged.size > 0
  return (
    <section className="space-y-2" data-part="choices" aria-live="polite">
      <h3 className="font-semibold">{title}</h3>
      <ul className={wanted.length > 0 ? 'border-t border-rule' : ''}>
        {wanted.map(({ choice, found }) => (
          <li
            key={choice.key}
            className="flex flex-wrap items-center justify-between gap-x-6 gap-y-1 border-b border-rule py-1.5"
          >
            <span className="max-w-prose">
              <span className="font-medium">{capital(choice.words)}:</span> {say(found)}
              {found.lineUp.proofs.minutes.proven && found.lineUp.proofs.promise.proven ? (
                <span className="text-soft"> · nothing fairer is possible so</span>
              ) : null}
            </span>
            <Button type="button" weight="plain" onClick={() => onTake(choice)}>
              Take this
            </Button>
          </li>
        ))}
      </ul>
      {isOver && wanted.length === 0 ? (
        <p className="text-soft">None of the rules alone makes a difference.</p>
      ) : null}
      {isRunning ? (
        <div className="flex flex-wrap items-center gap-3">
          <ProgressBar label="Working out what could be done" value={judged.size} max={choices.length} />
          <span>
            {judged.size} of {choices.length} worked out
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
