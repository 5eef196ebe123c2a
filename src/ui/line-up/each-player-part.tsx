import type { LineUpDraft } from '#lineup/draft/line-up-draft'
import { type LineUpTotal, totalsOfLineUp } from '#lineup/draft/line-up-totals'
import type { LineUp } from '#lineup/line-up'
import { balanceSpanSeconds } from '#ui/figures/balance-geometry'
import { differenceText } from '#ui/figures/difference'
import { wholeMinutes } from '#ui/figures/minutes'
import type { LineUpPolicy, NameOf } from '#ui/line-up/line-up-types'
import { BeforeAfterBar } from '#ui/planning/before-after-bar'

/** What the line-up gives each player: minutes, start, goal, and where the season's matches stand before and after it. */
export function EachPlayerPart({
  draft,
  made,
  policy,
  nameOf,
}: {
  readonly draft: LineUpDraft
  readonly made: LineUp
  readonly policy: LineUpPolicy
  readonly nameOf: NameOf
}) {
  const totals = totalsOfLineUp(draft.problem, made.plan)
  const barOf = (seconds: number) => ({
    seconds,
    dueSeconds: 0,
    toleranceSeconds: policy.toleranceSeconds,
  })
  const spanSeconds = balanceSpanSeconds(totals.flatMap((own) => [barOf(own.before), barOf(own.after)]))
  return (
    <table className="ruled book">
      <caption className="sr-only">
        Each player in this match, and before and after it over the season’s matches: the ring is before, the
        dot after, the middle the even share
      </caption>
      <thead>
        <tr>
          <th scope="col">Player</th>
          <th scope="col">Minutes</th>
          <th scope="col">Starts</th>
          <th scope="col">Goal</th>
          <th scope="col">Comes on</th>
          <th scope="col">Season, before and after</th>
        </tr>
      </thead>
      <tbody>
        {totals.map((own) => (
          <tr key={own.playerId} className="keep-together">
            <th scope="row">{nameOf(own.playerId)}</th>
            <td>
              <span className="text-soft lg:hidden">Minutes </span>
              <span className="font-semibold">{wholeMinutes(own.playSeconds)}</span>
              {own.playSeconds < own.leastSeconds ? (
                <span className="block text-sm font-medium text-warn">
                  promised {wholeMinutes(own.leastSeconds)}
                </span>
              ) : null}
              <DayWords request={draft.request} own={own} />
            </td>
            <td>
              <span className="text-soft lg:hidden">Starts </span>
              {own.starts ? 'yes' : 'no'}
            </td>
            <td>
              <span className="text-soft lg:hidden">Goal </span>
              {own.keepSeconds > 0 ? `${wholeMinutes(own.keepSeconds)} min` : '–'}
            </td>
            <td>
              <span className="text-soft lg:hidden">Comes on </span>
              {own.comesOn > 0 ? own.comesOn : '–'}
            </td>
            <td>
              <BeforeAfterBar
                label={`Minutes over the season’s matches: ${changeWords(own)}`}
                before={barOf(own.before)}
                after={barOf(own.after)}
                spanSeconds={spanSeconds}
              />
              <p className="text-sm text-soft">{changeWords(own)}</p>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** With other matches of the day: what it comes to, and what the format allows. */
function DayWords({ request, own }: { readonly request: LineUpDraft['request']; readonly own: LineUpTotal }) {
  const played = request.players.find(({ playerId }) => playerId === own.playerId)?.playedToday ?? 0
  const most = request.format.mostSecondsADay
  if (played === 0) return null
  return (
    <span className="block text-sm text-soft">
      {wholeMinutes(played + own.playSeconds)} on the day
      {most === null ? '' : `, of ${wholeMinutes(most)} allowed`}
    </span>
  )
}

/** "12 min less, then 8 min less". */
function changeWords({ before, after }: LineUpTotal): string {
  const [was, is] = [differenceText(wholeMinutes(before)), differenceText(wholeMinutes(after))]
  return was === is ? `${is} as before` : `${was}, then ${is}`
}
