'use client'

import { useState } from 'react'
import type { Deed } from '#pitch/pitch-event'
import type { PitchPack } from '#pitch/pitch-pack'
import type { PitchState } from '#pitch/pitch-state'
import { type SeatRole, seatRoles } from '#practice/turn'
import type { PlayerId } from '#squad/player'
import type { Cast } from '#ui/pitch/cast'
import { movesOf } from '#ui/pitch/moves'
import { NameChoice } from '#ui/pitch/name-choice'
import type { OnDeeds } from '#ui/pitch/on-deeds'
import { PitchButton } from '#ui/pitch/pitch-button'
import { placeWords } from '#ui/pitch/places-card'
import { PlayerSheet } from '#ui/pitch/player-sheet'
import { listedPlayers } from '#ui/pitch/register-words'
import { Sheet } from '#ui/pitch/sheet'
import { words } from '#ui/words'

type PlayerMovesProps = {
  readonly playerId: PlayerId
  readonly pack: Omit<PitchPack, 'events' | 'cursor'>
  readonly state: PitchState
  readonly cast: Cast
  readonly onDeeds: OnDeeds
  readonly onNotOut: (playerId: PlayerId) => void
  readonly onClose: () => void
}

/** What can happen to one player while balls are played: swap, pass, leave, come back. */
export function PlayerMoves({ playerId, pack, state, cast, onDeeds, onNotOut, onClose }: PlayerMovesProps) {
  const [step, setStep] = useState<'player' | 'swap' | 'instead'>('player')
  const moves = movesOf(playerId, { pack, state })
  const { own, stations, turn, substitutes } = moves
  const player = listedPlayers(state, pack).find(({ id }) => id === playerId)
  const name = cast.nameOf(playerId)
  const make = (deeds: readonly Deed[]) => {
    if (deeds.length > 0) onDeeds(deeds)
    onClose()
  }
  if (!player) return null
  if (step === 'swap') {
    return (
      <Sheet title={`${name} and …`} onClose={onClose}>
        <p>{state.live ? 'They change places now.' : 'They change places for the rest of this round.'}</p>
        <NameChoice ids={moves.partners} nameOf={cast.nameOf} onChoose={(other) => make(moves.swap(other))} />
      </Sheet>
    )
  }
  if (step === 'instead') {
    return (
      <Sheet title={`Who goes in for ${name}?`} onClose={() => make(moves.fill(null))}>
        <p>Whoever has waited longest stands first.</p>
        <NameChoice
          ids={substitutes}
          nameOf={cast.nameOf}
          onChoose={(instead) => make(moves.fill(instead))}
        />
        <PitchButton className="w-full" onClick={() => make(moves.fill(null))}>
          Nobody
        </PitchButton>
      </Sheet>
    )
  }
  const pass = (role: SeatRole) => {
    if (turn === null) return
    onDeeds([{ kind: 'passed', turn, playerId, role }])
    if (own && substitutes.length > 0) setStep('instead')
    else onClose()
  }
  const offered: readonly SeatRole[] = own
    ? [own.role]
    : seatRoles.filter((role) => stations.some((station) => station[role].length > 0))
  return (
    <PlayerSheet
      player={player}
      isBegun={state.status !== 'notBegun'}
      onClose={onClose}
      onNotOut={onNotOut}
      onRegister={(id, is) => {
        onDeeds([{ kind: 'register', playerId: id, state: is }])
        if (state.live && own && is !== 'here' && substitutes.length > 0) setStep('instead')
        else onClose()
      }}
    >
      {player.state === 'here' && turn !== null ? (
        <>
          <p className="text-lg">{own ? placeWords(own, stations.length) : words.doing.rest}</p>
          {moves.partners.length > 0 ? (
            <PitchButton className="w-full" onClick={() => setStep('swap')}>
              Swap with…
            </PitchButton>
          ) : null}
          {offered.map((role) => (
            <PitchButton key={role} className="w-full" onClick={() => pass(role)}>
              Was offered {words.role[role].toLowerCase()}, passed
            </PitchButton>
          ))}
        </>
      ) : null}
    </PlayerSheet>
  )
}
