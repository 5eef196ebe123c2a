import type { Changeover } from '#pitch/changeover'
import { type SeatRole, type Station, seatRoles } from '#practice/turn'
import type { PlayerId } from '#squad/player'
import { capital } from '#ui/capital'
import { RoleMark } from '#ui/figures/role-mark'
import { Bib } from '#ui/pitch/bib'
import { type Cast, sideOfRole } from '#ui/pitch/cast'
import { NameButton } from '#ui/pitch/name-button'
import { words } from '#ui/words'

type PlacesCardProps = {
  readonly stations: readonly Station[]
  /** Whom to mark as coming on. */
  readonly on: ReadonlySet<PlayerId>
  readonly cast: Cast
  readonly onOpen: (playerId: PlayerId) => void
}

/** Who goes where, area by area. */
export function PlacesCard({ stations, on, cast, onOpen }: PlacesCardProps) {
  return (
    <div className="grid gap-3 sm:grid-cols-2">
      {areasOf(stations).map(({ title, station }) => (
        <section key={title} aria-label={title} className="border-2 border-ink">
          {stations.length > 1 ? (
            <h3 className="border-b-2 border-ink bg-ink px-2 py-0.5 font-bold text-white">{title}</h3>
          ) : null}
          {seatRoles
            .filter((role) => station[role].length > 0)
            .map((role) => (
              <RoleGroup key={role} role={role} station={station} on={on} cast={cast} onOpen={onOpen} />
            ))}
        </section>
      ))}
    </div>
  )
}

function areasOf(stations: readonly Station[]) {
  return stations.map((station, index) => ({ title: `${capital(words.area.one)} ${index + 1}`, station }))
}

type RoleGroupProps = Omit<PlacesCardProps, 'stations'> & {
  readonly role: SeatRole
  readonly station: Station
}

function RoleGroup({ role, station, on, cast, onOpen }: RoleGroupProps) {
  const side = sideOfRole(station, role, cast)
  return (
    <div className="flex border-ink not-first:border-t">
      <h4 className="flex w-[4.75rem] shrink-0 flex-col justify-center py-1 pl-2 text-base leading-tight font-semibold [&>span]:flex-wrap [&>span]:gap-x-1">
        <RoleMark role={role} kind="practice" />
        {side !== null && cast.bibs ? <Bib name={cast.bibs[side]} side={side} /> : null}
      </h4>
      <ul className="grid min-w-0 flex-1 grid-cols-[repeat(auto-fill,minmax(7.5rem,1fr))]">
        {station[role].map((playerId) => (
          <li key={playerId} className="flex">
            <NameButton playerId={playerId} cast={cast} isOn={on.has(playerId)} onOpen={onOpen} />
          </li>
        ))}
      </ul>
    </div>
  )
}

const bigName = 'text-[1.75rem] leading-tight font-bold'

/** Who comes on and who steps off, before anything else. */
export function OnAndOff({ on, off, cast }: Pick<Changeover, 'on' | 'off'> & { readonly cast: Cast }) {
  if (on.length === 0 && off.length === 0) return null
  return (
    <dl className="grid grid-cols-[repeat(auto-fit,minmax(8rem,1fr))] gap-3">
      {on.length > 0 ? (
        <div className="border-2 border-ink bg-ink px-2 py-1 text-white">
          <dt className="text-lg font-semibold">ON</dt>
          {on.map(({ playerId }) => (
            <dd key={playerId} className={bigName}>
              {cast.nameOf(playerId)}
            </dd>
          ))}
        </div>
      ) : null}
      {off.length > 0 ? (
        <div className="border-2 border-dashed border-ink px-2 py-1">
          <dt className="text-lg font-semibold">OFF</dt>
          {off.map((playerId) => (
            <dd key={playerId} className={bigName}>
              {cast.nameOf(playerId)}
            </dd>
          ))}
        </div>
      ) : null}
    </dl>
  )
}

/** Where somebody goes, in a few words: "Area 2, attack". */
export function placeWords(
  placed: { readonly station: number; readonly role: SeatRole },
  areas: number,
): string {
  const role = words.role[placed.role]
  return areas > 1 ? `${capital(words.area.one)} ${placed.station + 1}, ${role.toLowerCase()}` : role
}
