/** The heads of a grid's first column stay in sight while the rest scrolls. */
export function PlayersHead() {
  return (
    <th scope="col" className="sticky left-0 z-[1] bg-leaf pr-2 text-left text-sm font-medium text-soft">
      Player
    </th>
  )
}

export function PlayerHead({ name }: { readonly name: string }) {
  return (
    <th
      scope="row"
      className="sticky left-0 z-[1] w-24 min-w-24 bg-leaf py-0.5 pr-2 text-left text-sm font-medium sm:w-44 sm:min-w-44"
    >
      <span className="line-clamp-2 leading-tight">{name}</span>
    </th>
  )
}
