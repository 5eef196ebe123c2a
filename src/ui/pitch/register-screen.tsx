'use client'

import { useState } from 'react'
import type { PlayerId } from '#squad/player'
import { NewFace } from '#ui/pitch/new-face'
import { PitchButton } from '#ui/pitch/pitch-button'
import { PlayerSheet, type SheetDeeds } from '#ui/pitch/player-sheet'
import { type ListedPlayer, registerCount, registerMark, registerWord } from '#ui/pitch/register-words'

type RegisterScreenProps = SheetDeeds & {
  readonly players: readonly ListedPlayer[]
  readonly isBegun: boolean
  readonly onGuest: (name: string) => void
  /** These, whom nobody has tapped yet, are here too. */
  readonly onEveryone: (playerIds: readonly PlayerId[]) => void
}

/** Who is here, by tapping names: one tap says here, the dots beside a name say everything else. */
export function RegisterScreen({ players, isBegun, onGuest, onEveryone, ...deeds }: RegisterScreenProps) {
  const [openId, setOpenId] = useState<PlayerId | null>(null)
  const open = players.find(({ id }) => id === openId)
  const untapped = players.filter(({ state, isExpected }) => state === 'missing' && isExpected)
  const tapName = (player: ListedPlayer) => {
    if (player.state === 'missing' || player.state === 'gone') deeds.onRegister(player.id, 'here')
    else if (player.state === 'here' && !isBegun) deeds.onRegister(player.id, 'gone')
    else setOpenId(player.id)
  }
  return (
    <section aria-label="Who is here" className="space-y-3">
      <div className="flex items-baseline justify-between gap-3">
        <h2 className="text-2xl font-bold">Who is here?</h2>
        <p role="status" className="font-semibold tabular-nums">
          {registerCount(players)}
        </p>
      </div>
      <ul className="grid grid-cols-[repeat(auto-fill,minmax(10.25rem,1fr))] gap-2">
        {players.map((player) => (
          <li key={player.id} className="flex">
            <button
              type="button"
              aria-pressed={player.state === 'here'}
              onClick={() => tapName(player)}
              className="tap min-w-0 flex-1 cursor-pointer touch-manipulation border-2 border-ink bg-leaf px-2 py-1 text-left leading-tight font-bold break-words aria-pressed:bg-ink aria-pressed:text-white"
            >
              <span aria-hidden="true" className="mr-1 inline-block w-4 text-center">
                {registerMark(player)}
              </span>
              {player.name}
              <span className="block text-base font-medium">{registerWord(player, isBegun)}</span>
            </button>
            <button
              type="button"
              aria-label={`More for ${player.name}`}
              onClick={() => setOpenId(player.id)}
              className="tap w-12 shrink-0 cursor-pointer touch-manipulation border-2 border-l-0 border-ink bg-leaf font-bold"
            >
              <span aria-hidden="true">⋯</span>
            </button>
          </li>
        ))}
      </ul>
      {untapped.length > 0 && (isBegun || players.some(({ state }) => state === 'here')) ? (
        <PitchButton className="w-full" onClick={() => onEveryone(untapped.map(({ id }) => id))}>
          All the others are here too
        </PitchButton>
      ) : null}
      <NewFace onGuest={onGuest} />
      {open ? (
        <PlayerSheet
          key={`${open.id} ${open.state}`}
          player={open}
          isBegun={isBegun}
          onClose={() => setOpenId(null)}
          onNotOut={deeds.onNotOut}
          onRegister={(playerId, state) => {
            deeds.onRegister(playerId, state)
            setOpenId(null)
          }}
        />
      ) : null}
    </section>
  )
}
