'use client'

import { useMemo } from 'react'
import { accountPractice } from '#fairness/account-practice'
import type { WritingPlayer } from '#ui/entry/practice-draft'
import type { PracticeReading } from '#ui/entry/practice-reading'
import { totalsOfAccount } from '#ui/entry/session-totals'
import { TotalsTable } from '#ui/entry/totals-table'

type PracticePreviewProps = {
  readonly reading: PracticeReading
  readonly players: readonly WritingPlayer[]
  readonly names: ReadonlyMap<string, string>
}

/** What the practice would come to, before it is written, by the book's own reckoning. Rounds with something wrong are left out. */
export function PracticePreview({ reading, players, names }: PracticePreviewProps) {
  const totals = useMemo(() => totalsOf(reading, players), [reading, players])
  const turnCount = reading.outcomes.reduce((sum, outcome) => sum + outcome.turns.length, 0)
  if (turnCount === 0) return <p className="text-soft">Nothing marked yet.</p>
  return <TotalsTable totals={totals} names={names} kind="practice" />
}

function totalsOf(reading: PracticeReading, players: readonly WritingPlayer[]) {
  const turns = reading.outcomes
    .flatMap((outcome) => (outcome.refusals.length > 0 ? [] : outcome.turns))
    .toSorted((one, other) => one.start - other.start)
  const keepers = players.filter((player) => player.keeps).map((player) => player.id)
  const ids = reading.grid.rows.map((row) => row.playerId)
  const known = new Set(players.map((player) => player.id))
  const account = accountPractice(
    { id: 'preview', day: '2000-01-01', lengthSeconds: null, register: reading.presence, turns },
    {
      able: new Set([...keepers, ...ids.filter((id) => !known.has(id))]),
      members: new Set(players.filter((player) => player.isMember).map((player) => player.id)),
      middleAttackShare: 0,
      written: 'typedLater',
    },
  )
  return totalsOfAccount(account, ids)
}
