'use client'

import { useCallback } from 'react'
import { roles } from '#exposure/column'
import type { Deed } from '#pitch/pitch-event'
import { type PitchState, secondNow } from '#pitch/pitch-state'
import { runningTotals } from '#pitch/running-totals'
import { RoleMark } from '#ui/figures/role-mark'
import type { Cast } from '#ui/pitch/cast'
import { clockWords } from '#ui/pitch/clock-words'
import { PointsPart } from '#ui/pitch/points-part'
import { useSecond } from '#ui/pitch/use-second'
import { words } from '#ui/words'

type TotalsScreenProps = {
  readonly state: PitchState
  readonly cast: Cast
  readonly now: () => number
  readonly countsPoints: boolean
  readonly onDeeds: (deeds: readonly Deed[]) => void
}

/** What everyone has had so far: turns first, the time of them below. */
export function TotalsScreen({ state, cast, now, countsPoints, onDeeds }: TotalsScreenProps) {
  const { beganAt, endedAt } = state
  const read = useCallback(() => secondNow({ beganAt }, endedAt ?? now()), [beganAt, endedAt, now])
  const second = useSecond(read, state.status === 'running')
  const there = new Set(
    state.players.filter(({ segments }) => segments.length > 0).map(({ playerId }) => playerId),
  )
  const totals = runningTotals(state, second).filter(({ playerId }) => there.has(playerId))
  const { longestWait } = state
  return (
    <section aria-labelledby="totals" className="space-y-4">
      <h2 id="totals" className="text-2xl font-bold">
        So far
      </h2>
      {longestWait ? (
        <p>
          <strong>Longest wait by the clock:</strong> {cast.nameOf(longestWait.playerId)},{' '}
          <span className="tabular-nums">{clockWords(longestWait.to - longestWait.from)}</span>
        </p>
      ) : null}
      <table className="w-full border-collapse tabular-nums">
        <caption className="sr-only">Turns, and minutes below them</caption>
        <thead>
          <tr className="border-b-2 border-ink text-left">
            <th scope="col">Name</th>
            {roles.map((role) => (
              <th key={role} scope="col" className="px-1 text-right">
                <span className="inline-flex justify-end">
                  <RoleMark role={role} kind="practice" hasWord={false} />
                </span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {totals.map((total) => (
            <tr key={total.playerId} className="border-b border-ink align-top">
              <th scope="row" className="py-1 pr-1 text-left font-bold break-words">
                {cast.nameOf(total.playerId)}
              </th>
              {roles.map((role) => (
                <td key={role} className="px-1 py-1 text-right leading-tight">
                  <span className="font-bold">{total.turns[role]}</span>
                  <span className="block text-base">{clockWords(total.seconds[role])}</span>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p className="text-base">
        {roles.map((role) => `${words.roleLetter[role]} ${words.role[role].toLowerCase()}`).join(', ')}. Turns
        above, minutes below.
      </p>
      {countsPoints ? <PointsPart state={state} cast={cast} onDeeds={onDeeds} /> : null}
    </section>
  )
}
