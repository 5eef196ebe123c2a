'use client'

import type { Problem } from '#common/problem'
import { withoutPlayer, withPlayer, withPlayerChanged } from '#lineup/draft/change-match-request'
import type { PickablePlayer } from '#lineup/draft/pickable-player'
import type { MatchPlanRequest } from '#lineup/match-plan'
import { BesideField } from '#ui/line-up/beside-field'
import { ForThisMatch, thisMatchWords } from '#ui/line-up/for-this-match'
import type { AskLineUp } from '#ui/line-up/line-up-types'
import { ComingList } from '#ui/planning/coming-list'

type WhoComesPartProps = {
  readonly request: MatchPlanRequest
  /** The squad's, and guests it knows, by name. */
  readonly players: readonly PickablePlayer[]
  readonly problems: readonly Problem[]
  readonly onAsk: AskLineUp
}

/** Who comes, from when to when, and what holds for a player in this match alone. */
export function WhoComesPart({ request, players, problems, onAsk }: WhoComesPartProps) {
  const planned = new Map(request.players.map((player, index) => [player.playerId, { player, index }]))
  const known = new Map(players.map((player) => [player.id, player]))
  const order = players.map(({ id }) => id)
  const toggle = (playerId: string) => {
    const player = known.get(playerId)
    if (planned.has(playerId)) onAsk((now) => withoutPlayer(now, playerId))
    else if (player) onAsk((now) => withPlayer(now, { player, order }))
  }
  return (
    <>
      <BesideField problems={problems.filter(({ path }) => path === 'players')} />
      <ComingList
        players={players}
        comingOf={(id) => {
          const [own, player] = [planned.get(id), known.get(id)]
          return own && player
            ? {
                words: thisMatchWords(own.player, player),
                settings: (
                  <ForThisMatch
                    player={own.player}
                    known={player}
                    format={request.format}
                    onChange={(change) => onAsk((now) => withPlayerChanged(now, id, change))}
                  />
                ),
                beside: (
                  <BesideField problems={problems.filter(({ path }) => path === `players.${own.index}`)} />
                ),
              }
            : null
        }}
        onToggle={toggle}
        settingsName="For this match"
      />
    </>
  )
}
