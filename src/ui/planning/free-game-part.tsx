import { isFreeGameForAll, withFreeGameForAll } from '#planning/free-game-for-all'
import { changesMade, designForDay } from '#planning/new-request'
import type { PlanRequest } from '#planning/practice-plan'
import type { DesignSheet } from '#practice/design-sheet'
import { CheckBox } from '#ui/page/check-box'
import { areasWords } from '#ui/planning/plan-words'

type FreeGamePartProps = {
  readonly request: PlanRequest
  readonly designs: readonly DesignSheet[]
  readonly onAsk: (change: (request: PlanRequest) => PlanRequest) => void
}

/** Whether everybody plays the free game, or only as many at a time as the design draws. */
export function FreeGamePart({ request, designs, onAsk }: FreeGamePartProps) {
  const index = request.design.rounds.findIndex(({ isFreeGame }) => isFreeGame)
  const sheet = designs.find(({ id }) => id === request.design.id)
  const drawn = sheet && designForDay(sheet, changesMade(sheet, request.design))
  if (index < 0) return null
  const isForAll = isFreeGameForAll(request)
  const asDrawn = () =>
    onAsk((own) => (drawn ? { ...own, design: { ...own.design, rounds: drawnGame(own, drawn) } } : own))
  const [all, few] = [
    areasOfGame(withFreeGameForAll(request).design, index),
    areasOfGame(drawn ?? request.design, index),
  ]
  if (all === few) return null
  return (
    <CheckBox
      label="Everybody plays the free game"
      hint={`${all}. Otherwise ${few} as it is drawn, and the others wait.`}
      isTicked={isForAll}
      onChange={(isOn) => (isOn ? onAsk(withFreeGameForAll) : asDrawn())}
    />
  )
}

function areasOfGame({ rounds }: PlanRequest['design'], index: number): string {
  return areasWords(rounds[index]?.stations ?? [])
}

function drawnGame({ design }: PlanRequest, drawn: PlanRequest['design']): PlanRequest['design']['rounds'] {
  return design.rounds.map((round, at) =>
    round.isFreeGame ? { ...round, stations: drawn.rounds[at]?.stations ?? round.stations } : round,
  )
}
