'use client'

import { useState } from 'react'
import type { PitchState } from '#pitch/pitch-state'
import type { SquadId } from '#squad/squad'
import { paths } from '#ui/paths'
import { AsPlannedSheet } from '#ui/pitch/as-planned-sheet'
import { asideSentences } from '#ui/pitch/aside-words'
import type { Cast } from '#ui/pitch/cast'
import type { OnDeeds } from '#ui/pitch/on-deeds'
import { PitchButton } from '#ui/pitch/pitch-button'
import type { PitchSettings } from '#ui/pitch/pitch-settings'
import { type Refusal, refusalSentence } from '#ui/pitch/refusal-notice'
import { ToKnow } from '#ui/pitch/to-know'

type MoreScreenProps = {
  readonly sessionId: string
  readonly squadId: SquadId
  readonly isHelper: boolean
  readonly state: PitchState
  readonly cast: Cast
  readonly settings: PitchSettings
  readonly onSettings: (settings: PitchSettings) => void
  readonly onDeeds: OnDeeds
  /** Why the book did not take something that was tapped here. */
  readonly refusals: readonly Refusal[]
}

/** What is not needed at every ball. */
export function MoreScreen(props: MoreScreenProps) {
  const { sessionId, squadId, isHelper, state, cast, settings, onSettings, onDeeds, refusals } = props
  const [isAsking, setIsAsking] = useState(false)
  const asides = asideSentences(state.setAside.map(({ why }) => why))
  const refused = new Set(refusals.map((refusal) => `Not taken: ${refusalSentence(refusal, cast)}`))
  return (
    <section aria-labelledby="more" className="space-y-4">
      <h2 id="more" className="text-2xl font-bold">
        More
      </h2>
      <Either
        legend="On the screen"
        options={['A round, one tap for it', 'One ball at a time']}
        chosen={settings.isBallByBall ? 1 : 0}
        onChoose={(index) => onSettings({ ...settings, isBallByBall: index === 1 })}
      />
      <Either
        legend="Points of the sides"
        options={['Count them', 'No points']}
        chosen={settings.countsPoints ? 0 : 1}
        onChoose={(index) => onSettings({ ...settings, countsPoints: index === 0 })}
      />
      {state.turns.length > 0 && state.status !== 'ended' ? (
        <PitchButton className="w-full" onClick={() => setIsAsking(true)}>
          Nothing tapped? As planned…
        </PitchButton>
      ) : null}
      <ToKnow sentences={[...refused, ...asides]} />
      <ul className="font-semibold">
        {isHelper ? null : (
          <>
            <li>
              <a href={paths.helpers(squadId, { sessionId })}>A helper joins (needs a signal)</a>
            </li>
            <li>
              <a href={paths.session(squadId, { sessionId })}>This practice in the book (needs a signal)</a>
            </li>
          </>
        )}
        <li>
          <a href={paths.pitch()}>The practices on this phone</a>
        </li>
      </ul>
      {isAsking ? (
        <AsPlannedSheet state={state} cast={cast} onDeeds={onDeeds} onClose={() => setIsAsking(false)} />
      ) : null}
    </section>
  )
}

type EitherProps = {
  readonly legend: string
  readonly options: readonly [string, string]
  readonly chosen: 0 | 1
  readonly onChoose: (index: number) => void
}

function Either({ legend, options, chosen, onChoose }: EitherProps) {
  return (
    <fieldset>
      <legend className="font-semibold">{legend}</legend>
      <div className="mt-1 grid grid-cols-2">
        {options.map((option, index) => (
          <button
            key={option}
            type="button"
            aria-pressed={index === chosen}
            onClick={() => onChoose(index)}
            className="tap cursor-pointer touch-manipulation border-2 border-ink bg-leaf px-2 leading-tight font-semibold aria-pressed:bg-ink aria-pressed:text-white"
          >
            {option}
          </button>
        ))}
      </div>
    </fieldset>
  )
}
