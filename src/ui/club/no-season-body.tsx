import { LinkButton } from '#ui/page/button'
import { Empty } from '#ui/page/empty'
import { paths } from '#ui/paths'

type NoSeasonBodyProps = { readonly clubName: string; readonly canArrange: boolean }

export function NoSeasonBody({ clubName, canArrange }: NoSeasonBodyProps) {
  return canArrange ? (
    <Empty
      next={
        <LinkButton href={paths.clubSeasons()} weight="main">
          Make the season
        </LinkButton>
      }
    >
      Practices are written inside a season, and {clubName} has none yet.
    </Empty>
  ) : (
    <Empty>Practices are written inside a season, and {clubName} has none yet. Ask the head coach.</Empty>
  )
}
