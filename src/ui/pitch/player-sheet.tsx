'use client'

import type { ReactNode } from 'react'
import type { PlayerId } from '#squad/player'
import type { RegisterState } from '#squad/register'
import { HoldButton } from '#ui/entry/hold-button'
import { PitchButton } from '#ui/pitch/pitch-button'
import type { ListedPlayer } from '#ui/pitch/register-words'
import { Sheet } from '#ui/pitch/sheet'

export type SheetDeeds = {
  readonly onRegister: (playerId: PlayerId, state: RegisterState | 'gone') => void
  /** Out for today is taken back: a second question was asked and answered. */
  readonly onNotOut: (playerId: PlayerId) => void
}

type PlayerSheetProps = SheetDeeds & {
  readonly player: ListedPlayer
  readonly isBegun: boolean
  readonly onClose: () => void
  /** What else can happen to it now. */
  readonly children?: ReactNode
}

/** How it is with one player now. */
export function PlayerSheet({ player, isBegun, onClose, onRegister, onNotOut, children }: PlayerSheetProps) {
  const choices = [
    { state: 'here', words: isBegun && player.state !== 'notPlaying' ? 'Here now' : 'Here' },
    { state: 'notPlaying', words: 'Here, not playing' },
    { state: 'gone', words: isBegun ? 'Gone' : 'Not here' },
  ] as const
  return (
    <Sheet title={player.name} onClose={onClose}>
      {player.state === 'out' ? (
        <>
          <p>
            Out for today. If it was a knock to the head, your club’s rules and a doctor say when play may go
            on, not this page.
          </p>
          <HoldButton
            label="Take back “out for today” (press and hold)"
            question={`Was “out for today” tapped for ${player.name} by mistake?`}
            yes="Yes, by mistake"
            isOn={false}
            className="w-full border-2 font-semibold"
            onConfirm={() => {
              onNotOut(player.id)
              onClose()
            }}
          />
        </>
      ) : (
        <>
          {children}
          {choices
            .filter(({ state }) => state !== player.state)
            .map(({ state, words }) => (
              <PitchButton key={state} className="w-full" onClick={() => onRegister(player.id, state)}>
                {words}
              </PitchButton>
            ))}
          <HoldButton
            label="Out for today (press and hold)"
            question={`${player.name}: out for the rest of the day. Sure?`}
            yes="Yes, out for today"
            isOn={false}
            className="w-full border-2 font-semibold"
            onConfirm={() => onRegister(player.id, 'out')}
          />
          <p className="text-base">
            Out for today: any knock to the head, or whenever in doubt. It lasts for the whole day.
          </p>
        </>
      )}
    </Sheet>
  )
}
