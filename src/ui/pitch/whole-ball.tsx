import { placedIn } from '#pitch/changeover'
import type { UpcomingTurn } from '#pitch/upcoming'
import { seatRoles } from '#practice/turn'
import { capital } from '#ui/capital'
import { RoleMark } from '#ui/figures/role-mark'
import type { Cast } from '#ui/pitch/cast'
import { listed } from '#ui/plural'
import { words } from '#ui/words'

type Changes = Pick<UpcomingTurn, 'on' | 'off' | 'moved' | 'stations'>

/** Everybody who has a place keeps its area and changes between attack and defence; who is in goal stays. */
export function isChangeOver({ on, off, moved, stations }: Changes): boolean {
  const isSwapped = ({ role, station, from }: Changes['moved'][number]) =>
    station === from.station && role !== 'keep' && from.role !== 'keep' && role !== from.role
  const keepers = stations.flatMap(({ keep }) => keep).length
  const isEveryone = moved.length > 0 && moved.length + keepers === placedIn(stations).length
  return on.length + off.length === 0 && isEveryone && moved.every(isSwapped)
}

/** So much changes that a list of changes would be longer than the ball itself, which takes two lines an area. */
export function isMostlyNew({ on, moved, stations }: Changes): boolean {
  return on.length + moved.length > 2 * stations.length
}

/** A ball as it will stand, area by area: to be called out as it is, where most places change. */
export function WholeBall({ turn, cast }: { readonly turn: UpcomingTurn; readonly cast: Cast }) {
  const { stations, on, off } = turn
  const comesOn = new Set(on.map(({ playerId }) => playerId))
  return (
    <>
      <ul className="space-y-1">
        {stations.map((station, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: an area is its place in the turn
          <li key={index} className="flex flex-wrap items-baseline gap-x-3">
            {stations.length > 1 ? (
              <span className="border-2 border-ink px-1 text-base leading-tight font-bold">
                {capital(words.area.one)} {index + 1}
              </span>
            ) : null}
            {seatRoles
              .filter((role) => station[role].length > 0)
              .map((role) => (
                <span key={role} className="inline-flex flex-wrap items-baseline gap-x-1.5">
                  <span className="self-center">
                    <RoleMark role={role} kind="practice" hasWord={false} />
                  </span>
                  {station[role].map((playerId, place, all) => (
                    <span key={playerId} className="text-xl leading-tight font-bold">
                      <span className={comesOn.has(playerId) ? 'bg-ink px-1 text-white' : ''}>
                        {cast.nameOf(playerId)}
                        {comesOn.has(playerId) ? <span className="sr-only"> comes on</span> : null}
                      </span>
                      {place < all.length - 1 ? ',' : ''}
                    </span>
                  ))}
                </span>
              ))}
          </li>
        ))}
      </ul>
      {off.length > 0 ? (
        <p className="mt-1 flex flex-wrap items-baseline gap-x-2">
          <span className="border-2 border-dashed border-ink px-1 text-base leading-tight font-bold">
            OFF
          </span>
          <span className="text-xl font-bold">{listed(off.map(cast.nameOf))}</span>
        </p>
      ) : null}
    </>
  )
}
