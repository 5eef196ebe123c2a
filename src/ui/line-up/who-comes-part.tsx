'use client'

import { useState } from 'react'
import type { Problem } from '#common/problem'
import { withoutPlayer, withPlayer, withPlayerChanged } from '#lineup/draft/change-match-request'
import type { PickablePlayer } from '#lineup/draft/pickable-player'
import type { MatchPlanRequest } from '#lineup/match-plan'
import { BesideField } from '#ui/line-up/beside-field'
import { ForThisMatch, thisMatchWords } from '#ui/line-up/for-this-match'
import type { AskLineUp } from '#ui/line-up/line-up-types'

type WhoComesPartProps = {
  readonly request: MatchPlanRequest
  /** The squad's, and guests it knows, by name. */
  readonly players: readonly PickablePlayer[]
  readonly problems: readonly Problem[]
  readonly onAsk: AskLineUp
}

/** Who comes, from when to when, and what holds for a player in this match alone. */
export function WhoComesPart({ request, players, problems, onAsk }: WhoComesPartProps) {
  const [open, setOpen] = useState<string | null>(null)
  const planned = new Map(request.players.map((player) => [player.playerId, player]))
  const order = players.map(({ id }) => id)
  const problemsOf = (playerId: string) => {
    const index = request.players.findIndex((own) => own.playerId === playerId)
    return problems.filter(({ path }) => path === `players.${index}`)
  }
  return (
    <>
      <BesideField problems={problems.filter(({ path }) => path === 'players')} />
      <ul className="border-t border-rule sm:columns-2 sm:gap-8 lg:columns-3">
        {players.map((player) => {
          const own = planned.get(player.id)
          return (
            <li key={player.id} className="break-inside-avoid border-b border-rule py-0.5">
              <div className="flex items-center gap-2">
                <label className="tap flex flex-1 cursor-pointer items-center gap-3">
                  <input
                    type="checkbox"
                    className="size-6 shrink-0 accent-accent"
                    checked={own !== undefined}
                    onChange={() =>
                      onAsk((now) =>
                        own ? withoutPlayer(now, player.id) : withPlayer(now, { player, order }),
                      )
                    }
                  />
                  <span className={own ? 'font-medium' : 'text-soft'}>
                    {player.name}
                    {player.isMember ? '' : ', guest'}
                  </span>
                </label>
                {own ? (
                  <button
                    type="button"
                    aria-expanded={open === player.id}
                    aria-label={`For this match: ${player.name}`}
                    className="tap cursor-pointer px-2 text-sm text-accent underline underline-offset-4"
                    onClick={() => setOpen(open === player.id ? null : player.id)}
                  >
                    {thisMatchWords(own, player) || 'for this match'}
                  </button>
                ) : null}
              </div>
              {own && open === player.id ? (
                <ForThisMatch
                  player={own}
                  known={player}
                  format={request.format}
                  onChange={(change) => onAsk((now) => withPlayerChanged(now, player.id, change))}
                />
              ) : null}
              <BesideField problems={own ? problemsOf(player.id) : []} />
            </li>
          )
        })}
      </ul>
    </>
  )
}
