'use client'

import { useState } from 'react'
import { placedIn } from '#pitch/changeover'
import type { PitchPack } from '#pitch/pitch-pack'
import type { PitchState } from '#pitch/pitch-state'
import { type SeatRole, seatRoles } from '#practice/turn'
import type { PlayerId } from '#squad/player'
import type { Cast } from '#ui/pitch/cast'
import type { OnDeeds } from '#ui/pitch/on-deeds'
import { freePlayers, mayKeepGoal, swapPartners } from '#ui/pitch/partners'
import { PitchButton } from '#ui/pitch/pitch-button'
import { placeWords } from '#ui/pitch/places-card'
import { PlayerSheet } from '#ui/pitch/player-sheet'
import { listedPlayers } from '#ui/pitch/register-words'
import { exchanged, swapInRound, swapSentence, withoutPlayer } from '#ui/pitch/round-deeds'
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
  const { live, next } = state
  const stations = live?.stations ?? next?.stations ?? []
  const own = placedIn(stations).find((placed) => placed.playerId === playerId) ?? null
  const player = listedPlayers(state, pack.players).find(({ id }) => id === playerId)
  const name = cast.nameOf(playerId)
  const mayKeep = mayKeepGoal(pack, state.plan)
  const substitutes = freePlayers(state, stations).filter(
    (id) => id !== playerId && (own?.role !== 'keep' || mayKeep(id)),
  )
  const turn = live?.index ?? next?.index ?? null
  const fill = (instead: PlayerId | null) => {
    const places = withoutPlayer(stations, playerId, instead)
    if (live) onDeeds([{ kind: 'change', start: live.eventId, stations: places }])
    else if (turn !== null && instead !== null)
      onDeeds([
        { kind: 'replan', ...swapInRound(state.turns, turn, [playerId, instead]), sentence: swapSentence },
      ])
    onClose()
  }
  if (!player) return null
  if (step === 'swap') {
    const swap = (other: PlayerId) => {
      if (live)
        onDeeds([{ kind: 'change', start: live.eventId, stations: exchanged(stations, playerId, other) }])
      else if (turn !== null)
        onDeeds([
          { kind: 'replan', ...swapInRound(state.turns, turn, [playerId, other]), sentence: swapSentence },
        ])
      onClose()
    }
    return (
      <Sheet title={`${name} and …`} onClose={onClose}>
        <p>{live ? 'They change places now.' : 'They change places for the rest of this round.'}</p>
        <Names ids={swapPartners({ playerId, pack, state, stations })} cast={cast} onChoose={swap} />
      </Sheet>
    )
  }
  if (step === 'instead') {
    return (
      <Sheet title={`Who goes in for ${name}?`} onClose={() => fill(null)}>
        <p>Whoever has waited longest stands first.</p>
        <Names ids={substitutes} cast={cast} onChoose={fill} />
        <PitchButton className="w-full" onClick={() => fill(null)}>
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
        if (live && own && is !== 'here' && substitutes.length > 0) setStep('instead')
        else onClose()
      }}
    >
      {player.state === 'here' && turn !== null ? (
        <>
          <p className="text-lg">{own ? placeWords(own, stations.length) : words.doing.rest}</p>
          <PitchButton className="w-full" onClick={() => setStep('swap')}>
            Swap with…
          </PitchButton>
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

type NamesProps = {
  readonly ids: readonly PlayerId[]
  readonly cast: Cast
  readonly onChoose: (playerId: PlayerId) => void
}

function Names({ ids, cast, onChoose }: NamesProps) {
  if (ids.length === 0) return <p>Nobody is free for it.</p>
  return (
    <ul className="grid grid-cols-2 gap-2">
      {ids.map((id) => (
        <li key={id} className="flex">
          <PitchButton className="w-full min-w-0 text-xl break-words" onClick={() => onChoose(id)}>
            {cast.nameOf(id)}
          </PitchButton>
        </li>
      ))}
    </ul>
  )
}
