'use client'

import { useState } from 'react'
import { noExceptions } from '#practice/as-planned'
import type { PracticeDesign } from '#practice/design'
import type { PracticeDraft } from '#ui/entry/practice-draft'
import type { PracticeReading } from '#ui/entry/practice-reading'
import { Button } from '#ui/page/button'
import { fieldLook } from '#ui/page/field'

type PlanPartProps = {
  readonly draft: PracticeDraft
  readonly designs: readonly PracticeDesign[]
  readonly reading: PracticeReading
  readonly names: ReadonlyMap<string, string>
  readonly onEdit: (change: (draft: PracticeDraft) => PracticeDraft) => void
}

/** As planned, except: the design dealt to who was there, then what was different. */
export function PlanPart({ draft, designs, reading, names, onEdit }: PlanPartProps) {
  const design = designs.find(({ id }) => id === draft.designId) ?? null
  return (
    <div className="space-y-4">
      <label className="block text-sm font-medium text-soft">
        Practice design
        <select
          className={`${fieldLook} mt-1 max-w-md`}
          value={design?.id ?? ''}
          onChange={(event) =>
            onEdit((own) => ({ ...own, designId: event.target.value || null, exceptions: noExceptions }))
          }
        >
          <option value="">Choose a design…</option>
          {designs.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {design ? (
        <>
          <p className="max-w-prose text-sm text-soft">
            Its turns are dealt evenly to everyone in the register, in that order; who was late or left is
            dealt no turn for that time: say so in the register above.
          </p>
          <div className="flex flex-wrap items-end gap-4">
            <StoppedAfter draft={draft} design={design} onEdit={onEdit} />
            <SwapTwo reading={reading} names={names} onEdit={onEdit} />
          </div>
          <Swaps draft={draft} names={names} onEdit={onEdit} />
          <Button
            type="button"
            weight="plain"
            onClick={() => onEdit((own) => ({ ...own, mode: 'grid', grid: reading.grid }))}
          >
            Change single cells (then it counts as typed in)
          </Button>
        </>
      ) : null}
    </div>
  )
}

type PartProps = Pick<PlanPartProps, 'draft' | 'onEdit'>

function StoppedAfter({ draft, design, onEdit }: PartProps & { readonly design: PracticeDesign }) {
  const turns = design.rounds
    .flatMap((round, index) =>
      Array.from({ length: round.turnCount }, (_, turn) => ({
        round: round.title || `Round ${index + 1}`,
        turn: turn + 1,
        isLast: turn + 1 === round.turnCount,
      })),
    )
    .map((own, index) => ({ ...own, number: index + 1 }))
  return (
    <label className="text-sm font-medium text-soft">
      Played
      <select
        className={`${fieldLook} mt-1`}
        value={draft.exceptions.stoppedAfterTurn ?? ''}
        onChange={(event) => {
          const stoppedAfterTurn = event.target.value === '' ? null : Number(event.target.value)
          onEdit((own) => ({ ...own, exceptions: { ...own.exceptions, stoppedAfterTurn } }))
        }}
      >
        <option value="">to the end</option>
        {turns.slice(0, -1).map(({ round, turn, isLast, number }) => (
          <option key={number} value={number}>
            {isLast ? `until the end of ${round}` : `until ball ${turn} of ${round}`}
          </option>
        ))}
      </select>
    </label>
  )
}

function SwapTwo({ reading, names, onEdit }: Pick<PlanPartProps, 'reading' | 'names' | 'onEdit'>) {
  const [players, setPlayers] = useState<readonly [string, string]>(['', ''])
  const [from, setFrom] = useState(1)
  const [chosenTo, setTo] = useState<number | null>(null)
  const last = reading.grid.columns.length
  const to = Math.min(chosenTo ?? last, last)
  const [one, other] = players
  const isReady = one !== '' && other !== '' && one !== other && from <= to
  const choice = (value: string, label: string, onChange: (value: string) => void) => (
    <select
      aria-label={label}
      className="tap border border-rule-strong bg-leaf px-2"
      value={value}
      onChange={(event) => onChange(event.target.value)}
    >
      <option value="">player…</option>
      {reading.grid.rows.map(({ playerId }) => (
        <option key={playerId} value={playerId}>
          {names.get(playerId) || 'Guest'}
        </option>
      ))}
    </select>
  )
  const turnField = (label: string, value: number, onChange: (value: number) => void) => (
    <input
      type="number"
      aria-label={label}
      className="tap w-16 border border-rule-strong bg-leaf px-2"
      min={1}
      max={reading.grid.columns.length}
      value={value}
      onChange={(event) => onChange(Number(event.target.value))}
    />
  )
  return (
    <fieldset>
      <legend className="text-sm font-medium text-soft">Two swapped</legend>
      <div className="mt-1 flex flex-wrap items-center gap-2">
        {choice(one, 'First of the two who swapped', (value) => setPlayers([value, other]))}
        <span aria-hidden="true">⇄</span>
        {choice(other, 'Second of the two who swapped', (value) => setPlayers([one, value]))}
        <span>turns</span>
        {turnField('From turn', from, setFrom)}
        <span>to</span>
        {turnField('To turn', to, setTo)}
        <Button
          type="button"
          weight="plain"
          disabled={!isReady}
          onClick={() =>
            onEdit((own) => ({
              ...own,
              exceptions: {
                ...own.exceptions,
                swaps: [...own.exceptions.swaps, { players, fromTurn: from, toTurn: to }],
              },
            }))
          }
        >
          Swap
        </Button>
      </div>
    </fieldset>
  )
}

function Swaps({ draft, names, onEdit }: PartProps & { readonly names: ReadonlyMap<string, string> }) {
  const { swaps } = draft.exceptions
  if (swaps.length === 0) return null
  return (
    <ul className="space-y-1">
      {swaps.map((swap, index) => (
        <li
          key={`${swap.players.join()} ${swap.fromTurn} ${swap.toTurn}`}
          className="flex flex-wrap items-center gap-3"
        >
          {names.get(swap.players[0])} and {names.get(swap.players[1])} swapped, turns {swap.fromTurn} to{' '}
          {swap.toTurn}
          <button
            type="button"
            className="tap cursor-pointer text-accent underline"
            onClick={() =>
              onEdit((own) => ({
                ...own,
                exceptions: {
                  ...own.exceptions,
                  swaps: own.exceptions.swaps.filter((_, at) => at !== index),
                },
              }))
            }
          >
            take back
          </button>
        </li>
      ))}
    </ul>
  )
}
