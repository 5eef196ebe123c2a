import { LinkButton } from '#ui/page/button'
import { WholePage } from '#ui/page/whole-page'
import { paths } from '#ui/paths'

export default function NotFoundPage() {
  return (
    <WholePage title="This is not in the book">
      <p>There is no such page, or it is not yours to open.</p>
      <p>
        <LinkButton href={paths.start()}>To the first page</LinkButton>
      </p>
    </WholePage>
  )
}
