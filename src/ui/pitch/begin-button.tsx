import type { PitchState } from '#pitch/pitch-state'
import type { OnDeeds } from '#ui/pitch/on-deeds'
import { PitchButton } from '#ui/pitch/pitch-button'

type BeginButtonProps = {
  readonly state: PitchState
  readonly onDeeds: OnDeeds
  readonly onBegun: () => void
}

/** Closes the register and starts the clock. Where no name was tapped, all are taken to be here. */
export function BeginButton({ state, onDeeds, onBegun }: BeginButtonProps) {
  const here = state.players.filter(({ state: is, isOut }) => is === 'here' && !isOut)
  const expected = state.plan && new Set(state.plan.players.map(({ playerId }) => playerId))
  const untapped = state.players.filter(
    ({ state: is, playerId }) => is === 'missing' && (expected?.has(playerId) ?? true),
  )
  const begin = () => {
    const all = state.isRegisterTaken ? [] : untapped
    onDeeds([
      ...all.map(({ playerId }) => ({ kind: 'register', playerId, state: 'here' }) as const),
      { kind: 'begin' },
    ])
    onBegun()
  }
  const count = state.isRegisterTaken ? here.length : here.length + untapped.length
  return (
    <PitchButton weight="main" className="w-full text-2xl" disabled={count === 0} onClick={begin}>
      {state.isRegisterTaken ? `Begin with ${count}` : `All ${count} are here: begin`}
    </PitchButton>
  )
}
