import type { Role } from '#exposure/column'
import type { JudgedFigure } from '#fairness/book/judged-figure'
import { CauseLine } from '#ui/book/cause-line'
import { BalanceBar } from '#ui/figures/balance-bar'
import { judgedDifferenceText } from '#ui/figures/difference'
import type { ShownFigure } from '#ui/figures/shown-figure'
import { Turns } from '#ui/figures/turns'
import { counted } from '#ui/plural'
import { roleWord } from '#ui/words'

type BookFigureProps = {
  readonly role: Role
  readonly kind: 'practice' | 'match'
  readonly shown: ShownFigure<JudgedFigure>
  readonly spanSeconds: number
  readonly isMostlyAsPlanned: boolean
  /** False: what it had is shown and nothing is said of it. */
  readonly isJudged: boolean
  readonly passedTurns: number
}

/** One role of one player: the bar, time and turns, the even share, the difference and its parts. */
export function BookFigure(props: BookFigureProps) {
  const { role, kind, shown, spanSeconds, isMostlyAsPlanned, isJudged, passedTurns } = props
  const { figure, minutes, dueMinutes, differenceMinutes } = shown
  const turns = kind === 'practice' ? figure.turns : null
  const dueTurns = kind === 'practice' ? figure.dueTurns : null
  if (figure.seconds === 0 && figure.dueSeconds === 0 && !figure.isCauseTold) {
    return <p className="text-sm text-soft">none, and none was due</p>
  }
  return (
    <div className="min-w-40">
      {isJudged ? (
        <BalanceBar
          label={roleWord(role, kind)}
          shown={shown}
          spanSeconds={spanSeconds}
          isMostlyAsPlanned={isMostlyAsPlanned}
        />
      ) : null}
      <p className="font-medium">
        <Turns minutes={minutes} turns={turns} />
      </p>
      {isJudged ? (
        <>
          <p className="text-sm text-soft">
            even share <Turns minutes={dueMinutes} turns={dueTurns} />
            <span className="lg:hidden">, </span>
            <span className={figure.isConcern ? 'font-semibold text-accent lg:block' : 'lg:block'}>
              {judgedDifferenceText(differenceMinutes, figure.status)}
            </span>
          </p>
          {figure.isShorterTurns ? <p className="text-sm">same number of turns, shorter ones</p> : null}
          <CauseLine figure={figure} differenceMinutes={differenceMinutes} />
        </>
      ) : null}
      {passedTurns > 0 ? (
        <p className="text-sm text-soft">was offered {counted(passedTurns, 'more turn')}, passed</p>
      ) : null}
    </div>
  )
}
