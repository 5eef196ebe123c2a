'use client'

import { isHeldByAgreement, isHeldFast } from '#planning/plan-draft'
import { requestSizeFaults } from '#planning/request-size'
import { placeOf } from '#ui/designs/form/draft'
import { Problems } from '#ui/page/problems'
import { PlanGridPart } from '#ui/planning/plan-grid-part'
import type { NameOf, PlanningPolicy } from '#ui/planning/planning-types'
import { ProofPart } from '#ui/planning/proof-part'
import { SwapPanel } from '#ui/planning/swap-panel'
import { useChosenPlaces } from '#ui/planning/use-chosen-places'
import type { PlanEditing } from '#ui/planning/use-plan-draft'
import { WaysOutPart } from '#ui/planning/ways-out-part'

/** The plan with its proof, to be changed by taps; or why there is none and what would work. */
export function PlanResult({
  editing,
  onAsk,
  policy,
  nameOf,
}: {
  readonly editing: PlanEditing
  readonly onAsk: PlanEditing['ask']
  readonly policy: PlanningPolicy
  readonly nameOf: NameOf
}) {
  const { draft } = editing
  const { request, made } = draft
  const { players } = request
  // In another list of players the same places are other players'.
  const { chosen, tap, close } = useChosenPlaces(players)
  const tooLarge = requestSizeFaults(request)
  if (tooLarge.length > 0)
    return (
      <Problems
        title="This is more than a plan can be"
        problems={tooLarge}
        places={Object.fromEntries(tooLarge.map(({ path }) => [path, placeOf(path)]))}
      />
    )
  if (!made)
    return (
      <WaysOutPart request={request} clash={draft.clash} nameOf={nameOf} onTake={(way) => onAsk(() => way)} />
    )
  const at = chosen && { turn: chosen.first.column, player: chosen.first.row }
  return (
    <>
      <ProofPart
        request={request}
        made={made}
        policy={policy}
        nameOf={nameOf}
        search={editing.search}
        fault={editing.fault}
        onSearch={editing.searchNow}
        onStop={editing.stop}
      />
      <p className="text-sm text-soft">
        A attacks, D defends, K is in goal, the number is the area, W waits. ▲ comes on, ▽ goes off, ■ is held
        fast. Tap a place, then another in the same turn, to swap them.
      </p>
      <PlanGridPart
        request={request}
        plan={made.plan}
        nameOf={nameOf}
        chosen={chosen?.first ?? null}
        onTap={tap}
      />
      {chosen && at ? (
        <SwapPanel
          draft={draft}
          nameOf={nameOf}
          first={chosen.first}
          second={chosen.second}
          isLocked={isHeldFast(request, at)}
          isAgreed={isHeldByAgreement(request, at)}
          onSwap={(swap) => {
            editing.swap(swap)
            close()
          }}
          onLock={() => editing.lock(at)}
          onUnlock={() => editing.unlock(at)}
          onClose={close}
        />
      ) : null}
    </>
  )
}
