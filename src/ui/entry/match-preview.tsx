'use client'

import { useMemo } from 'react'
import { accountMatch } from '#fairness/account-match'
import { decideMatch } from '#match/match-entry'
import type { MatchDraft } from '#ui/entry/match-draft'
import type { WritingPlayer } from '#ui/entry/practice-draft'
import { totalsOfAccount } from '#ui/entry/session-totals'
import { TotalsTable } from '#ui/entry/totals-table'

type MatchPreviewProps = {
  readonly draft: MatchDraft
  readonly players: readonly WritingPlayer[]
  readonly names: ReadonlyMap<string, string>
  readonly middleAttackShare: number
}

/** What the match would come to, before it is written, by the book's own reckoning. */
export function MatchPreview({ draft, players, names, middleAttackShare }: MatchPreviewProps) {
  const totals = useMemo(() => {
    const decided = decideMatch(draft)
    if (!decided.ok || decided.value.spells.length === 0) return null
    const { register, spells } = decided.value
    const ids = draft.grid.rows.map((row) => row.playerId)
    const notKeeping = new Set(players.filter((player) => !player.keeps).map((player) => player.id))
    const account = accountMatch(
      {
        id: 'preview',
        day: '2000-01-01',
        periods: draft.grid.periods,
        register: register.filter((line) => line.state === 'here'),
        spells,
      },
      {
        able: new Set(ids.filter((id) => !notKeeping.has(id))),
        members: new Set(players.filter((player) => player.isMember).map((player) => player.id)),
        middleAttackShare,
        written: 'typedLater',
      },
    )
    return totalsOfAccount(account, ids)
  }, [draft, players, middleAttackShare])
  if (!totals) return <p className="text-soft">Nothing to show until the places fit.</p>
  return <TotalsTable totals={totals} names={names} kind="match" />
}
