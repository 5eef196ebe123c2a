'use client'

import { useState } from 'react'
import { type Line, lines } from '#match/match'
import type { PlayerId } from '#squad/player'
import { HoldButton } from '#ui/entry/hold-button'
import { NameChoice } from '#ui/pitch/name-choice'
import { PitchButton } from '#ui/pitch/pitch-button'
import { PlayerSheet, type SheetDeeds } from '#ui/pitch/player-sheet'
import type { ListedPlayer } from '#ui/pitch/register-words'
import { Sheet } from '#ui/pitch/sheet'
import { lineWord } from '#ui/touchline/line-words'

export type MatchMoves = {
  readonly onHurt: (playerId: PlayerId) => void
  readonly onSwap: (one: PlayerId, other: PlayerId) => void
  readonly onLine: (playerId: PlayerId, line: Line) => void
  /** Off for good (null), or for so many minutes of play. */
  readonly onSentOff: (playerId: PlayerId, minutes: number | null) => void
}

type MatchPlayerSheetProps = SheetDeeds &
  MatchMoves & {
    readonly player: ListedPlayer
    readonly isBegun: boolean
    /** Null: off. */
    readonly line: Line | null
    /** May be put in goal; the lines there are in this match. */
    readonly openLines: readonly Line[]
    /** Off and able to come on instead; on, when the player is off. */
    readonly partners: readonly PlayerId[]
    /** Others who are on, to change places with. */
    readonly others: readonly PlayerId[]
    readonly nameOf: (playerId: PlayerId) => string
    readonly onClose: () => void
  }

type Step = 'player' | 'instead' | 'places' | 'line' | 'off'

/** What can happen to one player beside a match. */
export function MatchPlayerSheet(props: MatchPlayerSheetProps) {
  const { player, line, isBegun, nameOf, onClose } = props
  const [step, setStep] = useState<Step>('player')
  const { id, name } = player
  const closing = (act: () => void) => () => {
    act()
    onClose()
  }
  const swapWith = (other: PlayerId) => {
    props.onSwap(id, other)
    onClose()
  }
  if (step === 'instead')
    return (
      <Sheet title={line ? `Who comes on for ${name}?` : `${name} comes on for…`} onClose={onClose}>
        <NameChoice ids={props.partners} nameOf={nameOf} onChoose={swapWith} />
      </Sheet>
    )
  if (step === 'places')
    return (
      <Sheet title={`${name} changes places with…`} onClose={onClose}>
        <NameChoice ids={props.others} nameOf={nameOf} onChoose={swapWith} />
      </Sheet>
    )
  if (step === 'line')
    return (
      <Sheet title={`${name} plays…`} onClose={onClose}>
        {lines
          .filter((one) => one !== line && props.openLines.includes(one))
          .map((one) => (
            <PitchButton key={one} className="w-full" onClick={closing(() => props.onLine(id, one))}>
              {lineWord(one)}
            </PitchButton>
          ))}
      </Sheet>
    )
  if (step === 'off')
    return (
      <Sheet title={`${name} has to leave the pitch`} onClose={onClose}>
        <p>
          Nobody comes on for {name}: the side plays with one fewer. Your league’s rules say for how long.
        </p>
        <div className="grid grid-cols-3 gap-2">
          {[2, 5, 10].map((minutes) => (
            <PitchButton key={minutes} onClick={closing(() => props.onSentOff(id, minutes))}>
              {minutes} min
            </PitchButton>
          ))}
        </div>
        <HoldButton
          label="For good (press and hold)"
          question={`${name}: sent off for the rest of the match. Sure?`}
          yes="Yes, sent off"
          isOn={false}
          className="w-full border-2 font-semibold"
          onConfirm={closing(() => props.onSentOff(id, null))}
        />
      </Sheet>
    )
  const isOn = line !== null
  return (
    <PlayerSheet
      player={player}
      isBegun={isBegun}
      onClose={onClose}
      onNotOut={props.onNotOut}
      onRegister={(playerId, state) => {
        props.onRegister(playerId, state)
        onClose()
      }}
    >
      {isOn && isBegun ? (
        <PitchButton weight="main" className="w-full" onClick={closing(() => props.onHurt(id))}>
          Goes off hurt
        </PitchButton>
      ) : null}
      {player.state === 'here' ? (
        <>
          <PitchButton className="w-full" onClick={() => setStep('instead')}>
            {isOn ? 'Somebody comes on instead…' : 'Comes on for…'}
          </PitchButton>
          {isOn ? (
            <div className="grid grid-cols-2 gap-2">
              <PitchButton onClick={() => setStep('places')}>Change places with…</PitchButton>
              <PitchButton onClick={() => setStep('line')}>Another line…</PitchButton>
            </div>
          ) : null}
        </>
      ) : null}
      {isOn && isBegun ? (
        <PitchButton className="w-full" onClick={() => setStep('off')}>
          Sent off, or off for some minutes…
        </PitchButton>
      ) : null}
    </PlayerSheet>
  )
}
