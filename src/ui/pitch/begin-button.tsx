import { allHere } from '#pitch/all-here'
import type { PitchState } from '#pitch/pitch-state'
import type { OnDeeds } from '#ui/pitch/on-deeds'
import { PitchButton } from '#ui/pitch/pitch-button'
import type { ListedPlayer } from '#ui/pitch/register-words'

type BeginButtonProps = {
  readonly state: Pick<PitchState, 'isRegisterTaken'>
  readonly players: readonly ListedPlayer[]
  readonly onDeeds: OnDeeds
  readonly onBegun: () => void
}

/** Closes the register and starts the clock. Where no name was tapped, all who are expected are taken to be here. */
export function BeginButton({ state: { isRegisterTaken }, players, onDeeds, onBegun }: BeginButtonProps) {
  const here = players.filter(({ state }) => state === 'here')
  const untapped = players.filter(({ state, isExpected }) => state === 'missing' && isExpected)
  const begin = () => {
    const all = isRegisterTaken ? [] : untapped
    onDeeds([...allHere(all.map(({ id }) => id)), { kind: 'begin' }])
    onBegun()
  }
  const count = isRegisterTaken ? here.length : here.length + untapped.length
  return (
    <PitchButton weight="main" className="w-full text-2xl" disabled={count === 0} onClick={begin}>
      {isRegisterTaken ? `Begin with ${count}` : `All ${count} are here: begin`}
    </PitchButton>
  )
}
