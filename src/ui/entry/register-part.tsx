'use client'

import { useState } from 'react'
import type { PlayerId } from '#squad/player'
import type { RegisterEntry, RegisterSegment } from '#squad/register-segments'
import { comeAt, hereThroughout, isOutForToday } from '#squad/register-segments'
import type { Guest } from '#ui/entry/practice-draft'
import { RegisterMore } from '#ui/entry/register-more'
import { segmentsText } from '#ui/entry/register-text'
import { Button } from '#ui/page/button'
import { fieldLook } from '#ui/page/field'

export type RegisterPlayer = { readonly id: PlayerId; readonly name: string; readonly isMember: boolean }

type RegisterPartProps = {
  readonly register: readonly RegisterEntry[]
  readonly players: readonly RegisterPlayer[]
  readonly guests: readonly Guest[]
  readonly onSegments: (playerId: PlayerId, segments: readonly RegisterSegment[]) => void
  readonly onTakeBack: (playerId: PlayerId) => void
  readonly onGuest: (name: string) => void
  readonly onGuestName: (guest: Guest) => void
  /** A player the squad's book knows who was not expected today. */
  readonly onPlayer: (playerId: PlayerId) => void
}

/** Who was there: one tap for here or away; the rest under "more". */
export function RegisterPart({ register, players, guests, ...on }: RegisterPartProps) {
  const names = new Map([...players, ...guests].map(({ id, name }) => [id, name]))
  const members = new Set(players.filter((player) => player.isMember).map((player) => player.id))
  const others = players.filter(({ id }) => !register.some((own) => own.playerId === id))
  return (
    <div>
      <ul className="grid gap-x-8 sm:grid-cols-2 xl:grid-cols-3">
        {register.map((entry) => {
          const guest = guests.find(({ id }) => id === entry.playerId)
          return (
            <li key={entry.playerId} className="border-b border-rule py-1">
              {guest && guest.name === '' ? <NameAgain guest={guest} onGuestName={on.onGuestName} /> : null}
              <RegisterRow
                entry={entry}
                name={names.get(entry.playerId) || 'Guest'}
                isGuest={!members.has(entry.playerId)}
                onSegments={on.onSegments}
                onTakeBack={on.onTakeBack}
              />
            </li>
          )
        })}
      </ul>
      <AddPlayer others={others} onGuest={on.onGuest} onPlayer={on.onPlayer} />
    </div>
  )
}

type RegisterRowProps = Pick<RegisterPartProps, 'onSegments' | 'onTakeBack'> & {
  readonly entry: RegisterEntry
  readonly name: string
  readonly isGuest: boolean
}

function RegisterRow({ entry, name, isGuest, onSegments, onTakeBack }: RegisterRowProps) {
  const { playerId, segments } = entry
  const isHere = segments.length > 0
  const isOut = isOutForToday(segments)
  return (
    <div className="flex flex-wrap items-center gap-x-2">
      <button
        type="button"
        aria-pressed={isHere}
        disabled={isOut}
        onClick={() => onSegments(playerId, isHere ? [] : comeAt(hereThroughout, 0))}
        className="tap min-w-0 flex-1 cursor-pointer text-left leading-tight font-medium disabled:cursor-default aria-[pressed=false]:text-soft aria-[pressed=false]:line-through"
      >
        <span aria-hidden="true" className="inline-block w-6 no-underline">
          {isHere ? '●' : '–'}
        </span>
        {name}
        <span className="font-normal text-soft">
          {' '}
          {isGuest ? '· guest ' : ''}· {segmentsText(segments)}
        </span>
      </button>
      <RegisterMore
        key={segmentsText(segments)}
        name={name}
        segments={segments}
        onSegments={(next) => onSegments(playerId, next)}
        onTakeBack={() => onTakeBack(playerId)}
      />
    </div>
  )
}

function NameAgain({
  guest,
  onGuestName,
}: {
  readonly guest: Guest
  readonly onGuestName: (guest: Guest) => void
}) {
  const [name, setName] = useState('')
  return (
    <div className="flex flex-wrap items-end gap-2 bg-warn-pale p-2">
      <label className="flex-1 text-sm font-medium">
        Name of this guest again (names are not kept on this device)
        <input
          className={`${fieldLook} mt-1`}
          value={name}
          maxLength={80}
          onChange={(event) => setName(event.target.value)}
        />
      </label>
      <Button
        type="button"
        weight="plain"
        disabled={name.trim() === ''}
        onClick={() => onGuestName({ ...guest, name: name.trim() })}
      >
        Keep
      </Button>
    </div>
  )
}

type AddPlayerProps = Pick<RegisterPartProps, 'onGuest' | 'onPlayer'> & {
  readonly others: readonly RegisterPlayer[]
}

/** A new face in one line: a name is enough. */
function AddPlayer({ others, onGuest, onPlayer }: AddPlayerProps) {
  const [name, setName] = useState('')
  const add = () => {
    if (name.trim() === '') return
    onGuest(name.trim())
    setName('')
  }
  return (
    <div className="mt-3 flex flex-wrap items-end gap-3">
      <label className="text-sm font-medium text-soft">
        A new face: name
        <input
          className={`${fieldLook} mt-1 max-w-56`}
          value={name}
          maxLength={80}
          onChange={(event) => setName(event.target.value)}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return
            event.preventDefault()
            add()
          }}
        />
      </label>
      <Button type="button" weight="plain" onClick={add}>
        + guest
      </Button>
      {others.length > 0 ? (
        <label className="text-sm font-medium text-soft">
          Or somebody who has been here before
          <select
            className={`${fieldLook} mt-1`}
            value=""
            onChange={(event) => event.target.value && onPlayer(event.target.value)}
          >
            <option value="">Choose…</option>
            {others.map((player) => (
              <option key={player.id} value={player.id}>
                {player.name}
              </option>
            ))}
          </select>
        </label>
      ) : null}
    </div>
  )
}
