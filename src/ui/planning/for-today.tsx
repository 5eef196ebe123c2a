'use client'

import type { PlannedPlayer } from '#planning/practice-plan'
import { Stepper } from '#ui/entry/stepper'
import { Toggle } from '#ui/entry/toggle'
import { CheckBox } from '#ui/page/check-box'

/** What is special about a child's day, short; empty: nothing. */
export function todayWords(player: PlannedPlayer, turnCount: number): string {
  const [from, to] = [player.present[0]?.[0] ?? 1, player.present.at(-1)?.[1] ?? turnCount]
  return [
    from > 1 ? `from turn ${from}` : '',
    to < turnCount ? `to turn ${to}` : '',
    player.present.length > 1 ? 'with a break' : '',
    player.notInGoal ? 'not in goal' : '',
    player.waitsAfterEachTurn ? 'waits after each turn' : '',
    player.mostTurns === null
      ? ''
      : `at most ${player.mostTurns} ${player.mostTurns === 1 ? 'turn' : 'turns'}`,
  ]
    .filter(Boolean)
    .join(', ')
}

/** What holds for one child in this practice alone. */
export function ForToday({
  player,
  name,
  turnCount,
  sides,
  onChange,
}: {
  readonly player: PlannedPlayer
  readonly name: string
  readonly turnCount: number
  readonly sides: readonly [string, string] | null
  readonly onChange: (to: Partial<PlannedPlayer>) => void
}) {
  const [from, to] = [player.present[0]?.[0] ?? 1, player.present.at(-1)?.[1] ?? turnCount]
  return (
    <div className="space-y-3 border-l-4 border-rule-strong py-2 pl-3">
      <div className="flex flex-wrap gap-x-6 gap-y-2">
        <Stepper
          label={`${name} is there from turn`}
          value={from}
          least={1}
          most={to}
          onChange={(turn) => onChange({ present: [[turn, to]] })}
        />
        <Stepper
          label={`${name} is there to turn`}
          value={to}
          least={from}
          most={turnCount}
          onChange={(turn) => onChange({ present: [[from, turn]] })}
        />
      </div>
      {player.keeps ? (
        <CheckBox
          label="Not in goal today"
          isTicked={player.notInGoal}
          onChange={(notInGoal) => onChange({ notInGoal })}
        />
      ) : null}
      <CheckBox
        label="Waits after each turn"
        isTicked={player.waitsAfterEachTurn}
        onChange={(waitsAfterEachTurn) => onChange({ waitsAfterEachTurn })}
      />
      <CheckBox
        label="At most so many turns"
        isTicked={player.mostTurns !== null}
        onChange={(isOn) => onChange({ mostTurns: isOn ? Math.ceil(turnCount / 2) : null })}
      />
      {player.mostTurns === null ? null : (
        <Stepper
          label={`Most turns for ${name}`}
          value={player.mostTurns}
          least={0}
          most={turnCount}
          onChange={(mostTurns) => onChange({ mostTurns })}
        />
      )}
      {sides ? (
        <Toggle
          label={`Bib of ${name}`}
          options={[
            { value: '0', label: sides[0] },
            { value: '1', label: sides[1] },
            ...(player.agreed?.sameSide ? [] : [{ value: 'both' as const, label: 'With the ball' }]),
          ]}
          value={player.side === null ? 'both' : player.side === 0 ? '0' : '1'}
          onChange={(value) => onChange({ side: value === 'both' ? null : value === '0' ? 0 : 1 })}
        />
      ) : null}
      <p className="text-sm text-soft">For this practice only. No reason is kept.</p>
    </div>
  )
}
